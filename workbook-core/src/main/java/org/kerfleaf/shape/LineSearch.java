package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;

/** Edges of one solid that lie on a face of another. */
final class LineSearch {
    private static final double ON = Touching.TOLERANCE.inMillimetres();

    private final PlacedSolid edgeOf;
    private final PlacedSolid faceOf;
    private final List<LineTouch> found;

    private LineSearch(PlacedSolid edgeOf, PlacedSolid faceOf, List<LineTouch> found) {
        this.edgeOf = edgeOf;
        this.faceOf = faceOf;
        this.found = found;
    }

    /** Each line once, though an edge belongs to two faces and two edges may lie on each other. */
    static List<LineTouch> between(PlacedSolid a, PlacedSolid b) {
        List<LineTouch> found = new ArrayList<>();
        new LineSearch(b, a, found).search();
        new LineSearch(a, b, found).search();
        return found;
    }

    private void search() {
        for (Face face : faceOf.faces()) {
            if (face.bounds().isNear(edgeOf.bounds(), ON)) {
                for (Face other : edgeOf.faces()) {
                    if (other.bounds().isNear(face.bounds(), ON)) {
                        other.edges().stream().filter(e -> lies(e, face)).forEach(e -> onFace(e, face));
                    }
                }
            }
        }
    }

    private static boolean lies(FaceEdge edge, Face face) {
        return Math.abs(face.inFront(edge.from())) <= ON && Math.abs(face.inFront(edge.to())) <= ON;
    }

    private void onFace(FaceEdge edge, Face face) {
        Vector a = face.frame().toLocal(edge.from());
        Vector b = face.frame().toLocal(edge.to());
        double length = edge.length();
        double last = Double.NaN;
        double start = Double.NaN;
        for (double stop : stops(a, b, face.polygon())) {
            if ((stop - last) * length > ON) {
                double middle = (last + stop) / 2;
                Coordinate at = new Coordinate(a.x() + middle * (b.x() - a.x()), a.y() + middle * (b.y() - a.y()));
                boolean on = isOn(at, face.polygon());
                if (!on) {
                    add(edge, face, start, last);
                }
                start = !on ? Double.NaN : Double.isNaN(start) ? last : start;
                last = stop;
            }
            last = Double.isNaN(last) ? stop : last;
        }
        add(edge, face, start, last);
    }

    private void add(FaceEdge edge, Face face, double start, double end) {
        if (Double.isNaN(start)) {
            return;
        }
        Vector way = edge.to().minus(edge.from());
        LineTouch line = new LineTouch(
                edgeOf,
                faceOf,
                face,
                edge.from().plus(way.times(start)),
                edge.from().plus(way.times(end)));
        if (found.stream().noneMatch(f -> isSame(f, line))) {
            found.add(line);
        }
    }

    private static boolean isSame(LineTouch a, LineTouch b) {
        return near(a.from(), b.from()) && near(a.to(), b.to()) || near(a.from(), b.to()) && near(a.to(), b.from());
    }

    private static boolean near(Vector a, Vector b) {
        return a.minus(b).length() < 5 * ON;
    }

    private static boolean isOn(Coordinate at, Polygon polygon) {
        return SimplePointInAreaLocator.locate(at, polygon) != Location.EXTERIOR
                || polygon.getBoundary().isWithinDistance(Flat.FACTORY.createPoint(at), ON);
    }

    /** Where along a to b the polygon's edges are crossed, from 0 to 1. */
    private static TreeSet<Double> stops(Vector a, Vector b, Polygon polygon) {
        TreeSet<Double> stops = new TreeSet<>(List.of(0.0, 1.0));
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double square = dx * dx + dy * dy;
        for (List<Coordinate> ring : Flat.rings(polygon)) {
            for (int i = 0; i < ring.size(); i++) {
                Coordinate p = ring.get(i);
                Coordinate q = ring.get((i + 1) % ring.size());
                double off1 = (dx * (p.y - a.y()) - dy * (p.x - a.x())) / square;
                double off2 = (dx * (q.y - a.y()) - dy * (q.x - a.x())) / square;
                double t1 = (dx * (p.x - a.x()) + dy * (p.y - a.y())) / square;
                double t2 = (dx * (q.x - a.x()) + dy * (q.y - a.y())) / square;
                if (off1 * off2 < 0) {
                    stops.add(t1 + off1 / (off1 - off2) * (t2 - t1));
                }
                if (Math.abs(off1) * Math.sqrt(square) < ON) {
                    stops.add(t1);
                }
            }
        }
        stops.removeIf(t -> t < 0 || t > 1);
        return stops;
    }
}
