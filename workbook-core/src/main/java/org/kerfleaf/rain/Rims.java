package org.kerfleaf.rain;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * The seams at the rims of wet patches: where another solid begins, water is beside it, and the joint between the two leads level or
 * downward. A joint that leads upward is lapped, like a cap on a roof: water would have to climb into it.
 */
final class Rims {
    /** How far from a side one looks whether a patch is wet there, in millimetres. */
    private static final double BESIDE = 0.3;

    private final Surfaces surfaces;
    private final Water water;
    private final SeamLines seams = new SeamLines();

    Rims(Surfaces surfaces, List<RainFall.Rained> rained, Water water) {
        this.surfaces = surfaces;
        this.water = water;
        for (Patch patch : surfaces.patches()) {
            Optional<RainFall.Rained> on =
                    rained.stream().filter(r -> r.patch() == patch).findFirst();
            if (on.isPresent()
                    || !water.strips(patch).isEmpty()
                    || water.standing().contains(patch)) {
                patch.sides().forEach(side -> rim(side, on));
            }
        }
    }

    List<Wet.Seam> seams() {
        return seams.all();
    }

    private void rim(Patch.Side side, Optional<RainFall.Rained> on) {
        TreeSet<Double> stops = new TreeSet<>(surfaces.stops(side));
        on.ifPresent(r -> r.plan().forEach(piece -> corners(side, r, piece, stops)));
        water.strips(side.patch()).forEach(strip -> ends(side, strip, stops));
        double last = 0;
        for (double stop : stops) {
            if ((stop - last) * side.length() > Surfaces.SAME) {
                Vector middle = side.at((last + stop) / 2);
                if (isWet(side.patch(), on, middle.minus(side.out().times(BESIDE)))) {
                    double from = last;
                    surfaces.next(side, middle).ifPresent(next -> seam(side, side.at(from), side.at(stop), next));
                }
                last = stop;
            }
        }
    }

    private boolean isWet(Patch patch, Optional<RainFall.Rained> on, Vector at) {
        return water.standing().contains(patch)
                || on.isPresent() && on.get().isOn(at)
                || water.strips(patch).stream().anyMatch(s -> s.holds(at.dot(patch.across()), at.dot(patch.down())));
    }

    private void seam(Patch.Side side, Vector a, Vector b, Surfaces.Next next) {
        PlacedSolid one = side.patch().solid();
        PlacedSolid other = next.patch().solid();
        if (!one.equals(other)) {
            surfaces.joint(one, other, a.plus(b).times(0.5), side.along())
                    .filter(into -> into.z() < Patch.LEVEL)
                    .ifPresent(into -> seams.add(one, other, a, b));
        }
    }

    private static void corners(Patch.Side side, RainFall.Rained on, Polygon piece, TreeSet<Double> stops) {
        for (Coordinate corner : piece.getCoordinates()) {
            stop(side, on.on(corner), stops);
        }
    }

    private static void ends(Patch.Side side, Water.Strip strip, TreeSet<Double> stops) {
        crossing(side, side.patch().down(), strip.top(), stops);
        crossing(side, side.patch().across(), strip.left(), stops);
        crossing(side, side.patch().across(), strip.right(), stops);
    }

    private static void crossing(Patch.Side side, Vector normal, double level, TreeSet<Double> stops) {
        double along = side.along().dot(normal);
        if (Math.abs(along) > 1e-6) {
            stop(side, side.from().plus(side.along().times((level - side.from().dot(normal)) / along)), stops);
        }
    }

    /** A place of the side, from a point that lies by it. */
    private static void stop(Patch.Side side, Vector near, TreeSet<Double> stops) {
        double share = near.minus(side.from()).dot(side.along()) / side.length();
        if (share > 0 && share < 1 && side.at(share).minus(near).length() < BESIDE) {
            stops.add(share);
        }
    }
}
