package org.kerfleaf.export.drawing;

/**
 * A line that a view shows, in millimetres of the build, x to the right, y up.
 *
 * @param xy its points: x, y, x, y; two unless it follows an arc
 * @param hidden whether something nearer covers it
 * @param arc whether it is a piece of a round edge
 */
record DrawnLine(double[] xy, boolean hidden, Shown.State state, boolean arc) {
    static DrawnLine of(double x1, double y1, double x2, double y2, boolean hidden, Shown.State state, boolean arc) {
        return new DrawnLine(new double[] {x1, y1, x2, y2}, hidden, state, arc);
    }

    double x1() {
        return xy[0];
    }

    double y1() {
        return xy[1];
    }

    double x2() {
        return xy[xy.length - 2];
    }

    double y2() {
        return xy[xy.length - 1];
    }

    /** Along the line, in millimetres of the view. */
    double length() {
        double length = 0;
        for (int i = 2; i < xy.length; i += 2) {
            length += StrictMath.hypot(xy[i] - xy[i - 2], xy[i + 1] - xy[i - 1]);
        }
        return length;
    }

    /** Its points on paper. */
    double[] on(OnPaper paper) {
        double[] points = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            points[i] = paper.x(xy[i]);
            points[i + 1] = paper.y(xy[i + 1]);
        }
        return points;
    }
}
