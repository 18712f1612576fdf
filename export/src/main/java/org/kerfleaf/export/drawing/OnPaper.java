package org.kerfleaf.export.drawing;

/**
 * Where a view stands in its drawing.
 *
 * @param times how many millimetres of the build are one of paper
 * @param zeroX where x = 0 of the view stands on paper
 * @param zeroY where y = 0 of the view stands on paper, down from the top
 */
record OnPaper(double times, double zeroX, double zeroY) {
    double x(double viewX) {
        return zeroX + viewX / times;
    }

    /** Paper counts down, a view counts up. */
    double y(double viewY) {
        return zeroY - viewY / times;
    }
}
