package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.Optional;
import org.kerfleaf.joint.DrillSizes;
import org.kerfleaf.joint.FastenerSetting;
import org.kerfleaf.joint.FastenerSetting.Across;
import org.kerfleaf.joint.Force;
import org.kerfleaf.joint.Hold;
import org.kerfleaf.joint.LagScrew;
import org.kerfleaf.joint.Withdrawal;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Bolt;
import org.kerfleaf.sketch.Fastener;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Lag;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Nail;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Screw;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.stock.SpecificGravity;

/** Says how the fasteners of a contact are set: holes, head, reach, thread, and what they hold. */
final class FastenerSettings {
    /** Nearer to the grain than 45° is end grain: the cosine. */
    private static final double ALONG = Math.sqrt(0.5);

    /** What a bolt's hole is wider than the bolt: 1/16 in, the most of NDS 12.1.3.2. */
    private static final Length BOLT_ROOM = Length.ofSixtyFourths(4);

    private static final Across NOT_ASKED = Across.notKnown("it is not asked here");

    static final String NO_TABLE = "no table known here says what a sheet’s edge holds";
    static final String NO_DIAMETER = "how thick a finish nail is, is not said";

    private static final String NO_WOOD = "how dense the wood is, is not known: say its species";

    private final Sketch sketch;
    private final Sizing sizing;
    private final Bodies bodies;
    private final HoldingAcross across;

    FastenerSettings(Sketch sketch, Sizing sizing, Bodies bodies) {
        this.sketch = sketch;
        this.sizing = sizing;
        this.bodies = bodies;
        this.across = new HoldingAcross(sketch, sizing, bodies);
    }

    /** Of the fasteners of a contact in their places. */
    FastenerSetting of(DrivenContact contact) {
        Driver driver = contact.driver();
        Piece last = driver.into().get(driver.into().size() - 1);
        Length wood = contact.driven().stream()
                .map(Driver.Driven::wood)
                .reduce(Length::min)
                .orElse(Length.ZERO);
        Vector way = driver.place().frame().w();
        Hold hold = hold(last, driver.place().faceOfB(), way);
        Length through = bodies.depth(driver.through(), way);
        FastenerSetting pulled = of(driver.said(), through, Optional.of(wood), hold, gravity(last.part()));
        return driver.into().size() > 1
                ? pulled.with(Across.notKnown("it goes through more than two parts, which the rule here does not take"))
                : pulled.with(across.of(
                        driver.said(),
                        across.member(driver.through(), through, way),
                        across.member(last, wood, way),
                        hold,
                        way));
    }

    /** Of fasteners through a part into the studs of a wall, which stand upright; more than their wood is not known. */
    FastenerSetting of(Fastener fastener, PlannedJoint.Behind wall) {
        Optional<Figure<Ratio>> gravity = SpecificGravity.named(wall.studs());
        return of(fastener, wall.thickness(), Optional.empty(), Hold.SIDE_GRAIN, gravity)
                .with(across.intoStuds(fastener, wall, gravity));
    }

    /** Of the screws that a fitting comes with, into studs; empty if either was not said. */
    Optional<FastenerSetting> bracket(Fitting fitting) {
        Length plate = fitting.item().thick().orElse(Length.ZERO);
        return fitting.item()
                .screws()
                .flatMap(screw -> fitting.studs()
                        .map(studs -> screw(
                                        new WoodScrew(screw.gauge(), screw.length()),
                                        plate,
                                        Length.ZERO,
                                        Optional.empty(),
                                        Hold.SIDE_GRAIN,
                                        SpecificGravity.named(studs))
                                .with(Across.notKnown("it goes through metal, which no rule known here takes"))));
    }

    // ---- what it goes into ----------------------------------------------------------------------------------------

    /** A board's end, or its side; a sheet's face, or its edge. */
    Hold hold(Piece piece, Face face, Vector way) {
        boolean board = sizing.of(piece.part())
                .filter(part -> part.said().kind() == PartKind.BOARD)
                .isPresent();
        if (board) {
            return Math.abs(bodies.of(piece).pose().u().dot(way)) > ALONG ? Hold.END_GRAIN : Hold.SIDE_GRAIN;
        }
        return Bodies.isWide(face) ? Hold.SHEET_FACE : Hold.SHEET_EDGE;
    }

    /** By the species of its lumber, or the words of its stock's name. */
    Optional<Figure<Ratio>> gravity(String part) {
        return gravity(sketch, part);
    }

    /** The same for whoever has a sketch. */
    static Optional<Figure<Ratio>> gravity(Sketch sketch, String part) {
        return sketch.part(part)
                .map(said ->
                        sketch.lumber(said.stock()).flatMap(Lumber::species).orElse(said.stock()))
                .flatMap(SpecificGravity::named);
    }

    // ---- by kind ---------------------------------------------------------------------------------------------------

    private static FastenerSetting of(
            Fastener said, Length through, Optional<Length> wood, Hold hold, Optional<Figure<Ratio>> gravity) {
        if (said instanceof Screw screw) {
            return screw(
                    new WoodScrew(screw.gauge(), screw.length()), through, WoodScrew.COUNTERSINK, wood, hold, gravity);
        }
        if (said instanceof Lag lag) {
            return lag(new LagScrew(lag.diameter(), lag.length()), through, wood, hold, gravity);
        }
        if (said instanceof Bolt bolt) {
            return bolt(bolt);
        }
        Nail nail = (Nail) said;
        return nail.diameter()
                .map(thick -> nail(nail, thick, through, wood, hold, gravity))
                .orElseGet(() -> FastenerSetting.unknown(hold, NO_DIAMETER));
    }

    /** A head that is not sunk lies on metal, whose hole is there. */
    private static FastenerSetting screw(
            WoodScrew screw,
            Length through,
            Length sunk,
            Optional<Length> wood,
            Hold hold,
            Optional<Figure<Ratio>> gravity) {
        boolean isSunk = sunk.isPositive();
        Figure<Length> reach = screw.reach(through, sunk);
        Figure<Length> thread =
                screw.threadIn(through, sunk, wood.orElse(reach.value().max(Length.ZERO)));
        Optional<Figure<Force>> holds = hold == Hold.END_GRAIN || hold == Hold.SHEET_EDGE
                ? Optional.empty()
                : gravity.map(g -> Withdrawal.woodScrew(g.value().value(), screw.diameter(), thread.value()));
        return new FastenerSetting(
                hold,
                DrillSizes.clearance(screw.gauge()).filter(hole -> isSunk),
                DrillSizes.pilot(screw.gauge(), DrillSizes.Wood.of(gravity.map(Figure::value))),
                gravity.flatMap(
                        g -> DrillSizes.leadHole(screw.gauge(), g.value().value())),
                Optional.of(sunk)
                        .filter(Length::isPositive)
                        .map(deep ->
                                Figure.of(deep, "heads are sunk a little under the surface", Reason.COMMON_PRACTICE)),
                screw.headWidth().filter(wide -> isSunk),
                Optional.of(reach),
                Optional.of(Figure.of(
                        screw.inDiameters(reach.value()),
                        "reach / D",
                        WoodScrew.DIAMETER_SOURCE,
                        given("reach", reach.value()),
                        given("D", screw.diameter()))),
                wood.map(deep -> screw.tip(through, sunk, deep)),
                Optional.of(thread),
                gravity,
                holds,
                holds.map(Withdrawal::damp),
                notHeld(holds, hold),
                NOT_ASKED);
    }

    private static String notHeld(Optional<Figure<Force>> holds, Hold hold) {
        if (holds.isPresent()) {
            return "";
        }
        return switch (hold) {
            case END_GRAIN -> "a screw or nail in end grain is not relied on (NDS 2018 12.2.2.3, from memory)";
            case SHEET_EDGE -> NO_TABLE;
            default -> NO_WOOD;
        };
    }

    /** A smooth nail: it holds by all of it that is in the wood; a hole first is allowed, not asked. */
    private static FastenerSetting nail(
            Nail nail,
            Length thick,
            Length through,
            Optional<Length> wood,
            Hold hold,
            Optional<Figure<Ratio>> gravity) {
        Length reach = nail.length().minus(through);
        Length in = wood.map(reach::min).orElse(reach).max(Length.ZERO);
        Figure<Length> goesIn = Figure.of(
                reach,
                "length − first part",
                Reason.GEOMETRY,
                given("length", nail.length()),
                given("first part", through));
        Optional<Figure<Force>> holds = hold == Hold.END_GRAIN || hold == Hold.SHEET_EDGE
                ? Optional.empty()
                : gravity.map(g -> Withdrawal.nail(g.value().value(), thick, in));
        return new FastenerSetting(
                hold,
                Optional.empty(),
                gravity.map(g -> DrillSizes.nailHole(thick, g.value())),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(goesIn),
                Optional.of(Figure.of(
                        Ratio.of(reach.dividedBy(thick)),
                        "reach / D",
                        Reason.GEOMETRY,
                        given("reach", reach),
                        given("D", thick))),
                wood.map(deep -> Figure.of(
                        deep.minus(reach),
                        "wood under the first part − reach",
                        Reason.GEOMETRY,
                        given("wood", deep),
                        given("reach", reach))),
                Optional.empty(),
                gravity,
                holds,
                holds.map(Withdrawal::nailDamp),
                notHeld(holds, hold),
                NOT_ASKED);
    }

    private static FastenerSetting lag(
            LagScrew lag, Length through, Optional<Length> wood, Hold hold, Optional<Figure<Ratio>> gravity) {
        Figure<Length> reach = lag.reach(through);
        Optional<Figure<Length>> thread = lag.threadIn(through, wood);
        Optional<Figure<Force>> side = hold == Hold.SHEET_EDGE
                ? Optional.empty()
                : thread.flatMap(
                        in -> gravity.map(g -> Withdrawal.lagScrew(g.value().value(), lag.diameter(), in.value())));
        Optional<Figure<Force>> holds = hold == Hold.END_GRAIN ? side.map(Withdrawal::lagInEndGrain) : side;
        return new FastenerSetting(
                hold,
                Optional.of(lag.shankHole()),
                gravity.map(g -> lag.leadHole(g.value())),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(reach),
                Optional.of(Figure.of(
                        Ratio.of(reach.value().dividedBy(lag.diameter())),
                        "reach / D",
                        Reason.GEOMETRY,
                        given("reach", reach.value()),
                        given("D", lag.diameter()))),
                wood.map(deep -> Figure.of(
                        deep.minus(reach.value()),
                        "wood under the first part − reach",
                        Reason.GEOMETRY,
                        given("wood", deep),
                        given("reach", reach.value()))),
                thread,
                gravity,
                holds,
                holds.map(Withdrawal::damp),
                holds.isPresent() || hold == Hold.SHEET_EDGE
                        ? notHeld(holds, hold)
                        : thread.isEmpty() ? "a lag screw of this diameter is not in the table" : NO_WOOD,
                NOT_ASKED);
    }

    private static FastenerSetting bolt(Bolt bolt) {
        Figure<Length> hole = Figure.of(
                bolt.diameter().plus(BOLT_ROOM),
                "diameter + 1/16 in",
                "NDS 2018 12.1.3.2: 1/32 to 1/16 in wider than the bolt (from memory)",
                given("diameter", bolt.diameter()));
        FastenerSetting none = FastenerSetting.unknown(Hold.NUT, "it goes right through, and its nut holds it");
        return new FastenerSetting(
                none.in(),
                Optional.of(hole),
                none.pilot(),
                none.leadHole(),
                none.sunk(),
                none.head(),
                none.reach(),
                none.diameters(),
                none.tip(),
                none.thread(),
                none.gravity(),
                none.holds(),
                none.holdsDamp(),
                none.notHeld(),
                NOT_ASKED);
    }
}
