package org.kerfleaf.rain;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.kerfleaf.shape.Vector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** The walk itself: from where it rains, place by place, until no new place gets wet. */
final class Water {
    /** A surface that hangs over more than this (the sine) is not run along: water drips. {@code Common practice, no source}. */
    private static final double CLINGS = 0.75;

    /** As far as water is taken to creep along a level under side, in millimetres. {@code Common practice, no source}. */
    private static final double CREEPS = 100;

    /** Half of a strip that has no width of its own, in millimetres. */
    private static final double HALF_DROP = 0.25;

    /** Drops hang beside the face they came down, so far off, in millimetres. */
    private static final double OFF = 0.1;

    private final Surfaces surfaces;
    private final List<Way> ways = new ArrayList<>();
    private final List<Wet.Creep> creeps = new ArrayList<>();
    private final Flows flows = new Flows();
    private final Deque<Source> sources = new ArrayDeque<>();
    private final Map<Patch.Side, TreeMap<Double, Double>> left = new HashMap<>();
    private final Map<Patch, List<Strip>> strips = new HashMap<>();
    private final Set<Patch> standing = new LinkedHashSet<>();

    /** Water that comes to a patch along a line, from a place if it does not come from the sky. */
    private record Source(Patch patch, Vector from, Vector to, Optional<Flows.Place> out) {}

    /** A strip of a patch that water ran over: between two lines down the patch, from one distance down to another. */
    record Strip(double left, double right, double top, double bottom) {
        boolean holds(double across, double down) {
            return across > left && across < right && down > top && down < bottom;
        }
    }

    Water(Surfaces surfaces, List<RainFall.Rained> rained) {
        this.surfaces = surfaces;
        rained.forEach(this::fall);
        while (!sources.isEmpty()) {
            flow(sources.removeFirst());
        }
    }

    List<Way> ways() {
        return ways;
    }

    List<Wet.Creep> creeps() {
        return creeps;
    }

    Flows flows() {
        return flows;
    }

    /** Level patches that water stands on. */
    Set<Patch> standing() {
        return standing;
    }

    List<Strip> strips(Patch patch) {
        return strips.getOrDefault(patch, List.of());
    }

    /** Whether the water of a level patch leaves only through holes in it: all round it is dammed, or leads to where it cannot leave. */
    boolean isBasin(Patch patch, Set<Flows.Place> leaving) {
        List<Patch.Side> sides = patch.sides();
        boolean drained = false;
        for (int i = 0; i < sides.size(); i++) {
            boolean leaves = false;
            for (int piece = 0; piece + 1 < surfaces.stops(sides.get(i)).size(); piece++) {
                leaves |= leaving.contains(new Flows.Place(patch, sides.get(i), piece));
            }
            if (leaves && sides.get(i).isRim()) {
                return false;
            }
            drained |= leaves;
        }
        return drained;
    }

    // ---- over a face ---------------------------------------------------------------------------------------------

    private void fall(RainFall.Rained on) {
        if (on.patch().holdsWater()) {
            stand(on.patch());
            return;
        }
        for (Polygon piece : on.plan()) {
            for (int ring = -1; ring < piece.getNumInteriorRing(); ring++) {
                LineString line = ring < 0 ? piece.getExteriorRing() : piece.getInteriorRingN(ring);
                Coordinate[] points = line.getCoordinates();
                for (int i = 0; i + 1 < points.length; i++) {
                    sources.add(new Source(on.patch(), on.on(points[i]), on.on(points[i + 1]), Optional.empty()));
                }
            }
        }
    }

    private void flow(Source source) {
        Patch patch = source.patch();
        if (patch.isLevel()) {
            if (patch.holdsWater()) {
                stand(patch);
                source.out().ifPresent(out -> flows.lead(out, level(patch)));
            }
            return;
        }
        Vector across = patch.across();
        boolean turned = source.from().dot(across) > source.to().dot(across);
        Vector a = turned ? source.to() : source.from();
        Vector b = turned ? source.from() : source.to();
        double from = a.dot(across);
        double to = b.dot(across);
        if (to - from < Surfaces.SAME) {
            if (source.out().isPresent()) {
                strip(source, from - HALF_DROP, from + HALF_DROP, a.plus(b).times(0.5));
            }
            return;
        }
        TreeSet<Double> stops = new TreeSet<>(List.of(from, to));
        for (Patch.Side side : patch.sides()) {
            double stop = side.from().dot(across);
            if (stop > from + Surfaces.SAME / 2 && stop < to - Surfaces.SAME / 2) {
                stops.add(stop);
            }
        }
        double last = from;
        for (double stop : stops) {
            if (stop > last) {
                double share = ((last + stop) / 2 - from) / (to - from);
                strip(source, last, stop, a.plus(b.minus(a).times(share)));
            }
            last = stop;
        }
    }

    /** One strip runs down to the first side that it meets. */
    private void strip(Source source, double from, double to, Vector start) {
        Patch patch = source.patch();
        Vector across = patch.across();
        double middle = (from + to) / 2;
        double top = start.dot(patch.down());
        Patch.Side end = null;
        double bottom = Double.POSITIVE_INFINITY;
        for (Patch.Side side : patch.sides()) {
            double p = side.from().dot(across);
            double q = side.to().dot(across);
            boolean meets = side.out().dot(patch.down()) > 1e-6 && Math.min(p, q) < middle && Math.max(p, q) > middle;
            double at = meets ? side.at((middle - p) / (q - p)).dot(patch.down()) : Double.NaN;
            if (meets && at > top - 0.05 && at < bottom) {
                end = side;
                bottom = at;
            }
        }
        if (end != null) {
            double p = end.from().dot(across);
            double q = end.to().dot(across);
            double s = Math.max(0, Math.min(1, (from - p) / (q - p)));
            double e = Math.max(0, Math.min(1, (to - p) / (q - p)));
            if (bottom - top > 1) {
                ways.add(new Way(Way.Kind.OVER_FACE, start, end.at((middle - p) / (q - p)), across.times(to - from)));
            }
            strips.computeIfAbsent(patch, key -> new ArrayList<>()).add(new Strip(from, to, top, bottom));
            leave(end, Math.min(s, e), Math.max(s, e), source.out());
        }
    }

    // ---- at a side -----------------------------------------------------------------------------------------------

    /** Water leaves over a piece of a side; what left there before is not followed again, but known to lead there. */
    private void leave(Patch.Side side, double from, double to, Optional<Flows.Place> out) {
        List<Double> stops = surfaces.stops(side);
        double least = Surfaces.SAME / side.length();
        for (int piece = 0; piece + 1 < stops.size(); piece++) {
            double low = Math.max(from, stops.get(piece));
            double high = Math.min(to, stops.get(piece + 1));
            if (high - low > least) {
                Flows.Place place = new Flows.Place(side.patch(), side, piece);
                out.ifPresent(o -> flows.lead(o, place));
                fresh(side, low, high, least).forEach(span -> arrive(place, span[0], span[1]));
            }
        }
    }

    /** What of a piece of a side no water came to before. */
    private List<double[]> fresh(Patch.Side side, double from, double to, double least) {
        TreeMap<Double, Double> before = left.computeIfAbsent(side, key -> new TreeMap<>());
        List<double[]> fresh = new ArrayList<>();
        double at = from;
        for (Map.Entry<Double, Double> span : before.entrySet()) {
            if (span.getValue() > at && span.getKey() < to) {
                if (span.getKey() - at > least) {
                    fresh.add(new double[] {at, span.getKey()});
                }
                at = Math.max(at, span.getValue());
            }
        }
        if (to - at > least) {
            fresh.add(new double[] {at, to});
        }
        fresh.forEach(span -> before.merge(span[0], span[1], Math::max));
        return fresh;
    }

    private void arrive(Flows.Place place, double from, double to) {
        Patch.Side side = place.side();
        Vector a = side.at(from);
        Vector b = side.at(to);
        Optional<Surfaces.Next> next = surfaces.next(side, side.at((from + to) / 2));
        if (next.isEmpty()) {
            drip(place, a, b);
        } else if (next.get().dams()) {
            dam(place);
        } else if (next.get().goesOnLevel()) {
            // Off the side, so that what has no width is within the patch.
            Vector in = next.get().into().times(HALF_DROP);
            sources.add(new Source(next.get().patch(), a.plus(in), b.plus(in), Optional.of(place)));
        } else if (next.get().patch().holdsWater()
                || next.get().goesDown() && next.get().patch().normal().z() >= -CLINGS) {
            sources.add(new Source(next.get().patch(), a, b, Optional.of(place)));
        } else {
            drip(place, a, b);
            creep(a, b, next.get());
        }
    }

    // ---- through the air -----------------------------------------------------------------------------------------

    private void drip(Flows.Place place, Vector a, Vector b) {
        Vector out = place.side().out().plus(place.patch().normal());
        Vector level = new Vector(out.x(), out.y(), 0);
        Vector off = level.length() > 1e-6 ? level.normalised().times(OFF) : Vector.ZERO;
        Vector from = a.plus(off);
        Vector to = b.plus(off);
        double last = 0;
        for (double stop : surfaces.stopsBelow(from, to)) {
            if (stop > last) {
                Vector p = from.plus(to.minus(from).times(last));
                Vector q = from.plus(to.minus(from).times(stop));
                Vector middle = p.plus(q).times(0.5);
                Vector across = q.minus(p);
                Optional<Patch> below = surfaces.below(middle);
                below.ifPresent(patch -> {
                    ways.add(new Way(Way.Kind.FALLS, middle, on(patch, middle), across));
                    sources.add(new Source(patch, on(patch, p), on(patch, q), Optional.of(place)));
                });
                if (below.isEmpty()) {
                    Vector foot = new Vector(middle.x(), middle.y(), Math.min(surfaces.lowest(), middle.z()));
                    ways.add(new Way(Way.Kind.FALLS, middle, foot, across));
                    flows.leadToGround(place);
                }
            }
            last = stop;
        }
    }

    private static Vector on(Patch patch, Vector point) {
        return new Vector(point.x(), point.y(), Surfaces.heightAt(patch, point));
    }

    /** Along a level under side water creeps on to a wall, unless an edge or a groove stops it before. */
    private void creep(Vector a, Vector b, Surfaces.Next next) {
        Patch under = next.patch();
        if (!under.isLevel() || next.risesBefore()) {
            return;
        }
        Vector at = a.plus(b).times(0.5);
        double nearest = CREEPS;
        Patch.Side end = null;
        for (Patch.Side other : under.sides()) {
            double toward = next.into().dot(other.out());
            double far = other.from().minus(at).dot(other.out()) / toward;
            double along = at.plus(next.into().times(far)).minus(other.from()).dot(other.along());
            if (toward > 1e-6 && far > HALF_DROP && far < nearest && along > 0 && along < other.length()) {
                nearest = far;
                end = other;
            }
        }
        if (end != null) {
            double far = nearest;
            surfaces.next(end, at.plus(next.into().times(far)))
                    .filter(wall -> wall.risesBefore() && wall.goesDown())
                    .ifPresent(wall ->
                            creeps.add(new Wet.Creep(under.solid(), wall.patch().solid(), a, b, far)));
        }
    }

    // ---- what cannot go on ---------------------------------------------------------------------------------------

    private static Flows.Place level(Patch patch) {
        return new Flows.Place(patch, null, 0);
    }

    /** All of what is level is wet; its water leaves wherever it can. */
    private void stand(Patch patch) {
        if (!standing.add(patch)) {
            return;
        }
        flows.lead(level(patch), level(patch));
        for (Patch.Side side : patch.sides()) {
            List<Double> stops = surfaces.stops(side);
            for (int piece = 0; piece + 1 < stops.size(); piece++) {
                double low = stops.get(piece);
                double high = stops.get(piece + 1);
                boolean dammed = surfaces.next(side, side.at((low + high) / 2))
                        .filter(Surfaces.Next::dams)
                        .isPresent();
                if (!dammed) {
                    leave(side, low, high, Optional.of(level(patch)));
                }
            }
        }
    }

    /** Water runs along what stands in its way, down or both ways where that is level, and leaves at its end. */
    private void dam(Flows.Place place) {
        flows.lead(place, place);
        double rise = place.side().along().z();
        if (rise < Patch.LEVEL) {
            spill(place, true);
        }
        if (rise > -Patch.LEVEL) {
            spill(place, false);
        }
    }

    private void spill(Flows.Place place, boolean forward) {
        Set<Patch.Side> been = new HashSet<>();
        Patch.Side side = place.side();
        int piece = place.piece() + (forward ? 1 : -1);
        while (true) {
            List<Double> stops = surfaces.stops(side);
            for (; piece >= 0 && piece + 1 < stops.size(); piece += forward ? 1 : -1) {
                double low = stops.get(piece);
                double high = stops.get(piece + 1);
                Optional<Surfaces.Next> next = surfaces.next(side, side.at((low + high) / 2));
                if (next.isEmpty() || !next.get().dams()) {
                    double drop = Math.min(2 * HALF_DROP / side.length(), high - low);
                    leave(side, forward ? low : high - drop, forward ? low + drop : high, Optional.of(place));
                    return;
                }
                if (side.along().z() * (forward ? 1 : -1) > Patch.LEVEL) {
                    return;
                }
                ways.add(new Way(
                        Way.Kind.ALONG_DAM, side.at(forward ? low : high), side.at(forward ? high : low), Vector.ZERO));
            }
            side = side.patch().sides().get(forward ? side.next() : side.before());
            piece = forward ? 0 : surfaces.stops(side).size() - 2;
            if (!been.add(side)) {
                return;
            }
        }
    }
}
