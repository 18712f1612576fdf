package org.kerfleaf.rain;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.shape.Vector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/**
 * Which of the upward faces see the sky straight above them. In plan every patch is a polygon; whatever of another lies higher takes its
 * own away. Exact: heights are linear over the plan, so one straight cut tells where one of two is the higher.
 */
final class RainFall {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final List<Roof> roofs = new ArrayList<>();

    private record Roof(Patch patch, Polygon plan) {}

    RainFall(Surfaces surfaces) {
        surfaces.patches().stream().filter(Surfaces::looksUp).forEach(patch -> roofs.add(new Roof(patch, plan(patch))));
    }

    private static Polygon plan(Patch patch) {
        Polygon own = patch.polygon();
        LinearRing[] holes = new LinearRing[own.getNumInteriorRing()];
        for (int i = 0; i < holes.length; i++) {
            holes[i] = plan(patch, own.getInteriorRingN(i));
        }
        return FACTORY.createPolygon(plan(patch, own.getExteriorRing()), holes);
    }

    private static LinearRing plan(Patch patch, LinearRing ring) {
        Coordinate[] own = ring.getCoordinates();
        Coordinate[] points = new Coordinate[own.length];
        for (int i = 0; i + 1 < points.length; i++) {
            Vector at = patch.face().frame().toWorld(new Vector(own[i].x, own[i].y, 0));
            points[i] = new Coordinate(at.x(), at.y());
        }
        points[points.length - 1] = points[0].copy();
        return FACTORY.createLinearRing(points);
    }

    /** The upward patches that rain falls on, in plan (x, y). */
    record Rained(Patch patch, List<Polygon> plan) {
        /** Whether rain falls on a point of it. */
        boolean isOn(Vector at) {
            Coordinate plain = new Coordinate(at.x(), at.y());
            return plan.stream().anyMatch(piece -> piece.intersects(FACTORY.createPoint(plain)));
        }

        /** One of its pieces in the frame of the face, without holes. */
        Polygon inPlane(Polygon piece) {
            Coordinate[] points = piece.getExteriorRing().getCoordinates();
            Coordinate[] own = new Coordinate[points.length];
            for (int i = 0; i < points.length; i++) {
                Vector local = patch.face().frame().toLocal(on(points[i]));
                own[i] = new Coordinate(local.x(), local.y());
            }
            own[own.length - 1] = own[0].copy();
            return FACTORY.createPolygon(own);
        }

        /** Straight above or below a point of the plan. */
        Vector on(Coordinate at) {
            Vector flat = new Vector(at.x, at.y, 0);
            return new Vector(at.x, at.y, Surfaces.heightAt(patch, flat));
        }
    }

    List<Rained> rained() {
        List<Rained> rained = new ArrayList<>();
        for (Roof roof : roofs) {
            Geometry open = roof.plan();
            for (Roof other : roofs) {
                boolean over = other != roof
                        && other.patch().bounds().high().z()
                                > roof.patch().bounds().low().z() + Surfaces.SAME
                        && other.plan().getEnvelopeInternal().intersects(open.getEnvelopeInternal());
                Geometry shade = over ? higher(other, roof) : FACTORY.createPolygon();
                if (!shade.isEmpty()) {
                    open = Surfaces.overlay(open, shade, OverlayNG.DIFFERENCE);
                }
            }
            List<Polygon> pieces = Surfaces.pieces(open);
            if (!pieces.isEmpty()) {
                rained.add(new Rained(roof.patch(), pieces));
            }
        }
        return rained;
    }

    /** Where one lies higher than the other's plane. */
    private static Geometry higher(Roof one, Roof other) {
        Vector n = one.patch().normal().times(1 / one.patch().normal().z());
        Vector m = other.patch().normal().times(1 / other.patch().normal().z());
        // Its height above the other's plane is a + b·x + c·y.
        double b = m.x() - n.x();
        double c = m.y() - n.y();
        double a = Surfaces.heightAt(one.patch(), Vector.ZERO) - Surfaces.heightAt(other.patch(), Vector.ZERO);
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Coordinate at : one.plan().getExteriorRing().getCoordinates()) {
            double height = a + b * at.x + c * at.y;
            least = Math.min(least, height);
            most = Math.max(most, height);
        }
        if (most < Surfaces.SAME) {
            return FACTORY.createPolygon();
        }
        return least > -Surfaces.SAME ? one.plan() : overlay(one.plan(), a, b, c);
    }

    /** What of a polygon lies where a + b·x + c·y is positive. */
    private static Geometry overlay(Polygon plan, double a, double b, double c) {
        Envelope box = plan.getEnvelopeInternal();
        double steep = StrictMath.hypot(b, c);
        double far = box.getWidth() + box.getHeight() + 1;
        double off = (a + b * box.centre().x + c * box.centre().y) / steep;
        double ux = b / steep;
        double uy = c / steep;
        double x = box.centre().x - off * ux;
        double y = box.centre().y - off * uy;
        Coordinate[] corners = {
            new Coordinate(x - far * uy, y + far * ux),
            new Coordinate(x + far * uy, y - far * ux),
            new Coordinate(x + far * (uy + ux), y + far * (uy - ux)),
            new Coordinate(x + far * (ux - uy), y + far * (ux + uy)),
            null
        };
        corners[4] = corners[0].copy();
        return Surfaces.overlay(plan, FACTORY.createPolygon(corners), OverlayNG.INTERSECTION);
    }
}
