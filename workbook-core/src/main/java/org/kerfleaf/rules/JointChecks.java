package org.kerfleaf.rules;

import java.util.Locale;
import java.util.Optional;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.joint.EdgeDistance;
import org.kerfleaf.joint.ScrewChoice;
import org.kerfleaf.joint.ScrewLengths;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.sketch.Metal;

/** Whether fasteners hold, stay inside and last. */
public final class JointChecks {
    private static final String NDS_REACH = "NDS 2018 12.1.5.6: 6 diameters at least, full value from 10 (from memory)";
    private static final double LEAST_DIAMETERS = 6;
    private static final double FULL_DIAMETERS = 10;
    private static final Length SEAM_INCHES = Length.ofInches(6);
    private static final Length SEAM_MILLIMETRES = Length.ofMillimetres(150);

    private static final Length BETWEEN_MILLIMETRES = Length.ofMillimetres(6);

    private JointChecks() {}

    /** Check 10: a fastener in treated wood or out in the weather is hot-dip galvanised or stainless. */
    public static Check metalInWood(String of, Metal metal, boolean treatedWood, boolean outdoors, MeasureStyle style) {
        Held held = new Held(
                "Metal in wood",
                of,
                "IRC R317.3: hot-dip galvanised (ASTM A153), stainless, silicon bronze or copper (from memory)",
                style);
        String place = treatedWood ? "in treated wood" : outdoors ? "out in the weather" : "indoors, in dry wood";
        boolean hard = treatedWood || outdoors;
        return switch (metal) {
            case HOT_DIP_GALVANISED, STAINLESS -> held.holds("%s %s.".formatted(capital(metal.words()), place));
            case PLATED ->
                hard
                        ? held.falls("Plated %s rusts.".formatted(place), "Hot-dip galvanised or stainless would last.")
                        : held.holds("Plated %s.".formatted(place));
            case NOT_SAID ->
                hard
                        ? held.notKnown(
                                "Metal not said, %s.".formatted(place),
                                "Say .stainless() or .hotDipGalvanised() if it is.")
                        : held.holds("Metal not said, %s.".formatted(place));
        };
    }

    /**
     * Check 11: the screw goes 6 of its diameters into the second part: length - (first part - countersink) ≥ 6 D. Under 10 it
     * holds sideways at reach/10 D of its full value.
     *
     * @param firstPart what it goes through, for people: {@code side}
     * @param into how much wood lies under the first part along the screw; empty if that is not known or plenty
     */
    public static Check screwReach(
            String of,
            String firstPart,
            WoodScrew screw,
            Length through,
            Length countersink,
            Optional<Length> into,
            MeasureStyle style) {
        Held held = new Held("Screw reach", of, NDS_REACH, style);
        Length reach = screw.reach(through, countersink).value();
        Length wanted = screw.diameter().times(LEAST_DIAMETERS);
        double diameters = screw.inDiameters(reach).value();
        String reduced = diameters >= LEAST_DIAMETERS && diameters < FULL_DIAMETERS
                ? " That is %s diameters; under 10 it holds sideways at %s of its full value."
                        .formatted(Say.number(diameters, 1), Say.percent(diameters / FULL_DIAMETERS))
                : "";
        String sentence = "Through %s of %s, head %s down, a %s screw reaches %s.%s"
                .formatted(
                        Say.fine(through, style),
                        firstPart,
                        Say.fine(countersink, style),
                        screw.words(style),
                        Say.fine(reach.max(Length.ZERO), style),
                        reduced);
        return held.atLeast(sentence, reach, wanted, longer(screw, through, countersink, into, style));
    }

    private static String longer(
            WoodScrew screw, Length through, Length countersink, Optional<Length> into, MeasureStyle style) {
        Length sunk = through.minus(countersink);
        Length least = sunk.plus(screw.diameter().times(LEAST_DIAMETERS));
        Optional<Length> next = ScrewLengths.atLeast(least, style.unit());
        boolean pokes = next.isPresent()
                && into.isPresent()
                && next.get().minus(sunk).isLongerThan(into.get().minus(tip(style)));
        if (next.isPresent() && !pokes) {
            return "A %s screw would hold.".formatted(next.get().in(style));
        }
        Length thinner = screw.length().minus(sunk).times(1 / LEAST_DIAMETERS);
        return ScrewLengths.gaugeUpTo(thinner)
                .map(gauge -> "A No. %d of this length would hold.".formatted(gauge))
                .orElse("Drive it from the other side, or screw to a cleat.");
    }

    /** Check 12: the tip stays 1/16 in (1.5 mm) inside the second part. */
    public static Check screwTip(
            String of, WoodScrew screw, Length through, Length countersink, Length into, MeasureStyle style) {
        Held held = new Held("Screw tip", of, Reason.COMMON_PRACTICE, style);
        Length reach = screw.reach(through, countersink).value();
        Length room = into.minus(tip(style));
        String shorter = ScrewLengths.atMost(room.plus(through.minus(countersink)), style.unit())
                .map(length -> "A %s screw stays inside. Or drive it from the other side.".formatted(length.in(style)))
                .orElse("Drive it from the other side.");
        return held.atMost(
                "The tip of a %s screw goes %s into %s of wood."
                        .formatted(screw.words(style), Say.fine(reach, style), Say.fine(into, style)),
                reach,
                room,
                shorter);
    }

    private static Length tip(MeasureStyle style) {
        return ScrewChoice.tipMargin(style);
    }

    /** Check 15, at any edge along the grain: 2.5 diameters or more. */
    public static Check edgeDistance(String of, int gauge, Length distance, MeasureStyle style) {
        Held held = new Held("Edge distance", of, EdgeDistance.SOURCE, style);
        Length wanted =
                EdgeDistance.EDGE.least(WoodScrew.diameter(gauge).value(), true).value();
        String thinner = ScrewLengths.gaugeUpTo(distance.times(1 / 2.5))
                .map(number -> "A No. %d would hold. Or drill a pilot hole and let the glue carry.".formatted(number))
                .orElse("Drill a pilot hole and let the glue carry.");
        return held.atLeast(
                "A No. %d screw is %s from the edge.".formatted(gauge, Say.fine(distance, style)),
                distance,
                wanted,
                thinner);
    }

    /** Check 15, at an end: 10 diameters drilled first, 15 not drilled. */
    public static Check endDistance(String of, int gauge, Length distance, boolean drilled, MeasureStyle style) {
        Held held = new Held("End distance", of, EdgeDistance.SOURCE, style);
        Length diameter = WoodScrew.diameter(gauge).value();
        Length wanted = EdgeDistance.END_PULLED.least(diameter, drilled).value();
        boolean pilotHelps = !drilled
                && !distance.isShorterThan(
                        EdgeDistance.END_PULLED.least(diameter, true).value());
        return held.atLeast(
                "A No. %d screw%s is %s from the end."
                        .formatted(gauge, drilled ? ", drilled first," : ", not drilled,", Say.fine(distance, style)),
                distance,
                wanted,
                pilotHelps
                        ? "With a pilot hole it holds."
                        : "Move it to %s from the end, or take a thinner screw.".formatted(Say.fine(wanted, style)));
    }

    /**
     * Check 16: where fasteners come from two directions into one piece, the middles of their shanks stay both radii and 1/4 in
     * (6 mm) apart.
     *
     * @param moved how many rows went out of the way for it
     */
    public static Check fastenersMeet(
            String of, DrivenFastener one, DrivenFastener other, int moved, MeasureStyle style) {
        Held held = new Held("Screws meet", of, DrivenFastener.BETWEEN_SOURCE, style);
        Length between = one.between(other);
        String rows = moved == 0
                ? "No row had to move for it."
                : moved == 1
                        ? "1 row moved along its contact for it."
                        : moved + " rows moved along their contacts for it.";
        boolean known = one.diameter().isPresent() && other.diameter().isPresent();
        String thickness = known ? "" : " How thick one of them is, is not known; it counts as a line.";
        return held.atLeast(
                "Driven from two directions, the two that come nearest are %s apart, middle to middle. %s%s"
                        .formatted(Say.fine(between, style), rows, thickness),
                between,
                one.radii(other).plus(Say.rule(style, DrivenFastener.BETWEEN, BETWEEN_MILLIMETRES)),
                "Move one of the joints, or take shorter fasteners.");
    }

    /** Check 17: fasteners on a sealed seam stand no more than 6 in (150 mm) apart. */
    public static Check seamSpacing(String of, Length apart, MeasureStyle style) {
        Held held = new Held("Seam spacing", of, Reason.COMMON_PRACTICE, style);
        Length allowed = Say.rule(style, SEAM_INCHES, SEAM_MILLIMETRES);
        return held.atMost(
                "Fasteners on a sealed seam stand %s apart.".formatted(Say.fine(apart, style)),
                apart,
                allowed,
                "Every %s at most keeps it tight.".formatted(allowed.in(style)));
    }

    /** Check 20: a head is sunk no deeper than a third of the part it lies in. */
    public static Check countersink(String of, Length depth, Length part, MeasureStyle style) {
        Held held = new Held("Countersink", of, Reason.COMMON_PRACTICE, style);
        return held.atMost(
                "The head is sunk %s into %s.".formatted(Say.fine(depth, style), Say.fine(part, style)),
                depth,
                part.dividedBy(3),
                "Sink it less, or take a smaller gauge.");
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
