package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * How two placed solids are to each other.
 *
 * @param touches places where they lie face on face
 * @param lines edges of one on a face of the other; looked for only where there are no touches
 * @param clash the space both are in, if any
 */
public record Touching(
        PlacedSolid a, PlacedSolid b, List<Touch> touches, List<LineTouch> lines, Optional<Clash> clash) {
    /** Faces nearer than this touch: the one tolerance for contact, clash and placement. */
    public static final Length TOLERANCE = Length.ofMillimetres(0.01);

    public Touching {
        touches = List.copyOf(touches);
        lines = List.copyOf(lines);
    }

    public static Touching between(PlacedSolid a, PlacedSolid b) {
        if (!a.bounds().isNear(b.bounds(), TOLERANCE.inMillimetres())) {
            return new Touching(a, b, List.of(), List.of(), Optional.empty());
        }
        List<Touch> touches = TouchSearch.between(a, b);
        Optional<Clash> clash = ClashSearch.between(a, b);
        boolean none = touches.isEmpty() && clash.isEmpty();
        return new Touching(a, b, touches, none ? LineSearch.between(a, b) : List.of(), clash);
    }

    /** Every pair that touches, touches along a line or clashes, in the order of the list. */
    public static List<Touching> all(List<PlacedSolid> solids) {
        List<Integer> byLeft = IntStream.range(0, solids.size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> solids.get(i).bounds().low().x()))
                .toList();
        double near = TOLERANCE.inMillimetres();
        List<int[]> pairs = new ArrayList<>();
        for (int i = 0; i < byLeft.size(); i++) {
            Bounds own = solids.get(byLeft.get(i)).bounds();
            for (int j = i + 1; j < byLeft.size(); j++) {
                Bounds other = solids.get(byLeft.get(j)).bounds();
                if (other.low().x() > own.high().x() + near) {
                    break;
                }
                if (own.isNear(other, near)) {
                    int first = Math.min(byLeft.get(i), byLeft.get(j));
                    pairs.add(new int[] {first, Math.max(byLeft.get(i), byLeft.get(j))});
                }
            }
        }
        pairs.sort(Comparator.<int[]>comparingInt(p -> p[0]).thenComparingInt(p -> p[1]));
        return pairs.stream()
                .map(p -> between(solids.get(p[0]), solids.get(p[1])))
                .filter(Touching::isAny)
                .toList();
    }

    /** Whether they touch, touch along a line or clash. */
    public boolean isAny() {
        return !touches.isEmpty() || !lines.isEmpty() || clash.isPresent();
    }

    /** How far apart they are; empty if they touch or clash. */
    public Optional<Gap> gap() {
        return isAny() ? Optional.empty() : Optional.of(GapSearch.between(a, b));
    }

    /** What both share, over all touches. */
    public Area area() {
        return touches.stream().map(Touch::area).reduce(Area.ZERO, Area::plus);
    }

    /** How much of the faces of that name other pieces cover: the union of their contacts. */
    public static Area hidden(PlacedSolid solid, String face, List<Touching> all) {
        double sum = 0;
        for (Face piece : solid.solid().faces(face)) {
            for (Polygon place : hidden(solid, piece.placedAt(solid.pose()), all)) {
                sum += place.getArea();
            }
        }
        return Area.ofSquareMillimetres(sum);
    }

    /** The places of one face of the build that other pieces cover, in the face's frame; they do not overlap. */
    public static List<Polygon> hidden(PlacedSolid solid, Face face, List<Touching> all) {
        List<Polygon> places = new ArrayList<>();
        for (Touching pair : all) {
            for (Touch touch : pair.touches()) {
                if (pair.a().equals(solid) && touch.faceOfA().frame().equals(face.frame())
                        || pair.b().equals(solid) && touch.faceOfB().frame().equals(face.frame())) {
                    Polygon seen = Flat.seenFrom(touch.polygon(), touch.frame(), face.frame());
                    places.addAll(Flat.shared(seen, face.polygon()));
                }
            }
        }
        return places.size() < 2 ? places : Flat.pieces(OverlayNGRobust.union(List.<Geometry>copyOf(places)));
    }
}
