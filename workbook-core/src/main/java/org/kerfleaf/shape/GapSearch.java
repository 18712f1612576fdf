package org.kerfleaf.shape;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** The nearest pair of faces that look at each other; where none do, the distance of the boxes. */
final class GapSearch {
    private GapSearch() {}

    static Gap between(PlacedSolid a, PlacedSolid b) {
        Optional<Gap> best = Optional.empty();
        for (Face of : a.faces()) {
            for (Face on : b.faces()) {
                double least = best.map(g -> g.size().inMillimetres()).orElse(Double.POSITIVE_INFINITY);
                double distance = of.inFront(on.corners().get(0));
                if (TouchSearch.areOpposite(of, on) && distance > 0 && distance < least + 1) {
                    best = nearer(best, of, on, least);
                }
            }
        }
        return best.orElseGet(() -> boxes(a.bounds(), b.bounds()));
    }

    private static Optional<Gap> nearer(Optional<Gap> best, Face of, Face on, double least) {
        double distance = Double.POSITIVE_INFINITY;
        for (Polygon shared : Flat.shared(of.polygon(), Flat.seenFrom(on.polygon(), on.frame(), of.frame()))) {
            for (Coordinate corner : shared.getCoordinates()) {
                Vector point = of.frame().toWorld(new Vector(corner.x, corner.y, 0));
                distance = Math.min(distance, on.inFront(point));
            }
        }
        return distance < least ? Optional.of(new Gap(of.normal(), Length.ofMillimetres(distance), true)) : best;
    }

    private static Gap boxes(Bounds a, Bounds b) {
        Vector off = new Vector(
                apart(a.low().x(), a.high().x(), b.low().x(), b.high().x()),
                apart(a.low().y(), a.high().y(), b.low().y(), b.high().y()),
                apart(a.low().z(), a.high().z(), b.low().z(), b.high().z()));
        Vector way = off.length() > 0 ? off : b.middle().minus(a.middle());
        return new Gap(way.length() > 1e-9 ? way.normalised() : Vector.Z, Length.ofMillimetres(off.length()), false);
    }

    private static double apart(double low1, double high1, double low2, double high2) {
        return low2 > high1 ? low2 - high1 : Math.min(0, high2 - low1);
    }
}
