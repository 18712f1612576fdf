package org.kerfleaf.export.drawing;

/** Something drawn at a scale, with its room on paper in millimetres. */
public interface Drawing {
    double width();

    double height();

    Scale scale();

    /** Paints it from its upper left corner. */
    void paint(Ink ink, double x, double y);
}
