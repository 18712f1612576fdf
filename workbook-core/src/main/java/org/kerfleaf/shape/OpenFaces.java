package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.measure.Area;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * What of the wide faces of a build lies open, inside the finished build and outside.
 *
 * <p>A face less what other pieces cover falls into parts; {@link Sight} tells of each whether the finished build closes it in. A
 * roof's under side is so inside over the room and outside in the overhang. A build that closes nothing in (a frame without lid
 * or floor) has no inside by sight: there the faces called INSIDE count as such.
 */
public final class OpenFaces {
    /** How far before a face one looks about, in millimetres. */
    private static final double BEFORE = 0.3;

    /** What of a face lies open, in one piece. */
    record Part(SheetSide side, boolean inside, double area, Vector before) {}

    /** All that what lies open of a piece depends on: itself, and what of the others it touches. */
    record Beside(PlacedSolid solid, List<PlacedSolid> others) {}

    private final Map<PlacedSolid, List<Part>> parts = new LinkedHashMap<>();
    private final boolean closesIn;

    /** @param known what was worked out before in the same finished build; more is put into it */
    OpenFaces(List<PlacedSolid> there, List<Touching> touching, Sight sight, Map<Beside, List<Part>> known) {
        for (PlacedSolid solid : there) {
            List<Touching> own = touching.stream()
                    .filter(pair -> pair.a().equals(solid) || pair.b().equals(solid))
                    .toList();
            List<PlacedSolid> others = own.stream()
                    .map(pair -> pair.a().equals(solid) ? pair.b() : pair.a())
                    .toList();
            parts.put(solid, known.computeIfAbsent(new Beside(solid, others), k -> parts(solid, own, sight)));
        }
        closesIn = parts.values().stream().flatMap(List::stream).anyMatch(Part::inside);
    }

    private static List<Part> parts(PlacedSolid solid, List<Touching> touching, Sight sight) {
        List<Part> open = new ArrayList<>();
        for (SheetSide side : SheetSide.values()) {
            open.addAll(parts(solid, side, touching, sight));
        }
        return List.copyOf(open);
    }

    private static List<Part> parts(PlacedSolid solid, SheetSide side, List<Touching> touching, Sight sight) {
        Face face = solid.face(side.name());
        List<Polygon> covered = Touching.hidden(solid, face, touching);
        Geometry cover = covered.size() == 1 ? covered.get(0) : OverlayNGRobust.union(List.<Geometry>copyOf(covered));
        Geometry left = covered.isEmpty() ? face.polygon() : overlay(face.polygon(), cover, OverlayNG.DIFFERENCE);
        // Covers that meet to rounding leave slits through which a face would hang together: widen them while it is
        // parted.
        Geometry parted = covered.isEmpty() ? left : overlay(face.polygon(), Flat.widened(cover), OverlayNG.DIFFERENCE);
        Map<Polygon, Geometry> pieces = new LinkedHashMap<>();
        for (Polygon piece : Flat.pieces(parted)) {
            pieces.put(piece, covered.isEmpty() ? piece : overlay(left, Flat.widened(piece), OverlayNG.INTERSECTION));
        }
        // Arcs are chords in these polygons; the closed form of the whole face says how much that lacks.
        double drawn = pieces.values().stream().mapToDouble(Geometry::getArea).sum();
        double exact = solid.solid()
                .area(side.name())
                .minus(Touching.hidden(solid, side.name(), touching))
                .squareMillimetres();
        double scale = drawn == 0 ? 0 : exact / drawn;
        List<Part> parts = new ArrayList<>();
        pieces.forEach((piece, whole) -> {
            Coordinate middle = piece.getInteriorPoint().getCoordinate();
            Vector before = face.frame().toWorld(new Vector(middle.x, middle.y, BEFORE));
            parts.add(new Part(side, sight.isInside(before), whole.getArea() * scale, before));
        });
        return parts;
    }

    private static Geometry overlay(Geometry a, Geometry b, int operation) {
        return OverlayNGRobust.overlay(a, b, operation);
    }

    /** The open area of both wide faces of a piece that lies inside, or outside. */
    public Area of(PlacedSolid solid, boolean inside) {
        double sum = 0;
        for (Part part : parts.getOrDefault(solid, List.of())) {
            sum += isInside(part) == inside ? part.area() : 0;
        }
        return Area.ofSquareMillimetres(sum);
    }

    private boolean isInside(Part part) {
        return closesIn ? part.inside() : part.side() == SheetSide.INSIDE;
    }

    /**
     * A place of a wide face that lies open, in one piece.
     *
     * @param inside whether the finished build closes it in
     * @param before a point of the air before it
     */
    public record Place(PlacedSolid solid, SheetSide side, boolean inside, Area area, Vector before) {
        /** Out of the wood, one long. */
        public Vector normal() {
            return solid.face(side.name()).normal();
        }
    }

    /** Every open place of a piece. */
    public List<Place> places(PlacedSolid solid) {
        return parts.getOrDefault(solid, List.of()).stream()
                .map(p -> new Place(solid, p.side(), isInside(p), Area.ofSquareMillimetres(p.area()), p.before()))
                .toList();
    }
}
