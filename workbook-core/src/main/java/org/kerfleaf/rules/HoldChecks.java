package org.kerfleaf.rules;

import java.util.Optional;
import org.kerfleaf.joint.DrillSizes;
import org.kerfleaf.joint.EdgeDistance;
import org.kerfleaf.joint.Force;
import org.kerfleaf.joint.ScrewChoice;
import org.kerfleaf.joint.SettingWords;
import org.kerfleaf.joint.Sideways;
import org.kerfleaf.joint.Withdrawal;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.site.SitePlan;

/** Whether what is driven draws the joint tight, splits nothing, and holds what pulls at it. */
public final class HoldChecks {
    private static final String PULL =
            "NDS 2018 12.2 (reference values, dry, load of ten years); an estimate: the local code and a licensed"
                    + " professional decide";
    private static final String SIDEWAYS = Sideways.SOURCE + "; load of ten years, dry";
    private static final String LAG_DISTANCES =
            "NDS 2018 table 12.5.1E: lag screws under a straight pull, end 4 D, edge 1.5 D (from memory)";
    private static final double DENSE = 0.5;

    private HoldChecks() {}

    /**
     * Check 13: nothing of the thread turns in the first part, or the two are jacked apart: a clearance hole through it, or a
     * shank that is plain as far as it is thick.
     *
     * @param drilled whether holes are drilled first
     */
    public static Check jacking(String of, WoodScrew screw, Length through, boolean drilled, MeasureStyle style) {
        Held held = new Held(
                "Jacking", of, Reason.COMMON_PRACTICE + "; thread two thirds of the length (NDS appendix L)", style);
        Length plain = screw.length().minus(Withdrawal.screwThread(screw.length()));
        if (!plain.isShorterThan(through)) {
            return held.holds("The shank of a %s screw is plain for %s, the first part is %s thick."
                    .formatted(screw.words(style), Say.fine(plain, style), Say.fine(through, style)));
        }
        Optional<Length> hole = DrillSizes.clearance(screw.gauge()).map(figure -> figure.value());
        if (!drilled) {
            return held.falls(
                    "Not drilled, the thread of a %s screw turns in both parts and can hold them apart."
                            .formatted(screw.words(style)),
                    hole.map(bit -> "Drill a clearance hole of %s through the first part."
                                    .formatted(Say.fine(bit, style)))
                            .orElse("Drill a clearance hole as wide as the shank through the first part."));
        }
        return hole.map(bit -> held.holds(
                        "A clearance hole of %s lets the shank of a No. %d screw turn freely in the first part."
                                .formatted(Say.fine(bit, style), screw.gauge())))
                .orElseGet(() -> held.notKnown(
                        "Which clearance hole a No. %d screw takes is not in the table.".formatted(screw.gauge()),
                        "Drill one as wide as the shank, %s.".formatted(Say.fine(screw.diameter(), style))));
    }

    /**
     * Check 14: a pilot hole in dense wood, and near an end.
     *
     * @param gravity of the wood the thread is in, if known
     * @param end the distance to the nearest end of a board, if there is one
     */
    public static Check pilot(
            String of, int gauge, Optional<Ratio> gravity, Optional<Length> end, boolean drilled, MeasureStyle style) {
        Held held = new Held(
                "Pilot hole",
                of,
                "NDS 2018 12.1.5: none asked up to G 0.5 (from memory); size by " + DrillSizes.SHOP_TABLE,
                style);
        Optional<Length> hole =
                DrillSizes.pilot(gauge, DrillSizes.Wood.of(gravity)).map(figure -> figure.value());
        String bit = hole.map(known -> "A pilot hole of %s would do.".formatted(Say.fine(known, style)))
                .orElse("Drill a pilot hole as wide as the root of the thread.");
        if (drilled) {
            return hole.map(known -> held.holds(
                            "A No. %d screw gets a pilot hole of %s.".formatted(gauge, Say.fine(known, style))))
                    .orElseGet(() -> held.notKnown(
                            "Which pilot hole a No. %d screw takes is not in the table.".formatted(gauge), bit));
        }
        Length room = EdgeDistance.END_PULLED
                .least(WoodScrew.diameter(gauge).value(), false)
                .value();
        if (end.filter(near -> near.isShorterThan(room)).isPresent()) {
            return held.falls(
                    "Not drilled, %s from an end: a No. %d screw wants %s there or it splits the wood."
                            .formatted(Say.fine(end.get(), style), gauge, Say.fine(room, style)),
                    bit);
        }
        if (gravity.isEmpty()) {
            return held.notKnown(
                    "Not drilled, and how dense the wood is, is not known.", "Say the wood’s species. " + bit);
        }
        String wood = "Not drilled, in wood of specific gravity "
                + Say.number(gravity.get().value(), 2);
        return gravity.get().value() > DENSE
                ? held.falls(wood + ": it splits, or the screw breaks.", bit)
                : held.holds(wood + ": none is asked.");
    }

    /**
     * Check 15, in a row: 5 diameters across the grain, 10 along it, drilled first; 10 and 15 not drilled.
     *
     * @param apart from one to the next
     */
    public static Check row(
            String of, int gauge, Length apart, boolean alongGrain, boolean drilled, MeasureStyle style) {
        Held held = new Held("Row distance", of, EdgeDistance.SOURCE, style);
        Length wanted = (alongGrain ? EdgeDistance.IN_ROW_ALONG : EdgeDistance.IN_ROW_ACROSS)
                .least(WoodScrew.diameter(gauge).value(), drilled)
                .value();
        return held.atLeast(
                "No. %d screws stand %s apart in a row %s the grain."
                        .formatted(gauge, Say.fine(apart, style), alongGrain ? "along" : "across"),
                apart,
                wanted,
                "Fewer of them, or a thinner screw.");
    }

    /** Check 15 for a lag screw: 4 diameters from an end, 1.5 from an edge. */
    public static Check lagDistance(String of, Length diameter, Length distance, boolean end, MeasureStyle style) {
        Held held = new Held(end ? "End distance" : "Edge distance", of, LAG_DISTANCES, style);
        return held.atLeast(
                "A lag screw of %s is %s from the %s."
                        .formatted(Say.fine(diameter, style), Say.fine(distance, style), end ? "end" : "edge"),
                distance,
                diameter.times(end ? 4 : 1.5),
                "Move it, or take a thinner one.");
    }

    /** Check 11 for a lag screw: 4 of its diameters in the second part, its tip not counted. */
    public static Check lagReach(String of, Length diameter, Length thread, MeasureStyle style) {
        Held held = new Held(
                "Lag reach", of, "NDS 2018 12.1.4.6: 4 diameters at least, tip not counted (from memory)", style);
        return held.atLeast(
                "%s of its thread is in the second part.".formatted(Say.fine(thread, style)),
                thread,
                diameter.times(4),
                "A longer lag screw would hold.");
    }

    /** Capability 30: one of the drawer's screws suits the joint. */
    public static Check drawer(ScrewChoice choice, MeasureStyle style) {
        Held held = new Held("Screw from the drawer", choice.joint(), ScrewChoice.SOURCE, style);
        String taken = new SettingWords(style).chosen(choice);
        return choice.suits()
                ? held.holds(taken)
                : held.falls(
                        taken,
                        choice.wouldSuit()
                                .map(screw -> "Buy %s.".formatted(screw.words(style)))
                                .orElse(
                                        "None that is sold would suit: drive from the other side, or screw to a cleat."));
    }

    /** Check 20: a sunk head stays inside the edge: half its width is no more than the distance to the edge. */
    public static Check head(String of, Length width, Length edge, MeasureStyle style) {
        Held held = new Held("Head in the edge", of, Reason.COMMON_PRACTICE, style);
        return held.atMost(
                "Half of a head %s wide, %s from the edge.".formatted(Say.fine(width, style), Say.fine(edge, style)),
                width.half(),
                edge,
                "A smaller gauge, or further from the edge; it breaks out.");
    }

    /** Check 18: what pulls a joint straight apart is no more than its fasteners hold together. */
    public static Check pull(String of, Force pull, Force each, int count, boolean endGrain, MeasureStyle style) {
        Held held = new Held("Pull", of, PULL, style);
        Force all = each.times(count);
        double left = all.newtons() - pull.newtons();
        String much = Force.ofNewtons(Math.abs(left)).in(style);
        return held.level(
                "%s pulls at %d fasteners that hold %s each, %s together."
                        .formatted(pull.in(style), count, each.in(style), all.in(style)),
                left / Math.max(pull.newtons(), 1e-9),
                much + " to spare",
                "short by " + much,
                endGrain
                        ? "Screws in end grain are not relied on: a cleat or a bracket takes the pull."
                        : "More of them, longer or thicker ones, or a bracket.");
    }

    /** Check 18 where it is not known what a fastener holds. */
    public static Check pullNotKnown(String of, Force pull, String why, MeasureStyle style) {
        return new Held("Pull", of, PULL, style)
                .notKnown(
                        "%s pulls, and what a fastener holds is not known: %s.".formatted(pull.in(style), why),
                        "Let a cleat or a bracket take it, or say the wood.");
    }

    /** Check 18 where nobody said whether a joint with screws in end grain is pulled. */
    public static Check endGrain(String of, MeasureStyle style) {
        return new Held("Pull in end grain", of, PULL, style)
                .notKnown(
                        "These screws stand in end grain, where they hold nothing against a straight pull. Whether one comes, is not said.",
                        "Say .pulledBy(\"40 lb\"), or let a cleat or bracket take it.");
    }

    /**
     * Check 19: a bracket's upper screws hold what its load pulls: load · arm / height, shared by the brackets.
     *
     * @param load on all brackets
     * @param out how far from the wall it acts
     * @param height between a bracket's upper and lower screws
     * @param pull at the top screw of one bracket
     * @param each what that screw holds
     */
    public static Check bracket(
            String of,
            Force load,
            Length out,
            Length height,
            int brackets,
            Force pull,
            Force each,
            MeasureStyle style) {
        Held held = new Held("Bracket pull", of, PULL, style);
        double left = each.newtons() - pull.newtons();
        String much = Force.ofNewtons(Math.abs(left)).in(style);
        return held.level(
                "%s at %s from the wall, over %s of height, on %d: %s in all, %s at each top screw. Allowed: %s. %s"
                        .formatted(
                                load.in(style),
                                Say.fine(out, style),
                                Say.fine(height, style),
                                brackets,
                                pull.times(brackets).in(style),
                                pull.in(style),
                                each.in(style),
                                SitePlan.DEFERS),
                left / each.newtons(),
                much + " to spare",
                "over by " + much,
                "More height between the screws, longer screws, or more brackets.");
    }

    /**
     * What hangs on a joint is no more than its fasteners hold sideways (beside check 19; no number of its own in the trade's list).
     *
     * @param load all of it
     * @param each what one of the fasteners gets
     * @param holds what the weakest of them holds
     */
    public static Check sideways(String of, Mass load, int fasteners, Force each, Force holds, MeasureStyle style) {
        Held held = new Held("Sideways", of, SIDEWAYS, style);
        double left = holds.newtons() - each.newtons();
        String much = Force.ofNewtons(Math.abs(left)).in(style);
        return held.level(
                "%s hang on %d: %s sideways on each. Allowed: %s. %s"
                        .formatted(load.in(style), fasteners, each.in(style), holds.in(style), SitePlan.DEFERS),
                left / holds.newtons(),
                much + " to spare",
                "over by " + much,
                "More of them, thicker ones, or a cleat under it.");
    }

    /** The same where it is not known what one holds sideways. */
    public static Check sidewaysNotKnown(String of, Force each, String why, MeasureStyle style) {
        return new Held("Sideways", of, SIDEWAYS, style)
                .notKnown(
                        "%s on each sideways, and what one holds is not known: %s.".formatted(each.in(style), why),
                        "Let a cleat take it, or say what is missing.");
    }

    /** Check 19 where something needed was not said. */
    public static Check bracketNotKnown(String of, String missing, MeasureStyle style) {
        return new Held("Bracket pull", of, PULL, style).notKnown("Whether its top screws hold is not known.", missing);
    }

    /** Check 11 for a nail: 6 of its diameters in the second part (NDS 2018 12.1.6.4), 10 for its full hold sideways. */
    public static Check nailReach(String of, Length diameter, Length reach, MeasureStyle style) {
        Held held = new Held(
                "Nail reach", of, "NDS 2018 12.1.6.4: 6 diameters at least, full value from 10 (from memory)", style);
        return held.atLeast(
                "A nail %s thick goes %s into the second part, %s diameters."
                        .formatted(
                                mils(diameter, style),
                                Say.fine(reach.max(Length.ZERO), style),
                                Say.number(reach.dividedBy(diameter), 1)),
                reach,
                diameter.times(6),
                "A longer nail, or a thinner first part.");
    }

    /** Nails are told to a thousandth of an inch or a tenth of a millimetre. */
    private static String mils(Length diameter, MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Say.number(diameter.inInches(), 3) + " in"
                : Say.fine(diameter, style);
    }

    /** Check 15 for a nail that is driven without a hole: 15 diameters from an end, 2.5 from an edge. */
    public static Check nailDistance(String of, Length diameter, Length distance, boolean end, MeasureStyle style) {
        Held held = new Held(end ? "End distance" : "Edge distance", of, EdgeDistance.SOURCE, style);
        Length wanted = (end ? EdgeDistance.END_PULLED : EdgeDistance.EDGE)
                .least(diameter, false)
                .value();
        return held.atLeast(
                "A nail %s thick is %s from the %s."
                        .formatted(mils(diameter, style), Say.fine(distance, style), end ? "end" : "edge"),
                distance,
                wanted,
                end ? "Move it, or drill a hole three quarters as wide first." : "Move it, or take a thinner nail.");
    }

    /**
     * Check 15 for a bolt: 7 diameters from an end it is pulled towards and 4 from any other; 4 from an edge it presses towards and
     * 1.5 from any other (NDS 2018 tables 12.5.1A and 12.5.1C). Which way it is pressed is not known; between the two it is said.
     */
    public static Check boltDistance(String of, Length diameter, Length distance, boolean end, MeasureStyle style) {
        Held held = new Held(
                end ? "End distance" : "Edge distance",
                of,
                "NDS 2018 tables 12.5.1A and 12.5.1C: end 7 D pulled, 4 D pressed; edge 4 D pressed towards, 1.5 D else"
                        + " (from memory)",
                style);
        String what = "A bolt of %s is %s from the %s."
                .formatted(Say.fine(diameter, style), Say.fine(distance, style), end ? "end" : "edge");
        Length any = diameter.times(end ? 4 : 1.5);
        Length worst = diameter.times(end ? 7 : 4);
        if (distance.isShorterThan(any) || !distance.isShorterThan(worst)) {
            return held.atLeast(
                    what, distance, distance.isShorterThan(any) ? any : worst, "Move it, or take a thinner one.");
        }
        return held.notKnown(
                "%s That does unless it is %s, where it wants %s."
                        .formatted(
                                what,
                                end ? "pulled towards that end" : "pressed towards that edge",
                                Say.fine(worst, style)),
                "See which way the load goes there, or move it.");
    }
}
