package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/**
 * A solid as convex pieces: the sheet divided by its pockets into regions of one height, these into triangles where they are not
 * convex, and every prism over them clipped by the cuts.
 */
final class ConvexPieces {
    private ConvexPieces() {}

    private record Region(Polygon polygon, double low, double high) {}

    static List<ConvexPiece> of(Solid solid, Section section) {
        List<ConvexPiece> pieces = new ArrayList<>();
        for (Region region : regions(solid, section)) {
            for (Polygon convex : convex(region.polygon())) {
                Optional<ConvexPiece> piece = Optional.of(prism(convex, region.low(), region.high()));
                for (Cut cut : solid.cuts()) {
                    ConvexPiece.Plane plane = new ConvexPiece.Plane(cut.normal(), cut.offset());
                    piece = piece.flatMap(p -> p.clipped(plane));
                }
                piece.ifPresent(pieces::add);
            }
        }
        return List.copyOf(pieces);
    }

    private static List<Region> regions(Solid solid, Section section) {
        List<Region> regions =
                List.of(new Region(section.sheet, 0, solid.thickness().inMillimetres()));
        for (int i = 0; i < solid.pockets().size(); i++) {
            boolean inside = solid.pockets().get(i).side() == SheetSide.INSIDE;
            Polygon pocket = section.pocketShapes.get(i);
            double floor = section.floor(i);
            List<Region> divided = new ArrayList<>();
            for (Region region : regions) {
                Flat.without(List.of(region.polygon()), pocket)
                        .forEach(p -> divided.add(new Region(p, region.low(), region.high())));
                double low = inside ? region.low() : Math.max(region.low(), floor);
                double high = inside ? Math.min(region.high(), floor) : region.high();
                if (high - low > Section.NOTHING) {
                    Flat.shared(region.polygon(), pocket).forEach(p -> divided.add(new Region(p, low, high)));
                }
            }
            regions = divided;
        }
        return regions;
    }

    private static List<Polygon> convex(Polygon polygon) {
        if (Clipping.isConvex(polygon)) {
            return List.of(polygon);
        }
        Geometry triangles = PolygonTriangulator.triangulate(polygon);
        List<Polygon> found = new ArrayList<>();
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            if (triangles.getGeometryN(i).getArea() > 0) {
                found.add((Polygon) triangles.getGeometryN(i));
            }
        }
        return found;
    }

    private static ConvexPiece prism(Polygon polygon, double low, double high) {
        List<Coordinate> ring = Flat.rings(polygon).get(0);
        int count = ring.size();
        List<Vector> bottom = new ArrayList<>();
        List<Vector> top = new ArrayList<>();
        List<List<Vector>> faces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Coordinate p = ring.get(i);
            Coordinate q = ring.get((i + 1) % count);
            top.add(new Vector(p.x, p.y, high));
            bottom.add(0, new Vector(p.x, p.y, low));
            faces.add(List.of(
                    new Vector(p.x, p.y, low),
                    new Vector(q.x, q.y, low),
                    new Vector(q.x, q.y, high),
                    new Vector(p.x, p.y, high)));
        }
        faces.add(bottom);
        faces.add(top);
        return new ConvexPiece(faces);
    }
}
