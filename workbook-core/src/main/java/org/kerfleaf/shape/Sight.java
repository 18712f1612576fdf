package org.kerfleaf.shape;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Whether air is closed in, by looking about in it: openings count as closed.
 *
 * <p>What sees a known point shares its answer. Else one looks in 128 directions, and then in 32 from the middle of each line of
 * sight; where the sky is seen it is outside. One look alone is wrong: from a corner under the eaves almost every ray meets wood.
 */
final class Sight {
    private static final int FIRST_LOOK = 128;
    private static final int SECOND_LOOK = 32;

    private static final List<Vector> SQUARE =
            List.of(Vector.X, Vector.X.times(-1), Vector.Y, Vector.Y.times(-1), Vector.Z, Vector.Z.times(-1));

    /** Places nearer than this are one, where one wanders about, in millimetres. */
    private static final double STRIDE = 10;

    private static final int MOST_PLACES = 500;

    private static final double ENDLESS = Double.POSITIVE_INFINITY;

    private static final List<Vector> FIRST = directions(FIRST_LOOK);
    private static final List<Vector> SECOND = directions(SECOND_LOOK);

    private final SightBody[] bodies;
    private final List<Known> known = new ArrayList<>();

    private record Known(Vector point, boolean inside) {}

    Sight(List<PlacedSolid> solids) {
        bodies = solids.stream().map(SightBody::new).toArray(SightBody[]::new);
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
        return way.length() < SightBody.RIM || firstThatStops(from, way, 1) < 0;
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
        return middles.stream().anyMatch(this::seesSky);
    }

    /** Whether one of the second look's rays meets nothing. What stopped the last ray is asked first: most often it stops the next. */
    private boolean seesSky(Vector from) {
        int last = 0;
        for (Vector direction : SECOND) {
            int stop = bodies[last].stops(from, direction, ENDLESS) ? last : firstThatStops(from, direction, ENDLESS);
            if (stop < 0) {
                return true;
            }
            last = stop;
        }
        return false;
    }

    private int firstThatStops(Vector from, Vector way, double limit) {
        for (int i = 0; i < bodies.length; i++) {
            if (bodies[i].stops(from, way, limit)) {
                return i;
            }
        }
        return -1;
    }

    /** How many times the way it is to the first face, endless if that is beyond the limit. */
    private double nearest(Vector from, Vector way, double limit) {
        double nearest = limit;
        for (SightBody body : bodies) {
            nearest = Math.min(body.nearest(from, way, nearest), nearest);
        }
        return nearest < limit ? nearest : Double.POSITIVE_INFINITY;
    }
}
