package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Volume;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The room that pieces enclose all round, between two heights: what soil or seed fills.
 *
 * <p>At each height the pieces are cut level and laid together; what they leave open within is the hollow. Between flat walls its
 * area is a square function of the height, and Simpson's rule is exact; several strips follow where a wall begins or ends.
 */
public final class Hollow {
    private static final int STRIPS = 8;

    private Hollow() {}

    /**
     * Between two heights of the build, in millimetres.
     *
     * @return zero if at either height the pieces leave a way out at the side
     */
    public static Volume between(List<PlacedSolid> pieces, double low, double high) {
        if (area(pieces, low) == 0 || area(pieces, high) == 0) {
            return Volume.ofCubicMillimetres(0);
        }
        double sum = 0;
        double strip = (high - low) / STRIPS;
        for (int i = 0; i < STRIPS; i++) {
            double from = low + i * strip;
            sum += strip / 6 * (area(pieces, from) + 4 * area(pieces, from + strip / 2) + area(pieces, from + strip));
        }
        return Volume.ofCubicMillimetres(sum);
    }

    /** Walls that meet to rounding leave slits: they are closed by widening the walls, and the hollow again. */
    private static double area(List<PlacedSolid> pieces, double height) {
        List<Geometry> cut = new ArrayList<>();
        for (PlacedSolid piece : pieces) {
            piece.behind(Vector.Z, height)
                    .ifPresent(below -> below.faces().stream()
                            .filter(face -> face.name().equals(PlacedSolid.SLICE))
                            .forEach(face ->
                                    cut.add(Flat.widened(Flat.seenFrom(face.polygon(), face.frame(), Pose.HOME)))));
        }
        double open = 0;
        if (!cut.isEmpty()) {
            for (Polygon piece : Flat.pieces(OverlayNGRobust.union(cut))) {
                for (int i = 0; i < piece.getNumInteriorRing(); i++) {
                    open += Flat.widened(Flat.FACTORY.createPolygon(piece.getInteriorRingN(i)))
                            .getArea();
                }
            }
        }
        return open;
    }
}
