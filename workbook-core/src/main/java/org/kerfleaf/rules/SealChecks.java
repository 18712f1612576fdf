package org.kerfleaf.rules;

import java.util.List;
import java.util.Locale;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether seals last out of doors. */
public final class SealChecks {

    private static final Length THINNEST_INCHES = Length.ofSixtyFourths(8);
    private static final Length THINNEST_MILLIMETRES = Length.ofMillimetres(3);

    private SealChecks() {}

    /**
     * Check 38: a bead is no deeper than it is wide, or it tears as the seam opens; and 1/8 in (3 mm) thick or more either way, or
     * it cannot stretch.
     */
    public static Check bead(String of, Length across, Length deep, MeasureStyle style) {
        Held held = new Held(
                "Bead of caulk",
                of,
                "FPL note on caulks (seen in a copy); least size: " + Reason.COMMON_PRACTICE,
                style);
        Length thinnest = Say.rule(style, THINNEST_INCHES, THINNEST_MILLIMETRES);
        Length least = across.min(deep);
        String sentence = "A bead %s wide and %s deep.".formatted(Say.fine(across, style), Say.fine(deep, style));
        if (least.isShorterThan(thinnest)) {
            return held.atLeast(sentence, least, thinnest, "Open the seam, or lay a thicker bead.");
        }
        return held.atMost(
                sentence + " It may be as deep as it is wide.",
                deep,
                across,
                "Press a backer into the seam before you caulk it, or make the seam wider.");
    }

    /**
     * Check 39: damp gets out of a closed box by a weep in its lowest part and a vent high up.
     *
     * @param lowest the part a weep belongs in
     * @param low the holes that open low, in words
     * @param high those that open high up
     */
    public static Check wayOut(String lowest, List<String> low, List<String> high, MeasureStyle style) {
        Held held = new Held(
                "Way out for damp",
                "",
                "Wood Handbook FPL-GTR-190, ch. 14 (from memory); " + Reason.COMMON_PRACTICE,
                style);
        String open = "Open low: %s. Open high up: %s.".formatted(words(low), words(high));
        if (!low.isEmpty() && !high.isEmpty()) {
            return held.holds(open);
        }
        String weep = "Drill two weeps of %s through %s where water stands last."
                .formatted(
                        Say.fine(Say.rule(style, Length.ofSixtyFourths(24), Length.ofMillimetres(10)), style), lowest);
        String vent = "Drill vents of %s under the roof, where rain does not get, and put gauze behind them."
                .formatted(Say.fine(Say.rule(style, Length.ofInches(1L), Length.ofMillimetres(25)), style));
        return held.falls(open, low.isEmpty() && high.isEmpty() ? weep + " " + vent : low.isEmpty() ? weep : vent);
    }

    private static String words(List<String> holes) {
        return holes.isEmpty() ? "nothing" : String.join("; ", holes);
    }

    /** Check 38: a seam that is painted takes a caulk that can be painted. */
    public static Check caulkUnderPaint(String caulkName, boolean painted, MeasureStyle style) {
        Held held = new Held("Caulk under paint", caulkName, Reason.COMMON_PRACTICE, style);
        String name = caulkName.toLowerCase(Locale.ROOT);
        boolean silicone = name.contains("silicone") && !name.contains("siliconized") && !name.contains("siliconised");
        if (!painted) {
            return held.holds("Its seams are not painted.");
        }
        if (silicone && !name.contains("paintable")) {
            return held.falls("Paint does not hold on silicone.", "A paintable acrylic latex caulk would take it.");
        }
        return name.contains("paintable") || name.contains("latex") || name.contains("acrylic")
                ? held.holds("Prime, caulk, then paint.")
                : held.notKnown(
                        "Its name does not say whether paint holds on it.",
                        "Look for the word paintable on the cartridge.");
    }
}
