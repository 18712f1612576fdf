package org.kerfleaf.export.drawing;

import java.awt.geom.Path2D;
import java.util.List;
import org.kerfleaf.shape.Vector;

/** A face as a view sees it: rings in millimetres of the build, x to the right, y up, and how near it is at each place. */
final class ViewFace {
    /** The least share of the sight line in a normal for a face to be seen at all. */
    private static final double EDGE_ON = 1e-6;

    private final int body;
    private final Vector normal;
    private final double towardEye;
    private final double[][] rings;
    private final double perX;
    private final double perY;
    private final double atZero;
    private final double level;
    private double minX = Double.POSITIVE_INFINITY;
    private double minY = Double.POSITIVE_INFINITY;
    private double maxX = Double.NEGATIVE_INFINITY;
    private double maxY = Double.NEGATIVE_INFINITY;
    private double nearest = Double.NEGATIVE_INFINITY;

    ViewFace(int body, Body.Side side, View view, Vector eye) {
        this.body = body;
        normal = side.normal();
        towardEye = normal.dot(eye);
        rings = new double[side.rings().size()][];
        for (int i = 0; i < rings.length; i++) {
            rings[i] = projected(side.rings().get(i), view, eye);
        }
        // normal = a right + b up + c eye, and normal · p is the same for all p of the face: so depth is linear on
        // paper.
        double rr = view.right().dot(view.right());
        double ru = view.right().dot(view.up());
        double uu = view.up().dot(view.up());
        double nr = normal.dot(view.right());
        double nu = normal.dot(view.up());
        double det = rr * uu - ru * ru;
        double a = (nr * uu - nu * ru) / det;
        double b = (nu * rr - nr * ru) / det;
        level = normal.dot(side.rings().get(0).get(0));
        perX = -a / towardEye;
        perY = -b / towardEye;
        atZero = level / towardEye;
    }

    private double[] projected(List<Vector> ring, View view, Vector eye) {
        double[] xy = new double[2 * ring.size()];
        for (int i = 0; i < ring.size(); i++) {
            Vector p = ring.get(i);
            double x = view.x(p);
            double y = view.y(p);
            xy[2 * i] = x;
            xy[2 * i + 1] = y;
            minX = Math.min(minX, x);
            maxX = Math.max(maxX, x);
            minY = Math.min(minY, y);
            maxY = Math.max(maxY, y);
            nearest = Math.max(nearest, eye.dot(p));
        }
        return xy;
    }

    /** The number of the body it belongs to. */
    int body() {
        return body;
    }

    Vector normal() {
        return normal;
    }

    /** How far its plane is from the build's origin, along its normal. */
    double level() {
        return level;
    }

    boolean isFront() {
        return towardEye > EDGE_ON;
    }

    double[][] rings() {
        return rings;
    }

    double minX() {
        return minX;
    }

    double minY() {
        return minY;
    }

    double maxX() {
        return maxX;
    }

    double maxY() {
        return maxY;
    }

    /** The depth of its nearest corner; larger is nearer. */
    double nearest() {
        return nearest;
    }

    /** How near its plane is there; larger is nearer. */
    double depth(double x, double y) {
        return perX * x + perY * y + atZero;
    }

    boolean boxMeets(double x1, double y1, double x2, double y2) {
        return minX < Math.max(x1, x2) && maxX > Math.min(x1, x2) && minY < Math.max(y1, y2) && maxY > Math.min(y1, y2);
    }

    /** Whether a place is on the face, farther than {@code margin} from its rings. */
    boolean holds(double x, double y, double margin) {
        boolean inside = false;
        for (double[] ring : rings) {
            int n = ring.length;
            double px = ring[n - 2];
            double py = ring[n - 1];
            for (int i = 0; i < n; i += 2) {
                double qx = ring[i];
                double qy = ring[i + 1];
                if (py > y != qy > y && x < (qx - px) * (y - py) / (qy - py) + px) {
                    inside = !inside;
                }
                if (isNear(x, y, px, py, qx, qy, margin)) {
                    return false;
                }
                px = qx;
                py = qy;
            }
        }
        return inside;
    }

    private static boolean isNear(double x, double y, double px, double py, double qx, double qy, double margin) {
        double dx = qx - px;
        double dy = qy - py;
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : ((x - px) * dx + (y - py) * dy) / square;
        t = Math.min(1, Math.max(0, t));
        double ex = px + t * dx - x;
        double ey = py + t * dy - y;
        return ex * ex + ey * ey <= margin * margin;
    }

    /** Its shape on paper; holes by the even-odd rule. */
    Path2D path(OnPaper paper) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        for (double[] ring : rings) {
            path.moveTo(paper.x(ring[0]), paper.y(ring[1]));
            for (int i = 2; i < ring.length; i += 2) {
                path.lineTo(paper.x(ring[i]), paper.y(ring[i + 1]));
            }
            path.closePath();
        }
        return path;
    }
}
