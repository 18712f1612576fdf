package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Item;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Side;

/** Where hinges, catches and knob go on what hangs, and on what it closes. */
final class HingePlaces {
    /** A line this much upright is measured from the bottom. */
    private static final double UPRIGHT = 0.7;

    private static final Length SPINDLE_ROOM_INCHES = Length.ofSixtyFourths(2);
    private static final Length SPINDLE_ROOM_MILLIMETRES = Length.ofMillimetres(1);

    private final Planned planned;

    HingePlaces(Planned planned) {
        this.planned = planned;
    }

    HungDoor of(Hung hung) {
        PlacedSolid door = planned.bodies().of(hung.piece());
        Vector along = along(hung);
        Length high = extent(door, along);
        List<Figure<Length>> hinges = spread(count(hung, Item.Kind.HINGE), high, "hinge");
        Optional<Piece> carcass = carcass(hung);
        DoorEdges edges = new DoorEdges(planned, hung);
        return new HungDoor(
                fitted(hung, Item.Kind.HINGE).map(f -> f.origin().step()).orElse(0),
                hung.name(),
                from(along),
                hinges,
                carcass.map(Piece::part),
                carcass.map(piece -> onCarcass(hinges, door, planned.bodies().of(piece), along))
                        .orElse(List.of()),
                spread(count(hung, Item.Kind.CATCH), high, "catch"),
                edges.all(),
                edges.room(),
                edges.under(),
                fitted(hung, Item.Kind.WEATHERSTRIP)
                        .flatMap(strip -> strip.item()
                                .squeezedTo()
                                .map(shut -> Figure.said(shut, "how thick the weatherstrip is when the door is shut"))),
                fitted(hung, Item.Kind.KNOB)
                        .flatMap(knob -> knob.item().thick())
                        .map(this::knobHole),
                fitted(hung, Item.Kind.KNOB).flatMap(knob -> backset(hung, knob)));
    }

    /** Upwards, to the right or to the back, along the hinges. */
    static Vector along(Hung hung) {
        Vector axis = hung.line().axis();
        Vector[] ways = {Vector.Z, Vector.X, Vector.Y};
        Vector best = ways[0];
        for (Vector way : ways) {
            if (Math.abs(axis.dot(way)) > Math.max(UPRIGHT, Math.abs(axis.dot(best)) + 1e-9)) {
                best = way;
            }
        }
        return best;
    }

    private static String from(Vector along) {
        return along.equals(Vector.Z) ? "the bottom" : along.equals(Vector.X) ? "the left" : "the front";
    }

    private static Length extent(PlacedSolid solid, Vector along) {
        PlacedSolid.Reach reach = solid.project(along);
        return Length.ofMillimetres(reach.most() - reach.least());
    }

    /** A sixth of the length from each end, what is more evenly between; one alone in the middle. */
    private static List<Figure<Length>> spread(int many, Length length, String what) {
        return IntStream.range(0, many)
                .mapToObj(i -> Figure.of(
                        many == 1
                                ? length.half()
                                : length.dividedBy(6)
                                        .plus(length.times(2)
                                                .dividedBy(3)
                                                .times(i)
                                                .dividedBy(many - 1)),
                        many == 1 ? "in the middle" : "a sixth of the length from each end, others evenly between",
                        Reason.COMMON_PRACTICE,
                        given("length", length),
                        given(what + " number", i + 1)))
                .toList();
    }

    private static List<Figure<Length>> onCarcass(
            List<Figure<Length>> hinges, PlacedSolid door, PlacedSolid carcass, Vector along) {
        Length off = Length.ofMillimetres(
                door.project(along).least() - carcass.project(along).least());
        List<Figure<Length>> places = new ArrayList<>();
        for (Figure<Length> hinge : hinges) {
            places.add(Figure.of(
                    hinge.value().plus(off),
                    "the hinge's place on the door + how far the door begins from the same end",
                    Reason.GEOMETRY,
                    given("on the door", hinge.value()),
                    given("door begins", off)));
        }
        return places;
    }

    private Figure<Length> knobHole(Length spindle) {
        Length room = planned.style().unit() == LengthUnit.INCHES ? SPINDLE_ROOM_INCHES : SPINDLE_ROOM_MILLIMETRES;
        return Figure.of(
                spindle.plus(room),
                "spindle + 1/32 in (1 mm)",
                Reason.COMMON_PRACTICE,
                given("spindle", spindle),
                given("room", room));
    }

    /** The middle of the stile it is on: between the door's edge and its opening. Not known for a door without an opening. */
    private Optional<Figure<Length>> backset(Hung hung, Fitting knob) {
        return planned.sized(hung.piece().part())
                .flatMap(part -> part.cutouts().stream()
                        .filter(Cutout::opening)
                        .findFirst()
                        .flatMap(opening -> stile(part, opening, knob))
                        .map(stile -> Figure.of(
                                stile.half(),
                                "the middle of the stile",
                                Reason.COMMON_PRACTICE,
                                given("stile", stile))));
    }

    private static Optional<Length> stile(SizedPart part, Cutout opening, Fitting knob) {
        Length left = opening.from();
        Length right = part.across().value().minus(left, opening.wide());
        return knob.side()
                .filter(side -> side == Side.LEFT || side == Side.RIGHT)
                .map(side -> side == Side.LEFT ? left : right);
    }

    // ---- what is said of it --------------------------------------------------------------------------------------

    private Optional<Fitting> fitted(Hung hung, Item.Kind kind) {
        return planned.sketch().all(Fitting.class).stream()
                .filter(f -> f.item().kind() == kind)
                .filter(f -> f.on().filter(hung.piece().placing()::equals).isPresent())
                .findFirst();
    }

    private int count(Hung hung, Item.Kind kind) {
        return fitted(hung, kind).map(Fitting::count).orElse(0);
    }

    /** What it was placed by, or what its build is mounted on, and does not turn with it: the piece nearest to the hinges. */
    Optional<Piece> carcass(Hung hung) {
        int build = planned.assembly().number(hung.piece().placing());
        Stream<Origin> named = planned.sketch().placing(hung.piece().placing()).stream()
                .flatMap(p -> p.where().stream())
                .flatMap(where -> Places.others(where).stream());
        Stream<Origin> under = planned.sketch().all(Mount.class).stream()
                .filter(mount -> planned.assembly().number(mount.what()) == build)
                .flatMap(mount -> Stream.concat(mount.onTopOf().stream(), mount.restsOn().stream()));
        return Stream.concat(named, under)
                .flatMap(key -> planned.assembly().of(key).stream())
                .filter(planned.bodies()::has)
                .filter(piece -> !hung.turned().contains(planned.bodies().of(piece)))
                .min(Comparator.comparingDouble(
                        piece -> hung.line().nearest(planned.bodies().of(piece))));
    }
}
