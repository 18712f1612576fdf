package org.kerfleaf.rain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Touch;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.shape.Vector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** The outer surface of solids that touch: patches, what comes next round a side, what lies below, where joints lead. */
final class Surfaces {
    /** Twice the contact tolerance: as far as two points are one place, in millimetres. */
    static final double SAME = 2 * Touching.TOLERANCE.inMillimetres();

    /** Ten nanometres. */
    private static final PrecisionModel GRID = new PrecisionModel(1e5);

    /** How far from a side one looks for what comes next, in millimetres. */
    private static final double BESIDE = 0.2;

    /** Narrower pieces are rounding, in millimetres. */
    private static final double NARROW = 0.05;

    /** Turns smaller than this are none. */
    private static final double STRAIGHT = 0.02;

    private final List<Touching> touching;
    private final double lowest;
    private final Map<Patch.Side, List<Double>> stops = new HashMap<>();
    private final List<Patch> patches = new ArrayList<>();

    Surfaces(List<PlacedSolid> solids) {
        lowest = solids.stream()
                .mapToDouble(solid -> solid.bounds().low().z())
                .min()
                .orElse(0);
        touching = Touching.all(solids);
        for (PlacedSolid solid : solids) {
            List<Touching> own = touching.stream()
                    .filter(pair -> pair.a().equals(solid) || pair.b().equals(solid))
                    .toList();
            for (Face face : solid.faces()) {
                Geometry open = face.polygon();
                for (Polygon covered : Touching.hidden(solid, face, own)) {
                    open = overlay(open, covered, OverlayNG.DIFFERENCE);
                }
                pieces(open).forEach(piece -> patches.add(new Patch(solid, face, piece)));
            }
        }
    }

    /**
     * What of an overlay has an area: it may come with lines where shapes only touch. Corners snap to a grid, since edges that are one
     * in the build differ by rounding here, and an overlay of such edges can fail.
     */
    static Geometry overlay(Geometry a, Geometry b, int operation) {
        Geometry shape = OverlayNG.overlay(a, b, operation, GRID);
        List<Polygon> polygons = new ArrayList<>();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            if (shape.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                polygons.add(polygon);
            }
        }
        return shape.getFactory().createMultiPolygon(polygons.toArray(Polygon[]::new));
    }

    /** The polygons of a shape that are wider than rounding. */
    static List<Polygon> pieces(Geometry shape) {
        List<Polygon> pieces = new ArrayList<>();
        for (int i = 0; i < shape.getNumGeometries(); i++) {
            if (shape.getGeometryN(i) instanceof Polygon piece && piece.getArea() > NARROW * piece.getLength() / 2) {
                pieces.add(piece);
            }
        }
        return pieces;
    }

    /** The height of the lowest point of all. */
    double lowest() {
        return lowest;
    }

    List<Patch> patches() {
        return patches;
    }

    // ---- round a side --------------------------------------------------------------------------------------------

    /**
     * The surface that comes next, round a side and through the air.
     *
     * @param turn from the patch itself, in radians: under a half turn it rises before the patch, over one it falls away
     * @param into in that surface, away from the side, one long
     */
    record Next(Patch patch, double turn, Vector into) {
        boolean risesBefore() {
            return turn < StrictMath.PI - STRAIGHT;
        }

        boolean goesDown() {
            return into.z() < -1e-3;
        }

        /** Whether it neither rises nor falls and water can run on over it: the same plane, or round a corner. */
        boolean goesOnLevel() {
            return !patch.isLevel()
                    && Math.abs(into.z()) < Patch.LEVEL
                    && turn >= StrictMath.PI - STRAIGHT
                    && patch.normal().z() > -Patch.LEVEL;
        }

        /** Whether water that comes to the side can neither go on nor fall. */
        boolean dams() {
            return risesBefore() && !goesDown() && !patch.holdsWater();
        }
    }

    /** Where what comes next may change along a side, from 0 to 1, both among them. */
    List<Double> stops(Patch.Side side) {
        return stops.computeIfAbsent(side, this::found);
    }

    private List<Double> found(Patch.Side side) {
        TreeSet<Double> stops = new TreeSet<>();
        Vector way = side.to().minus(side.from());
        double least = SAME / way.length();
        Bounds line = Bounds.of(List.of(side.from(), side.to()));
        for (Patch patch : patches) {
            if (patch.bounds().isNear(line, BESIDE)) {
                for (Patch.Side other : patch.sides()) {
                    for (Vector normal : List.of(patch.normal(), other.out())) {
                        double along = way.dot(normal);
                        double stop = other.from().minus(side.from()).dot(normal) / along;
                        boolean isNew = Math.abs(along) > 1e-9
                                && stop > least
                                && stop < 1 - least
                                && other.patch().bounds().isNear(Bounds.of(List.of(side.at(stop))), BESIDE)
                                && stops.subSet(stop - least, stop + least).isEmpty();
                        if (isNew) {
                            stops.add(stop);
                        }
                    }
                }
            }
        }
        stops.add(0.0);
        stops.add(1.0);
        return List.copyOf(stops);
    }

    /** The first surface that one meets when turning round a side, from the patch through the air. */
    Optional<Next> next(Patch.Side side, Vector at) {
        Vector back = side.out().negated();
        Vector up = side.patch().normal();
        Vector along = side.along();
        Bounds here = Bounds.of(List.of(at));
        Next first = null;
        for (Patch patch : patches) {
            boolean near = patch != side.patch()
                    && patch.bounds().isNear(here, BESIDE)
                    && Math.abs(patch.face().inFront(at)) < SAME;
            Vector level = near ? patch.normal().cross(along) : Vector.ZERO;
            if (level.length() > 1e-3) {
                for (Vector into :
                        List.of(level.normalised(), level.normalised().negated())) {
                    double turn = StrictMath.atan2(into.dot(up), into.dot(back));
                    turn = turn < 0 ? turn + 2 * StrictMath.PI : turn;
                    // Its air must lie on the side one comes from.
                    Vector onward = back.times(-StrictMath.sin(turn)).plus(up.times(StrictMath.cos(turn)));
                    if (turn > STRAIGHT
                            && patch.normal().dot(onward) < 0
                            && (first == null || turn < first.turn() - 1e-6)
                            && patch.holds(at.plus(into.times(BESIDE)))) {
                        first = new Next(patch, turn, into);
                    }
                }
            }
        }
        return Optional.ofNullable(first);
    }

    /** Which way a joint between two solids leads from a point of its rim, square to a line along it; empty if they do not lie on each other there. */
    Optional<Vector> joint(PlacedSolid a, PlacedSolid b, Vector at, Vector along) {
        for (Touching pair : touching) {
            boolean both = pair.a().equals(a) && pair.b().equals(b)
                    || pair.a().equals(b) && pair.b().equals(a);
            for (Touch touch : both ? pair.touches() : List.<Touch>of()) {
                Vector in = touch.frame().w().cross(along);
                if (Math.abs(touch.frame().toLocal(at).z()) < SAME && in.length() > 1e-3) {
                    for (Vector into : List.of(in.normalised(), in.normalised().negated())) {
                        if (contains(touch, at.plus(into.times(BESIDE)))) {
                            return Optional.of(into);
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static boolean contains(Touch touch, Vector point) {
        Vector local = touch.frame().toLocal(point);
        Coordinate at = new Coordinate(local.x(), local.y());
        return touch.polygon().intersects(touch.polygon().getFactory().createPoint(at));
    }

    // ---- below ---------------------------------------------------------------------------------------------------

    /** Where what lies straight below a line may change, from 0 to 1, both among them. */
    List<Double> stopsBelow(Vector from, Vector to) {
        TreeSet<Double> stops = new TreeSet<>(List.of(0.0, 1.0));
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        for (Patch patch : patches) {
            if (looksUp(patch)) {
                for (Patch.Side side : patch.sides()) {
                    double ex = side.to().x() - side.from().x();
                    double ey = side.to().y() - side.from().y();
                    double cross = dx * ey - dy * ex;
                    double fx = side.from().x() - from.x();
                    double fy = side.from().y() - from.y();
                    double t = (fx * ey - fy * ex) / cross;
                    double u = (fx * dy - fy * dx) / cross;
                    if (Math.abs(cross) > 1e-9 && t > 1e-6 && t < 1 - 1e-6 && u > -1e-6 && u < 1 + 1e-6) {
                        stops.add(t);
                    }
                }
            }
        }
        return List.copyOf(stops);
    }

    /** The highest upward patch straight below a point. */
    Optional<Patch> below(Vector point) {
        return patches.stream()
                .filter(Surfaces::looksUp)
                .filter(p -> p.bounds().low().z() < point.z()
                        && p.bounds().low().x() <= point.x()
                        && p.bounds().low().y() <= point.y()
                        && p.bounds().high().x() >= point.x()
                        && p.bounds().high().y() >= point.y())
                .filter(p -> heightAt(p, point) < point.z() - SAME)
                .filter(p -> p.holds(new Vector(point.x(), point.y(), heightAt(p, point))))
                .max(Comparator.comparingDouble(p -> heightAt(p, point)));
    }

    static boolean looksUp(Patch patch) {
        return patch.normal().z() > Patch.LEVEL;
    }

    /** The height of a patch's plane above or below a point. */
    static double heightAt(Patch patch, Vector point) {
        Vector n = patch.normal();
        Vector o = patch.face().frame().origin();
        return o.z() - (n.x() * (point.x() - o.x()) + n.y() * (point.y() - o.y())) / n.z();
    }
}
