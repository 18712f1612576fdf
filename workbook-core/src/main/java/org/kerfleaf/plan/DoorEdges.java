package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Where;

/** The edges of what hangs: the gap round it or how far it laps, what paint and damp leave of the gap, what it swings over. */
final class DoorEdges {
    /** A direction this near to another is taken as the same. */
    private static final double ALIKE = 0.9;

    private final Planned planned;
    private final Hung hung;

    DoorEdges(Planned planned, Hung hung) {
        this.planned = planned;
        this.hung = hung;
    }

    /** Of one that stands between others the gap on every side where something stands; else how far it laps its opening. */
    List<HungDoor.DoorEdge> all() {
        return hung.inset().isPresent() ? gaps() : laps();
    }

    private List<HungDoor.DoorEdge> gaps() {
        Vector along = hung.in().cross(hung.out());
        List<HungDoor.DoorEdge> edges = new ArrayList<>();
        for (Vector way : List.of(hung.out(), hung.out().negated(), along, along.negated())) {
            Hanging.beside(planned.bodies().of(hung.piece()), hung.in(), way, hung.others())
                    .ifPresent(gap -> edges.add(new HungDoor.DoorEdge(
                            side(way),
                            true,
                            Figure.of(gap, "from its edge to what stands beside it, as placed", Reason.GEOMETRY))));
        }
        return edges;
    }

    private static String side(Vector way) {
        double x = Math.abs(way.x());
        double y = Math.abs(way.y());
        if (Math.abs(way.z()) > Math.max(x, y)) {
            return way.z() > 0 ? "top" : "bottom";
        }
        return x >= y ? way.x() > 0 ? "right" : "left" : way.y() > 0 ? "back" : "front";
    }

    // ---- overlay -------------------------------------------------------------------------------------------------

    private List<HungDoor.DoorEdge> laps() {
        Optional<Placing> placing = planned.sketch().placing(hung.piece().placing());
        List<Where> where = placing.map(Placing::where).orElse(List.of());
        Optional<String> over = where.stream()
                .filter(Where.Over.class::isInstance)
                .map(w -> ((Where.Over) w).opening())
                .findFirst();
        return over.flatMap(opening -> where.stream()
                        .flatMap(w -> Places.others(w).stream())
                        .flatMap(key -> planned.assembly().of(key).stream())
                        .flatMap(piece -> laps(piece, opening).stream())
                        .findFirst())
                .orElse(List.of());
    }

    private Optional<List<HungDoor.DoorEdge>> laps(Piece carcass, String opening) {
        Optional<SizedPart> part = planned.sized(carcass.part());
        if (carcass.sloping().isPresent() || hung.piece().sloping().isPresent()) {
            return Optional.empty();
        }
        return part.flatMap(sized -> sized.cutout(opening).map(cutout -> {
            List<HungDoor.DoorEdge> edges = new ArrayList<>();
            laps(edges, sized.standing().across(), carcass, cutout.from(), cutout.wide());
            laps(edges, sized.standing().up(), carcass, cutout.up(), cutout.high());
            return edges;
        }));
    }

    private void laps(List<HungDoor.DoorEdge> edges, Axis axis, Piece carcass, Length from, Length extent) {
        Length low = carcass.box().low(axis).plus(from);
        Length high = low.plus(extent);
        edges.add(lap(axis.unit().negated(), low.minus(hung.piece().box().low(axis)), low));
        edges.add(lap(axis.unit(), hung.piece().box().high(axis).minus(high), high));
    }

    private static HungDoor.DoorEdge lap(Vector way, Length lap, Length opening) {
        return new HungDoor.DoorEdge(
                side(way),
                false,
                Figure.of(
                        lap,
                        "from the opening's edge to its own, as placed",
                        Reason.GEOMETRY,
                        given("opening ends at", opening)));
    }

    // ---- what is left of the gap
    // -------------------------------------------------------------------------------------

    /** Of one that stands between others. */
    Optional<HungDoor.Room> room() {
        return hung.inset().map(gap -> {
            Figure<Length> film = film();
            Optional<Figure<Length>> swelling = swelling();
            return new HungDoor.Room(
                    Figure.of(gap, "from the edge away from the hinges to what stands beside it", Reason.GEOMETRY),
                    film,
                    swelling,
                    swelling.map(swells -> Figure.of(
                            gap.minus(film.value(), swells.value()),
                            "gap − paint on both edges − swelling",
                            Reason.COMMON_PRACTICE,
                            given("gap", gap),
                            given("paint", film.value()),
                            given("swelling", swells.value()))));
        });
    }

    /** Two painted edges take 1/32 in (1 mm) of a gap. */
    private Figure<Length> film() {
        boolean painted = planned.sketch().all(Coat.class).stream()
                .flatMap(coat -> coat.faces().stream())
                .anyMatch(faces -> faces.which() == Coat.Which.OUTSIDE
                        || faces.part().filter(hung.piece().part()::equals).isPresent());
        Length film = planned.style().unit() == LengthUnit.INCHES ? Length.ofSixtyFourths(2) : Length.ofMillimetres(1);
        return painted
                ? Figure.of(film, "paint on two edges takes 1/32 in (1 mm)", Reason.COMMON_PRACTICE)
                : Figure.of(Length.ZERO, "no coat comes to it", Reason.THE_WORKBOOK);
    }

    /**
     * What all boards whose grain runs along the hinges swell together; a sheet hardly swells. Of boards one behind the other
     * the first counts. Empty if it is not known of one of them.
     */
    private Optional<Figure<Length>> swelling() {
        Length sum = Length.ZERO;
        List<String> names = new ArrayList<>();
        for (PlacedSolid board : across()) {
            Optional<Moving> moving = part(board).flatMap(planned.movements()::moving);
            if (moving.isEmpty()) {
                return Optional.empty();
            }
            sum = sum.plus(moving.get().atDampest().value().max(Length.ZERO));
            names.add(board.part());
        }
        return Optional.of(
                names.isEmpty()
                        ? Figure.of(sum, "a sheet hardly swells", Reason.COMMON_PRACTICE)
                        : Figure.of(
                                sum,
                                "what its boards side by side swell across their grain until they are dampest",
                                "Wood Handbook FPL-GTR-190, ch. 13",
                                given("boards", String.join(", ", names))));
    }

    /** The boards that lie across the way the door is wide, none behind another. */
    private List<PlacedSolid> across() {
        List<PlacedSolid> all = hung.turned().stream()
                .filter(solid ->
                        part(solid).filter(p -> p.kind() == PartKind.BOARD).isPresent())
                .filter(solid -> Math.abs(solid.pose().v().dot(hung.out())) > ALIKE)
                .sorted(Comparator.comparingDouble(
                        solid -> solid.project(hung.out()).least()))
                .toList();
        List<PlacedSolid> apart = new ArrayList<>();
        double reached = Double.NEGATIVE_INFINITY;
        for (PlacedSolid solid : all) {
            PlacedSolid.Reach reach = solid.project(hung.out());
            if (reach.least() > reached - Touching.TOLERANCE.inMillimetres()) {
                apart.add(solid);
                reached = reach.most();
            }
        }
        return apart;
    }

    private Optional<PlannedPart> part(PlacedSolid solid) {
        return planned.parts().stream()
                .filter(p -> p.name().equals(solid.part()))
                .findFirst();
    }

    /** What would have to be said before its swelling is known. */
    String missing() {
        return across().stream()
                .flatMap(board -> part(board).stream())
                .filter(part -> planned.movements().moving(part).isEmpty())
                .map(planned.movements()::missing)
                .findFirst()
                .orElse("");
    }

    // ---- what lies under it
    // ------------------------------------------------------------------------------------------

    /** The highest piece that a door on upright hinges swings over. */
    Optional<HungDoor.Under> under() {
        if (Math.abs(hung.line().axis().z()) < ALIKE) {
            return Optional.empty();
        }
        double low = hung.turned().stream()
                .mapToDouble(t -> t.bounds().low().z())
                .min()
                .orElseThrow();
        Vector front = hung.in().negated();
        double inner = planned.bodies().of(hung.piece()).project(front).least();
        return hung.others().stream()
                .filter(other -> other.bounds().high().z() <= low + Touching.TOLERANCE.inMillimetres())
                .filter(other -> other.project(front).most() > inner + Touching.TOLERANCE.inMillimetres())
                .filter(hung::comesUnder)
                .max(Comparator.comparingDouble(other -> other.bounds().high().z()))
                .map(other -> new HungDoor.Under(
                        other.part(),
                        Figure.of(
                                Length.ofMillimetres(
                                        Math.max(0, low - other.bounds().high().z())),
                                "from its lowest edge down to the highest thing it swings over",
                                Reason.GEOMETRY)));
    }
}
