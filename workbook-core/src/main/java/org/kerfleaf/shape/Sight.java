package org.kerfleaf.shape;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * Whether air is closed in, by looking about in it: openings count as closed.
 *
 * <p>What sees a known point shares its answer. Else one looks in 128 directions, and then in 32 from the middle of each line of
 * sight; where the sky is seen it is outside. One look alone is wrong: from a corner under the eaves almost every ray meets wood.
 */
final class Sight {
    private static final int FIRST_LOOK = 128;
    private static final int SECOND_LOOK = 32;

    /** A ray this near past the rim of a face meets it, in millimetres: no ray slips between two faces that share an edge. */
    private static final double RIM = 1e-6;

    private static final List<Vector> SQUARE =
            List.of(Vector.X, Vector.X.times(-1), Vector.Y, Vector.Y.times(-1), Vector.Z, Vector.Z.times(-1));

    /** Places nearer than this are one, where one wanders about, in millimetres. */
    private static final double STRIDE = 10;

    private static final int MOST_PLACES = 500;

    private static final List<Vector> FIRST = directions(FIRST_LOOK);
    private static final List<Vector> SECOND = directions(SECOND_LOOK);

    private final List<Body> bodies;
    private final List<Known> known = new ArrayList<>();

    private record Body(Bounds box, List<Wall> walls) {}

    /** A ring in a plane, with the box round it: most rays that cross the plane miss that by far. */
    private record Wall(Pose frame, double[] x, double[] y, Envelope box) {}

    private record Known(Vector point, boolean inside) {}

    Sight(List<PlacedSolid> solids) {
        bodies = solids.stream()
                .map(s -> new Body(
                        s.bounds(), s.faces().stream().map(Sight::closed).toList()))
                .toList();
    }

    /** The face without what is cut out of it. */
    private static Wall closed(Face face) {
        Coordinate[] ring = face.polygon().getExteriorRing().getCoordinates();
        double[] x = new double[ring.length];
        double[] y = new double[ring.length];
        for (int i = 0; i < ring.length; i++) {
            x[i] = ring[i].x;
            y[i] = ring[i].y;
        }
        Envelope box = face.polygon().getEnvelopeInternal();
        box.expandBy(RIM);
        return new Wall(face.frame(), x, y, box);
    }

    /** Points evenly over a sphere, on a spiral that turns by the golden angle. */
    private static List<Vector> directions(int count) {
        List<Vector> directions = new ArrayList<>();
        double golden = StrictMath.PI * (3 - StrictMath.sqrt(5));
        for (int i = 0; i < count; i++) {
            double z = 1 - (2 * i + 1.0) / count;
            double r = StrictMath.sqrt(1 - z * z);
            directions.add(new Vector(r * StrictMath.cos(golden * i), r * StrictMath.sin(golden * i), z));
        }
        return directions;
    }

    /** Whether the air at that point is closed in. */
    boolean isInside(Vector point) {
        for (Known one : known) {
            if (sees(point, one.point())) {
                return one.inside();
            }
        }
        boolean inside = !findsSky(point);
        known.add(new Known(point, inside));
        return inside;
    }

    /** How far from a point it is to the first face, in a direction one long; endless where none is. */
    double clear(Vector from, Vector direction) {
        return nearest(from, direction, Double.POSITIVE_INFINITY);
    }

    /**
     * Whether a way leads from a point to the sky, also round corners that one look does not see past: one goes square from the
     * middle of each way found to the middle of the next, and no two places within {@link #STRIDE} are tried.
     */
    boolean wandersOut(Vector from) {
        Set<List<Long>> tried = new HashSet<>();
        Deque<Vector> next = new ArrayDeque<>(List.of(from));
        while (!next.isEmpty() && tried.size() < MOST_PLACES) {
            Vector at = next.poll();
            for (Vector direction : SQUARE) {
                double hit = clear(at, direction);
                if (Double.isInfinite(hit)) {
                    return true;
                }
                Vector middle = at.plus(direction.times(hit / 2));
                if (hit > STRIDE && tried.add(cell(middle))) {
                    next.add(middle);
                }
            }
        }
        return false;
    }

    private static List<Long> cell(Vector at) {
        return List.of(Math.round(at.x() / STRIDE), Math.round(at.y() / STRIDE), Math.round(at.z() / STRIDE));
    }

    private boolean sees(Vector from, Vector to) {
        Vector way = to.minus(from);
        return way.length() < RIM || Double.isInfinite(nearest(from, way, 1));
    }

    private boolean findsSky(Vector from) {
        List<Vector> middles = new ArrayList<>();
        for (Vector direction : FIRST) {
            double hit = nearest(from, direction, Double.POSITIVE_INFINITY);
            if (Double.isInfinite(hit)) {
                return true;
            }
            middles.add(from.plus(direction.times(hit / 2)));
        }
        return middles.stream()
                .anyMatch(middle ->
                        SECOND.stream().anyMatch(d -> Double.isInfinite(nearest(middle, d, Double.POSITIVE_INFINITY))));
    }

    /** How many times the way it is to the first face, endless if that is beyond the limit. */
    private double nearest(Vector from, Vector way, double limit) {
        double nearest = limit;
        boolean met = false;
        for (Body body : bodies) {
            if (meets(body.box(), from, way, nearest)) {
                for (Wall wall : body.walls()) {
                    double hit = hit(wall, from, way, nearest);
                    met |= hit < nearest;
                    nearest = Math.min(hit, nearest);
                }
            }
        }
        return met ? nearest : Double.POSITIVE_INFINITY;
    }

    private static boolean meets(Bounds box, Vector from, Vector way, double limit) {
        double enter = 0;
        double leave = limit;
        double[] low = {
            box.low().x() - from.x(), box.low().y() - from.y(), box.low().z() - from.z()
        };
        double[] high = {
            box.high().x() - from.x(), box.high().y() - from.y(), box.high().z() - from.z()
        };
        double[] go = {way.x(), way.y(), way.z()};
        for (int i = 0; i < 3; i++) {
            if (Math.abs(go[i]) < 1e-15) {
                if (low[i] > RIM || high[i] < -RIM) {
                    return false;
                }
            } else {
                double a = (low[i] - RIM) / go[i];
                double b = (high[i] + RIM) / go[i];
                enter = Math.max(enter, Math.min(a, b));
                leave = Math.min(leave, Math.max(a, b));
            }
        }
        return enter <= leave;
    }

    private static double hit(Wall wall, Vector from, Vector way, double limit) {
        double toward = way.dot(wall.frame().w());
        double t = wall.frame().origin().minus(from).dot(wall.frame().w()) / toward;
        if (Math.abs(toward) < 1e-15 || !(t > 0) || t >= limit) {
            return Double.POSITIVE_INFINITY;
        }
        Vector at = wall.frame().toLocal(from.plus(way.times(t)));
        return wall.box().contains(at.x(), at.y()) && isIn(wall, at.x(), at.y()) ? t : Double.POSITIVE_INFINITY;
    }

    private static boolean isIn(Wall wall, double x, double y) {
        boolean in = false;
        for (int i = 0; i + 1 < wall.x().length; i++) {
            double x1 = wall.x()[i];
            double y1 = wall.y()[i];
            double x2 = wall.x()[i + 1];
            double y2 = wall.y()[i + 1];
            if (isOnRim(x - x1, y - y1, x2 - x1, y2 - y1)) {
                return true;
            }
            if (y1 > y != y2 > y) {
                in ^= x1 + (y - y1) / (y2 - y1) * (x2 - x1) > x;
            }
        }
        return in;
    }

    private static boolean isOnRim(double px, double py, double dx, double dy) {
        double square = dx * dx + dy * dy;
        double along = px * dx + py * dy;
        double off = px * dy - py * dx;
        return off * off < RIM * RIM * square && along > -RIM * RIM && along < square + RIM * RIM;
    }
}
