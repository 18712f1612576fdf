package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A convex body by its faces, each counter-clockwise when looked at from outside.
 *
 * <p>Two share what is left when one is clipped at every plane of the other.
 */
record ConvexPiece(List<List<Vector>> faces) {
    /** Corners nearer to a plane than this are on it, in millimetres. */
    private static final double ON = 1e-8;

    private static final double THIN = 1e-12;

    /** A plane with the body behind it. */
    record Plane(Vector normal, double offset) {
        double beyond(Vector point) {
            double beyond = normal.dot(point) - offset;
            return Math.abs(beyond) < ON ? 0 : beyond;
        }
    }

    Bounds bounds() {
        return Bounds.of(faces.stream().flatMap(List::stream).toList());
    }

    ConvexPiece seenFrom(Pose own, Pose other) {
        return new ConvexPiece(faces.stream()
                .map(face ->
                        face.stream().map(p -> other.toLocal(own.toWorld(p))).toList())
                .toList());
    }

    Stream<Plane> planes() {
        return faces.stream().flatMap(face -> {
            Vector square = square(face);
            return square.length() < THIN
                    ? Stream.empty()
                    : Stream.of(new Plane(square.normalised(), middle(face).dot(square.normalised())));
        });
    }

    Optional<ConvexPiece> shared(ConvexPiece other) {
        Optional<ConvexPiece> left = Optional.of(this);
        for (Plane plane : other.planes().toList()) {
            left = left.flatMap(piece -> piece.clipped(plane));
        }
        return left;
    }

    /** What is behind the plane. */
    Optional<ConvexPiece> clipped(Plane plane) {
        boolean behind = faces.stream().flatMap(List::stream).anyMatch(p -> plane.beyond(p) < 0);
        boolean beyond = faces.stream().flatMap(List::stream).anyMatch(p -> plane.beyond(p) > 0);
        if (!behind) {
            return Optional.empty();
        }
        if (!beyond) {
            return Optional.of(this);
        }
        List<List<Vector>> left = new ArrayList<>();
        List<Vector> lid = new ArrayList<>();
        for (List<Vector> face : faces) {
            List<Vector> kept = clipped(face, plane, lid);
            if (kept.size() >= 3) {
                left.add(kept);
            }
        }
        List<Vector> ring = round(lid, plane.normal());
        if (ring.size() >= 3) {
            left.add(ring);
        }
        return Optional.of(new ConvexPiece(left));
    }

    private static List<Vector> clipped(List<Vector> face, Plane plane, List<Vector> lid) {
        List<Vector> kept = new ArrayList<>();
        for (int i = 0; i < face.size(); i++) {
            Vector p = face.get(i);
            Vector q = face.get((i + 1) % face.size());
            double at = plane.beyond(p);
            double next = plane.beyond(q);
            if (at <= 0) {
                kept.add(p);
            }
            if (at == 0) {
                lid.add(p);
            }
            if (at * next < 0) {
                Vector cross = p.plus(q.minus(p).times(at / (at - next)));
                kept.add(cross);
                lid.add(cross);
            }
        }
        return kept;
    }

    /** The points as a ring round their middle, counter-clockwise about the normal, each once. */
    private static List<Vector> round(List<Vector> points, Vector normal) {
        List<Vector> once = new ArrayList<>();
        for (Vector point : points) {
            if (once.stream().noneMatch(p -> p.minus(point).length() < 10 * ON)) {
                once.add(point);
            }
        }
        if (once.size() >= 3) {
            Vector middle = middle(once);
            Pose plane = Pose.facing(middle, normal);
            once.sort(Comparator.comparingDouble(p -> {
                Vector at = plane.toLocal(p);
                return StrictMath.atan2(at.y(), at.x());
            }));
        }
        return once;
    }

    double volume() {
        Vector base = faces.get(0).get(0);
        double sum = 0;
        for (List<Vector> face : faces) {
            sum += square(face).dot(face.get(0).minus(base)) / 3;
        }
        return sum;
    }

    double largestFace() {
        return faces.stream().mapToDouble(f -> square(f).length()).max().orElse(0);
    }

    /** Area times normal. */
    private static Vector square(List<Vector> face) {
        Vector sum = Vector.ZERO;
        for (int i = 1; i + 1 < face.size(); i++) {
            sum = sum.plus(face.get(i).minus(face.get(0)).cross(face.get(i + 1).minus(face.get(0))));
        }
        return sum.times(0.5);
    }

    private static Vector middle(List<Vector> points) {
        return points.stream().reduce(Vector.ZERO, Vector::plus).times(1.0 / points.size());
    }
}
