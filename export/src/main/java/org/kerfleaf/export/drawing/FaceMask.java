package org.kerfleaf.export.drawing;

import java.util.Arrays;
import java.util.List;

/**
 * A coarse picture of which face is seen where, and how far every place is from the rim of what it shows. Painted by scan lines
 * of its own, so that it is the same on every machine.
 */
final class FaceMask {
    private static final double PER_MM = 2.5;
    private static final float DIAGONAL = 1.41421356f;

    private final int wide;
    private final int high;
    private final int[] ids;
    private final float[] rim;

    /** Half as wide as a line that stands for heads and their centre lines, in millimetres. */
    private static final double STROKE = 0.6;

    /**
     * Painted with faces in their order, then with lines; a face's number is its place there plus one, that of all lines comes after
     * the last face's, white paper is 0.
     *
     * @param strokes x, y, x, y on paper
     */
    FaceMask(List<ViewFace> inOrder, List<double[]> strokes, OnPaper paper, double paperWide, double paperHigh) {
        wide = (int) Math.ceil(paperWide * PER_MM);
        high = (int) Math.ceil(paperHigh * PER_MM);
        ids = new int[wide * high];
        for (int i = 0; i < inOrder.size(); i++) {
            paint(inOrder.get(i), i + 1, paper);
        }
        strokes.forEach(stroke -> paint(stroke, inOrder.size() + 1));
        rim = rim();
    }

    private void paint(double[] stroke, int id) {
        double length = StrictMath.hypot(stroke[2] - stroke[0], stroke[3] - stroke[1]);
        int steps = 1 + (int) Math.ceil(length * PER_MM);
        for (int i = 0; i <= steps; i++) {
            double x = stroke[0] + (stroke[2] - stroke[0]) * i / steps;
            double y = stroke[1] + (stroke[3] - stroke[1]) * i / steps;
            for (double up = -STROKE; up <= STROKE; up += 1 / PER_MM) {
                int row = (int) Math.floor((y + up) * PER_MM);
                if (row >= 0 && row < high) {
                    fill(row, x - STROKE, x + STROKE, id);
                }
            }
        }
    }

    int size() {
        return ids.length;
    }

    double x(int cell) {
        return (cell % wide + 0.5) / PER_MM;
    }

    double y(int cell) {
        return (cell / wide + 0.5) / PER_MM;
    }

    int face(int cell) {
        return ids[cell];
    }

    /** How far a cell is from the nearest place that shows something else, in millimetres. */
    double room(int cell) {
        return rim[cell] / PER_MM;
    }

    /** The cell at a place, or -1 outside. */
    int cell(double x, double y) {
        int column = (int) Math.floor(x * PER_MM);
        int row = (int) Math.floor(y * PER_MM);
        return column < 0 || row < 0 || column >= wide || row >= high ? -1 : row * wide + column;
    }

    private void paint(ViewFace face, int id, OnPaper paper) {
        int first = Math.max(0, (int) Math.floor(paper.y(face.maxY()) * PER_MM));
        int last = Math.min(high - 1, (int) Math.ceil(paper.y(face.minY()) * PER_MM));
        double[] crossings = new double[8];
        for (int row = first; row <= last; row++) {
            double y = (row + 0.5) / PER_MM;
            int count = 0;
            for (double[] ring : face.rings()) {
                double px = paper.x(ring[ring.length - 2]);
                double py = paper.y(ring[ring.length - 1]);
                for (int i = 0; i < ring.length; i += 2) {
                    double qx = paper.x(ring[i]);
                    double qy = paper.y(ring[i + 1]);
                    if (py > y != qy > y) {
                        crossings = count == crossings.length ? Arrays.copyOf(crossings, 2 * count) : crossings;
                        crossings[count++] = px + (qx - px) * (y - py) / (qy - py);
                    }
                    px = qx;
                    py = qy;
                }
            }
            Arrays.sort(crossings, 0, count);
            for (int i = 0; i + 1 < count; i += 2) {
                fill(row, crossings[i], crossings[i + 1], id);
            }
        }
    }

    private void fill(int row, double from, double to, int id) {
        int first = Math.max(0, (int) Math.ceil(from * PER_MM - 0.5));
        int end = Math.min(wide, (int) Math.ceil(to * PER_MM - 0.5));
        if (first < end) {
            Arrays.fill(ids, row * wide + first, row * wide + end, id);
        }
    }

    /** Two passes of a chamfer distance: straight steps 1, diagonal ones √2. */
    private float[] rim() {
        float[] rim = new float[ids.length];
        for (int i = 0; i < ids.length; i++) {
            rim[i] = isRim(i) ? 0.5f : Float.MAX_VALUE;
        }
        for (int i = 0; i < ids.length; i++) {
            relax(rim, i, i % wide > 0, i >= wide, i % wide < wide - 1, -1);
        }
        for (int i = ids.length - 1; i >= 0; i--) {
            relax(rim, i, i % wide < wide - 1, i + wide < ids.length, i % wide > 0, 1);
        }
        return rim;
    }

    private void relax(float[] rim, int i, boolean beside, boolean over, boolean otherSide, int sign) {
        float least = rim[i];
        least = beside ? Math.min(least, rim[i + sign] + 1) : least;
        if (over) {
            least = Math.min(least, rim[i + sign * wide] + 1);
            least = beside ? Math.min(least, rim[i + sign * (wide + 1)] + DIAGONAL) : least;
            least = otherSide ? Math.min(least, rim[i + sign * (wide - 1)] + DIAGONAL) : least;
        }
        rim[i] = least;
    }

    private boolean isRim(int i) {
        int id = ids[i];
        int column = i % wide;
        return column == 0
                || column == wide - 1
                || i < wide
                || i + wide >= ids.length
                || ids[i - 1] != id
                || ids[i + 1] != id
                || ids[i - wide] != id
                || ids[i + wide] != id;
    }
}
