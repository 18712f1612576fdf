package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.kerfleaf.measure.Length;
import org.locationtech.jts.geom.Coordinate;

/**
 * Where placed solids meet and air begins, inside the finished build and outside; leave out glazing, which sits in a closed pocket.
 *
 * <p>Each edge of a contact is divided where the plane of another face crosses it. A piece of it is a seam if a point just beside
 * it, 0.3 mm out of the contact and 0.15 mm to one side of its plane, is in no wood. That point is the seam's air, and
 * {@link Sight} tells whether the finished build closes it in; openings count as closed. An open box has no inside by sight.
 */
public final class SolidSeams {
    private static final double OUT = 0.3;
    private static final double ASIDE = 0.15;

    /** Pieces shorter than this are rounding, in millimetres. */
    private static final double SHORT = Touching.TOLERANCE.inMillimetres();

    private final List<PlacedSolid> finished;
    private final List<Seam> seams;

    SolidSeams(List<PlacedSolid> finished, List<Touching> touching, Sight sight) {
        this.finished = finished;
        List<Seam> found = new ArrayList<>();
        for (Touching pair : touching) {
            pair.touches().forEach(touch -> along(touch, sight, found));
        }
        seams = List.copyOf(found);
    }

    /** All seams, in the order of the pieces. */
    public List<Seam> seams() {
        return seams;
    }

    /** The length of the inside seams. */
    public Length inside() {
        return length(Seam::inside);
    }

    /** The length of the inside seams between pieces that are there already. */
    public Length inside(Collection<PlacedSolid> there) {
        return length(s -> s.inside() && there.contains(s.a()) && there.contains(s.b()));
    }

    /** The length of the outside seams. */
    public Length outside() {
        return length(s -> !s.inside());
    }

    private Length length(Predicate<Seam> which) {
        return Length.ofMillimetres(
                seams.stream().filter(which).mapToDouble(Seam::length).sum());
    }

    private void along(Touch touch, Sight sight, List<Seam> found) {
        List<PlacedSolid> near = finished.stream()
                .filter(s -> s.bounds().isNear(bounds(touch), OUT + ASIDE))
                .toList();
        for (List<Coordinate> ring : Flat.rings(touch.polygon())) {
            for (int i = 0; i < ring.size(); i++) {
                Coordinate p = ring.get(i);
                Coordinate q = ring.get((i + 1) % ring.size());
                edge(touch, point(touch, p), point(touch, q), near, sight, found);
            }
        }
    }

    private static Bounds bounds(Touch touch) {
        List<Vector> corners = new ArrayList<>();
        for (Coordinate corner : touch.polygon().getExteriorRing().getCoordinates()) {
            corners.add(point(touch, corner));
        }
        return Bounds.of(corners);
    }

    private static Vector point(Touch touch, Coordinate at) {
        return touch.frame().toWorld(new Vector(at.x, at.y, 0));
    }

    private static void edge(
            Touch touch, Vector from, Vector to, List<PlacedSolid> near, Sight sight, List<Seam> found) {
        Vector way = to.minus(from);
        if (way.length() < SHORT) {
            return;
        }
        Vector normal = touch.frame().w();
        Vector out = way.normalised().cross(normal).times(OUT);
        Seam open = null;
        double last = 0;
        for (double stop : stops(from, way, near)) {
            Vector middle = from.plus(way.times((last + stop) / 2)).plus(out);
            Optional<Vector> air = List.of(ASIDE, -ASIDE).stream()
                    .map(aside -> middle.plus(normal.times(aside)))
                    .filter(point -> near.stream().noneMatch(s -> s.holds(point)))
                    .findFirst();
            Seam seam = null;
            if (air.isPresent()) {
                boolean inside = sight.isInside(air.get());
                boolean goesOn = open != null && open.inside() == inside;
                Vector start = goesOn ? open.from() : from.plus(way.times(last));
                Vector at = goesOn ? open.air() : air.get();
                seam = new Seam(touch.a(), touch.b(), start, from.plus(way.times(stop)), at, inside);
                open = goesOn ? null : open;
            }
            if (open != null) {
                found.add(open);
            }
            open = seam;
            last = stop;
        }
        if (open != null) {
            found.add(open);
        }
    }

    /** Where on its way a line leaves one side of a face's plane, from 0 to 1; the last is 1. */
    private static TreeSet<Double> stops(Vector from, Vector way, List<PlacedSolid> near) {
        TreeSet<Double> stops = new TreeSet<>();
        double least = SHORT / way.length();
        Bounds line = Bounds.of(List.of(from, from.plus(way)));
        for (PlacedSolid solid : near) {
            for (Face face : solid.faces()) {
                double along = way.dot(face.normal());
                if (Math.abs(along) > 1e-9 && face.bounds().isNear(line, OUT + ASIDE)) {
                    double stop = -face.inFront(from) / along;
                    boolean isNew = stop > least
                            && stop < 1 - least
                            && stops.subSet(stop - least, stop + least).isEmpty();
                    if (isNew) {
                        stops.add(stop);
                    }
                }
            }
        }
        stops.add(1.0);
        return stops;
    }
}
