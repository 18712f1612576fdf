package org.kerfleaf.export.drawing;

import java.util.Arrays;
import java.util.List;
import org.kerfleaf.shape.Vector;

/**
 * What a view shows of a piece, as a grid of depths. In a parallel view a piece that is moved keeps its silhouette: it lies
 * elsewhere on the grid, nearer or farther by the same amount everywhere.
 *
 * @param x the first column on the grid
 * @param y the first row, counted up
 * @param depth by rows, larger is nearer; NaN where nothing of the piece is
 * @param nearer how much it was moved toward the eye
 * @param glass hides nothing
 */
record Silhouette(int x, int y, int wide, int high, float[] depth, float nearer, boolean glass) {
    /** @param cell the side of a cell, in millimetres of the view */
    static Silhouette of(List<Body> bodies, View view, double cell) {
        Projection projection = new Projection(bodies, view);
        int x = (int) Math.floor(projection.minX() / cell);
        int y = (int) Math.floor(projection.minY() / cell);
        int wide = (int) Math.ceil(projection.maxX() / cell) - x;
        int high = (int) Math.ceil(projection.maxY() / cell) - y;
        float[] depth = new float[wide * high];
        Arrays.fill(depth, Float.NaN);
        for (ViewFace face : projection.faces()) {
            if (face.isFront()) {
                paint(face, x, y, wide, high, cell, depth);
            }
        }
        return new Silhouette(x, y, wide, high, depth, 0, bodies.stream().allMatch(Body::glass));
    }

    private static void paint(ViewFace face, int x, int y, int wide, int high, double cell, float[] depth) {
        int firstRow = Math.max(0, (int) Math.floor(face.minY() / cell) - y);
        int lastRow = Math.min(high - 1, (int) Math.floor(face.maxY() / cell) - y);
        int firstColumn = Math.max(0, (int) Math.floor(face.minX() / cell) - x);
        int lastColumn = Math.min(wide - 1, (int) Math.floor(face.maxX() / cell) - x);
        for (int row = firstRow; row <= lastRow; row++) {
            double py = (y + row + 0.5) * cell;
            for (int column = firstColumn; column <= lastColumn; column++) {
                double px = (x + column + 0.5) * cell;
                if (face.holds(px, py, 0)) {
                    int at = row * wide + column;
                    float near = (float) face.depth(px, py);
                    depth[at] = Float.isNaN(depth[at]) ? near : Math.max(depth[at], near);
                }
            }
        }
    }

    /** How many cells it covers. */
    int size() {
        int size = 0;
        for (float d : depth) {
            size += Float.isNaN(d) ? 0 : 1;
        }
        return size;
    }

    /** The same elsewhere: moved by this in the build. */
    Silhouette moved(Vector by, View view, double cell) {
        return new Silhouette(
                x + (int) Math.rint(view.x(by) / cell),
                y + (int) Math.rint(view.y(by) / cell),
                wide,
                high,
                depth,
                nearer + (float) view.toEye().dot(by),
                glass);
    }

    /** How many cells of each are seen when all are drawn together; glass can be told only where nothing opaque is in line with it. */
    static int[] seen(List<Silhouette> all) {
        int left = all.stream().mapToInt(Silhouette::x).min().orElse(0);
        int low = all.stream().mapToInt(Silhouette::y).min().orElse(0);
        int wide = all.stream().mapToInt(s -> s.x + s.wide).max().orElse(0) - left;
        int high = all.stream().mapToInt(s -> s.y + s.high).max().orElse(0) - low;
        float[] nearest = new float[wide * high];
        int[] owner = new int[wide * high];
        Arrays.fill(nearest, Float.NEGATIVE_INFINITY);
        Arrays.fill(owner, -1);
        for (int i = 0; i < all.size(); i++) {
            if (!all.get(i).glass) {
                all.get(i).over(i, left, low, wide, nearest, owner);
            }
        }
        int[] seen = new int[all.size()];
        for (int who : owner) {
            if (who >= 0) {
                seen[who]++;
            }
        }
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).glass) {
                seen[i] = all.get(i).alone(left, low, wide, nearest);
            }
        }
        return seen;
    }

    private void over(int number, int left, int low, int gridWide, float[] nearest, int[] owner) {
        for (int row = 0; row < high; row++) {
            int to = (y + row - low) * gridWide + x - left;
            for (int column = 0; column < wide; column++, to++) {
                float near = depth[row * wide + column] + nearer;
                // NaN is not nearer than anything.
                if (near > nearest[to]) {
                    nearest[to] = near;
                    owner[to] = number;
                }
            }
        }
    }

    private int alone(int left, int low, int gridWide, float[] nearest) {
        int count = 0;
        for (int row = 0; row < high; row++) {
            int to = (y + row - low) * gridWide + x - left;
            for (int column = 0; column < wide; column++, to++) {
                boolean paper = nearest[to] == Float.NEGATIVE_INFINITY;
                count += paper && !Float.isNaN(depth[row * wide + column]) ? 1 : 0;
            }
        }
        return count;
    }
}
