package org.kerfleaf.shape;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/**
 * Polygons in a plane, in millimetres.
 *
 * <p>Convex rings, and rings that a line crosses just twice, are clipped by hand: much faster than an overlay, and exact for
 * vertices on the line. All else goes through the overlay. Slivers thinner than 1e-6 mm are dropped.
 */
final class Flat {
    static final GeometryFactory FACTORY = new GeometryFactory();

    /** Vertices this near a clipping line count as on it, in millimetres. */
    private static final double ON = 1e-7;

    /** Pieces that on average are thinner than this are noise. */
    private static final double THIN = 2e-6;

    private Flat() {}

    /** The outline with its openings, arcs as chords. */
    static Polygon polygon(Outline outline, double sagitta) {
        List<String> names = List.copyOf(outline.openings());
        LinearRing[] holes = new LinearRing[names.size()];
        for (int i = 0; i < holes.length; i++) {
            holes[i] = ring(Rings.chords(outline.opening(names.get(i)), sagitta, "", 0));
        }
        return FACTORY.createPolygon(ring(Rings.chords(outline, sagitta, "", 0)), holes);
    }

    private static LinearRing ring(List<Rings.Chord> chords) {
        Coordinate[] points = new Coordinate[chords.size() + 1];
        for (int i = 0; i < chords.size(); i++) {
            points[i] = new Coordinate(chords.get(i).x1(), chords.get(i).y1());
        }
        points[chords.size()] = points[0].copy();
        return FACTORY.createLinearRing(points);
    }

    /** A polygon without openings from x, y, x, y... */
    static Polygon polygon(double... xy) {
        Coordinate[] points = new Coordinate[xy.length / 2 + 1];
        for (int i = 0; i < xy.length / 2; i++) {
            points[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
        }
        points[points.length - 1] = points[0].copy();
        return FACTORY.createPolygon(points);
    }
}
