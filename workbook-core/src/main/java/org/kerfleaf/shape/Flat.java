package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Polygons in a plane, in millimetres: made, overlaid, moved. Slivers thinner than a nanometre are dropped. */
final class Flat {
    static final GeometryFactory FACTORY = new GeometryFactory();

    /** Twice the average width below which a piece is noise. */
    private static final double THIN = 2e-6;

    private Flat() {}

    /** The outline with its openings, arcs as chords. */
    static Polygon polygon(Outline outline, double sagitta) {
        List<LinearRing> holes = new ArrayList<>();
        for (String opening : outline.openings()) {
            holes.add(ring(Rings.chords(outline.opening(opening), sagitta, "", 0)));
        }
        return FACTORY.createPolygon(ring(Rings.chords(outline, sagitta, "", 0)), holes.toArray(LinearRing[]::new));
    }

    private static LinearRing ring(List<Rings.Chord> chords) {
        Coordinate[] points = new Coordinate[chords.size() + 1];
        for (int i = 0; i < chords.size(); i++) {
            points[i] = new Coordinate(chords.get(i).x1(), chords.get(i).y1());
        }
        points[chords.size()] = points[0].copy();
        return FACTORY.createLinearRing(points);
    }

    /** A ring without openings from its corners; the last need not be the first again. */
    static Polygon polygon(List<Coordinate> corners) {
        Coordinate[] points = new Coordinate[corners.size() + 1];
        for (int i = 0; i < corners.size(); i++) {
            points[i] = corners.get(i);
        }
        points[corners.size()] = points[0].copy();
        return FACTORY.createPolygon(points);
    }

    /** What both share, in pieces. */
    static List<Polygon> shared(Polygon a, Polygon b) {
        if (!a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())) {
            return List.of();
        }
        if (Clipping.isConvex(a) && Clipping.isConvex(b)) {
            return solid(Clipping.convex(a, b));
        }
        return pieces(OverlayNGRobust.overlay(a, b, OverlayNG.INTERSECTION));
    }

    /** What is left of all without the other. */
    static List<Polygon> without(List<Polygon> all, Polygon other) {
        List<Polygon> left = new ArrayList<>();
        for (Polygon polygon : all) {
            left.addAll(
                    polygon.getEnvelopeInternal().intersects(other.getEnvelopeInternal())
                            ? pieces(OverlayNGRobust.overlay(polygon, other, OverlayNG.DIFFERENCE))
                            : List.of(polygon));
        }
        return left;
    }

    /** The shape with everything that touches it to rounding, corners kept sharp. */
    static Geometry widened(Geometry shape) {
        BufferParameters sharp = new BufferParameters();
        sharp.setJoinStyle(BufferParameters.JOIN_MITRE);
        return BufferOp.bufferOp(shape, Touching.TOLERANCE.inMillimetres(), sharp);
    }

    /** What of all is in the other. */
    static List<Polygon> shared(List<Polygon> all, Polygon other) {
        return all.stream().flatMap(p -> shared(p, other).stream()).toList();
    }

    /** What of all is in the half-plane. */
    static List<Polygon> clipped(List<Polygon> all, HalfPlane keep) {
        return all.stream().flatMap(p -> solid(Clipping.clip(p, keep)).stream()).toList();
    }

    static List<Polygon> pieces(Geometry geometry) {
        List<Polygon> pieces = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon) {
                pieces.add(polygon);
            }
        }
        return solid(pieces);
    }

    private static List<Polygon> solid(List<Polygon> pieces) {
        return pieces.stream().filter(p -> p.getArea() > THIN * p.getLength()).toList();
    }

    /** Every corner (x, y) moved to (ax·x + bx·y + cx, ay·x + by·y + cy). */
    static Polygon mapped(Polygon polygon, double ax, double bx, double cx, double ay, double by, double cy) {
        LinearRing[] holes = new LinearRing[polygon.getNumInteriorRing()];
        double[] map = {ax, bx, cx, ay, by, cy};
        for (int i = 0; i < holes.length; i++) {
            holes[i] = mapped(polygon.getInteriorRingN(i), map);
        }
        return FACTORY.createPolygon(mapped(polygon.getExteriorRing(), map), holes);
    }

    private static LinearRing mapped(LinearRing ring, double[] m) {
        Coordinate[] points = new Coordinate[ring.getNumPoints()];
        for (int i = 0; i < points.length; i++) {
            Coordinate p = ring.getCoordinateN(i);
            points[i] = new Coordinate(m[0] * p.x + m[1] * p.y + m[2], m[3] * p.x + m[4] * p.y + m[5]);
        }
        return FACTORY.createLinearRing(points);
    }

    /** The polygon of a frame seen in another frame of the same plane, or of one parallel to it, from either side. */
    static Polygon seenFrom(Polygon polygon, Pose frame, Pose other) {
        Vector o = other.toLocal(frame.origin());
        return mapped(
                polygon,
                frame.u().dot(other.u()),
                frame.v().dot(other.u()),
                o.x(),
                frame.u().dot(other.v()),
                frame.v().dot(other.v()),
                o.y());
    }

    /** All rings, the outer first, each so that the polygon lies on its left; without the closing point. */
    static List<List<Coordinate>> rings(Polygon polygon) {
        List<List<Coordinate>> rings = new ArrayList<>();
        rings.add(turned(polygon.getExteriorRing(), true));
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            rings.add(turned(polygon.getInteriorRingN(i), false));
        }
        return rings;
    }

    private static List<Coordinate> turned(LinearRing ring, boolean left) {
        List<Coordinate> points = new ArrayList<>(List.of(ring.getCoordinates()));
        points.remove(points.size() - 1);
        if (twiceArea(points) > 0 != left) {
            Collections.reverse(points);
        }
        return points;
    }

    /** Twice the area of a ring, negative if it runs clockwise. */
    static double twiceArea(List<Coordinate> ring) {
        double sum = 0;
        Coordinate base = ring.get(0);
        for (int i = 1; i + 1 < ring.size(); i++) {
            Coordinate p = ring.get(i);
            Coordinate q = ring.get(i + 1);
            sum += (p.x - base.x) * (q.y - base.y) - (q.x - base.x) * (p.y - base.y);
        }
        return sum;
    }
}
