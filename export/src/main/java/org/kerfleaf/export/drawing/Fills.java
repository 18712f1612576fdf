package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.kerfleaf.shape.Vector;

/**
 * The faces toward the eye in the order to paint them: whole bodies from far to near.
 *
 * <p>Of two bodies it may be proven, by any face plane that separates them, that one cannot hide the other. Only if exactly one
 * of the two is proven does it say an order; the first separating plane taken alone gives false rings. Where no plane separates
 * (a pane in its rabbet) depths are compared where both are seen. Lines never come from here, so a wrong order costs a tint.
 */
final class Fills {
    /** Bodies that overlap by less still touch only, in millimetres. */
    private static final double TOUCH = 0.01;

    private static final double EDGE_ON = 1e-6;
    private static final int SAMPLES = 23;

    private final Projection projection;
    private final int count;
    private final List<List<ViewFace>> faces = new ArrayList<>();
    private final List<List<Vector>> points = new ArrayList<>();
    private final List<List<Plane>> hulls = new ArrayList<>();
    private final double[][] boxes;

    private record Plane(Vector normal, double offset) {}

    private Fills(Projection projection) {
        this.projection = projection;
        count = projection.bodies().size();
        boxes = new double[count][];
        for (Body body : projection.bodies()) {
            points.add(body.sides().stream()
                    .flatMap(s -> s.rings().get(0).stream())
                    .toList());
            faces.add(new ArrayList<>());
        }
        projection.faces().forEach(face -> faces.get(face.body()).add(face));
        for (int i = 0; i < count; i++) {
            hulls.add(hull(i));
            boxes[i] = box(faces.get(i));
        }
    }

    static List<ViewFace> inOrder(Projection projection) {
        Fills fills = new Fills(projection);
        List<ViewFace> ordered = new ArrayList<>();
        for (int body : fills.order()) {
            fills.within(body, ordered);
        }
        return ordered;
    }

    /** Walls of openings and rabbets first, then what bounds the body. */
    private void within(int body, List<ViewFace> ordered) {
        List<Plane> hull = hulls.get(body);
        List<ViewFace> front =
                faces.get(body).stream().filter(ViewFace::isFront).toList();
        List<ViewFace> inner = new ArrayList<>(
                front.stream().filter(face -> !bounds(hull, face)).toList());
        inner.sort(Comparator.comparingDouble(ViewFace::nearest));
        ordered.addAll(inner);
        front.stream().filter(face -> bounds(hull, face)).forEach(ordered::add);
    }

    private boolean bounds(List<Plane> hull, ViewFace face) {
        double offset = face.level();
        return hull.stream().anyMatch(p -> p.normal() == face.normal() && Math.abs(p.offset() - offset) < TOUCH);
    }

    private List<Plane> hull(int body) {
        List<Plane> planes = new ArrayList<>();
        for (Body.Side side : projection.bodies().get(body).sides()) {
            double offset = side.normal().dot(side.rings().get(0).get(0));
            Plane plane = new Plane(side.normal(), offset);
            if (points.get(body).stream().allMatch(p -> plane.normal().dot(p) <= offset + TOUCH)) {
                planes.add(plane);
            }
        }
        return planes;
    }

    private static double[] box(List<ViewFace> faces) {
        double[] box = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (ViewFace face : faces) {
            box[0] = Math.min(box[0], face.minX());
            box[1] = Math.min(box[1], face.minY());
            box[2] = Math.max(box[2], face.maxX());
            box[3] = Math.max(box[3], face.maxY());
        }
        return box;
    }

    private List<Integer> order() {
        boolean[][] before = new boolean[count][count];
        for (int a = 0; a < count; a++) {
            for (int b = a + 1; b < count; b++) {
                int first = first(a, b);
                if (first != 0) {
                    before[first < 0 ? a : b][first < 0 ? b : a] = true;
                }
            }
        }
        List<Integer> order = new ArrayList<>();
        boolean[] done = new boolean[count];
        while (order.size() < count) {
            int next = next(before, done);
            done[next] = true;
            order.add(next);
        }
        return order;
    }

    /** The first body that nothing left must go before; in a ring, the one that reaches least far toward the eye. */
    private int next(boolean[][] before, boolean[] done) {
        int farthest = -1;
        for (int b = 0; b < count; b++) {
            if (done[b]) {
                continue;
            }
            boolean free = true;
            for (int a = 0; a < count && free; a++) {
                free = done[a] || !before[a][b];
            }
            if (free) {
                return b;
            }
            farthest = farthest < 0 || nearest(b) < nearest(farthest) ? b : farthest;
        }
        return farthest;
    }

    private double nearest(int body) {
        return faces.get(body).stream().mapToDouble(ViewFace::nearest).max().orElse(0);
    }

    /** Negative if a must be painted before b, positive if after, zero if it does not matter. */
    private int first(int a, int b) {
        double[] p = boxes[a];
        double[] q = boxes[b];
        if (p[0] > q[2] - TOUCH || q[0] > p[2] - TOUCH || p[1] > q[3] - TOUCH || q[1] > p[3] - TOUCH) {
            return 0;
        }
        boolean[] cannotHide = new boolean[2];
        proofs(a, b, 0, cannotHide);
        proofs(b, a, 1, cannotHide);
        if (cannotHide[0] && cannotHide[1]) {
            return 0;
        }
        return cannotHide[0] ? -1 : cannotHide[1] ? 1 : sampled(a, b);
    }

    /** Notes at {@code which} that the owner cannot hide the other, at the other place that the other cannot hide it. */
    private void proofs(int owner, int other, int which, boolean[] cannotHide) {
        for (Plane plane : hulls.get(owner)) {
            double toward = plane.normal().dot(projection.eye());
            boolean wanted = toward > EDGE_ON && !cannotHide[which]
                    || toward < -EDGE_ON && !cannotHide[1 - which]
                    || Math.abs(toward) <= EDGE_ON;
            if (wanted
                    && points.get(other).stream().allMatch(p -> plane.normal().dot(p) >= plane.offset() - TOUCH)) {
                cannotHide[which] |= toward >= -EDGE_ON;
                cannotHide[1 - which] |= toward <= EDGE_ON;
            }
        }
    }

    private int sampled(int a, int b) {
        double x1 = Math.max(boxes[a][0], boxes[b][0]);
        double y1 = Math.max(boxes[a][1], boxes[b][1]);
        double wide = Math.min(boxes[a][2], boxes[b][2]) - x1;
        double high = Math.min(boxes[a][3], boxes[b][3]) - y1;
        int votes = 0;
        for (int i = 0; i < SAMPLES; i++) {
            for (int j = 0; j < SAMPLES; j++) {
                double x = x1 + wide * (i + 0.5) / SAMPLES;
                double y = y1 + high * (j + 0.5) / SAMPLES;
                double ofA = depth(a, x, y);
                double ofB = depth(b, x, y);
                if (ofA > Double.NEGATIVE_INFINITY && ofB > Double.NEGATIVE_INFINITY) {
                    votes += ofA < ofB ? 1 : -1;
                }
            }
        }
        return -Integer.signum(votes);
    }

    private double depth(int body, double x, double y) {
        double depth = Double.NEGATIVE_INFINITY;
        for (ViewFace face : faces.get(body)) {
            if (face.isFront() && face.holds(x, y, TOUCH)) {
                depth = Math.max(depth, face.depth(x, y));
            }
        }
        return depth;
    }
}
