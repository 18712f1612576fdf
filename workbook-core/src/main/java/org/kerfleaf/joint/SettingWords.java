package org.kerfleaf.joint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/** A fastener's setting in words for people: on the screen, on paper, on the list. */
public final class SettingWords {
    private static final MeasureStyle BITS = new MeasureStyle(LengthUnit.INCHES, 64);
    private static final Length TENTH = Length.ofMillimetres(0.1);

    /** What the forces of a setting stand for. */
    public static final String LOADS =
            "What one holds is against a straight pull; sideways, against a load straight down where it lies level, or along"
                    + " either grain where it stands upright. Dry, for a load of ten years.";

    private final MeasureStyle style;

    public SettingWords(MeasureStyle style) {
        this.style = style;
    }

    /** {@code clearance 9/64 in, pilot 1/16 in, countersink 9/32 in wide, 1/16 in deep}. */
    public String holes(FastenerSetting setting) {
        List<String> words = new ArrayList<>();
        setting.clearance().ifPresent(hole -> words.add("clearance " + fine(hole)));
        setting.pilot().ifPresent(hole -> words.add("pilot " + fine(hole)));
        setting.leadHole()
                .filter(hole -> setting.pilot()
                        .map(Figure::value)
                        .filter(hole.value()::equals)
                        .isEmpty())
                .ifPresent(hole -> words.add("(" + fine(hole) + " where it is pulled)"));
        setting.sunk()
                .ifPresent(deep -> words.add("countersink "
                        + setting.head().map(wide -> fine(wide) + " wide, ").orElse("") + fine(deep) + " deep"));
        return words.isEmpty() ? "holes not known" : String.join(", ", words);
    }

    /**
     * What to have at hand for it: {@code bits 11/64 in and 5/64 in, countersink}.
     *
     * @param deep how deep the longest hole is, where a common bit may be too short for it
     */
    public Optional<String> tools(FastenerSetting setting, Optional<Length> deep) {
        List<String> bits = Stream.of(setting.clearance(), setting.pilot())
                .flatMap(Optional::stream)
                .map(this::fine)
                .toList();
        if (bits.isEmpty()) {
            return Optional.empty();
        }
        String last = bits.size() > 1 ? "the thinner " : "";
        return Optional.of((bits.size() > 1 ? "bits " : "bit ")
                + String.join(" and ", bits)
                + deep.map(length -> ", " + last + "long enough for a hole of " + fine(length))
                        .orElse("")
                + (setting.sunk().isPresent() ? ", countersink" : ""));
    }

    /** {@code 15/16 in, 6.8 D; 3/8 in beyond the tip}. */
    public String reach(FastenerSetting setting) {
        if (setting.reach().isEmpty()) {
            return setting.in() == Hold.NUT ? "right through" : "not known";
        }
        String into = fine(setting.reach().get())
                + setting.diameters().map(d -> ", " + tenths(d.value()) + " D").orElse("");
        return into + setting.tip().map(tip -> "; " + beyond(tip.value())).orElse("; depth behind not known");
    }

    private String beyond(Length tip) {
        return tip.isNegative() ? "comes out " + fine(tip.absolute()) : fine(tip) + " beyond the tip";
    }

    /** {@code 51.0 lb in side grain}, or why that is not known. */
    public String holds(FastenerSetting setting) {
        return setting.holds()
                .map(force -> force.value().in(style) + " in " + setting.in().words())
                .orElseGet(() -> "not known: " + setting.notHeld());
    }

    /** {@code 180.0 lb}, or why that is not known. */
    public String across(FastenerSetting setting) {
        return setting.across()
                .holds()
                .map(force -> force.value().in(style))
                .orElseGet(() -> "not known: " + setting.across().notHeld());
    }

    /** {@code 180.0 lb in side grain; sideways 45.5 lb}, or why neither is known. */
    public String bothWays(FastenerSetting setting) {
        boolean alike = setting.holds().isEmpty()
                && setting.across().holds().isEmpty()
                && setting.notHeld().equals(setting.across().notHeld());
        return alike ? "not known either way: " + setting.notHeld() : holds(setting) + "; sideways " + across(setting);
    }

    /** Whether anything is told of what it holds. */
    public static boolean tellsAForce(FastenerSetting setting) {
        return setting.holds().isPresent() || setting.across().holds().isPresent();
    }

    /** {@code end 1 1/2 in, edge 3/8 in, next 4 1/2 in}. */
    public String stands(Clearances near) {
        List<String> words = new ArrayList<>();
        add(words, "end", near.end());
        add(words, "edge", near.edge());
        add(words, "next", near.row());
        return words.isEmpty() ? "not known" : String.join(", ", words);
    }

    /** {@code From the drawer, for Back to Floor: No. 6 x 1 5/8 in. Not No. 8 x 2 in: 23/64 in from the edge; 2.5 D are 13/32 in.} */
    public String chosen(ScrewChoice choice) {
        StringBuilder words = new StringBuilder("From the drawer, for " + choice.joint() + ": ")
                .append(choice.chosen().words(style))
                .append(choice.suits() ? "." : ", though none suits.");
        for (ScrewChoice.Refused refused : choice.refused()) {
            words.append(" Not ")
                    .append(refused.screw().words(style))
                    .append(": ")
                    .append(refused.because())
                    .append('.');
        }
        choice.wouldSuit()
                .ifPresent(
                        screw -> words.append(" A ").append(screw.words(style)).append(" would suit."));
        return words.toString();
    }

    /** {@code 21.3 sq in, 3 g of exterior PVA; about 3 min to spread and close, open for 10 min; 4 clamps}. */
    public String glued(GluedJoint joint) {
        String open = joint.openTime()
                .map(time -> ", open for " + time.toMinutes() + " min")
                .orElse("; how long it stays open is not known");
        int clamps = joint.clamps().value();
        return "%s, %d g of %s; about %d min to spread and close%s%s"
                .formatted(
                        joint.area().value().in(style),
                        Math.round(joint.grams().value().grams()),
                        joint.glue(),
                        Math.max(1, Math.round(joint.closing().value().toSeconds() / 60.0)),
                        open,
                        clamps == 0 ? "" : "; " + clamps + (clamps == 1 ? " clamp" : " clamps"));
    }

    private void add(List<String> words, String what, Optional<Length> length) {
        length.ifPresent(known -> words.add(what + " " + fine(known)));
    }

    private static String tenths(Ratio ratio) {
        return String.format(Locale.ROOT, "%.1f", ratio.value());
    }

    private String fine(Figure<Length> length) {
        return fine(length.value());
    }

    /** To 1/64 in, or to 0.1 mm: a bit is not read off a tape. */
    String fine(Length length) {
        if (style.unit() == LengthUnit.INCHES) {
            return length.roundedTo(BITS.step(), RoundingMode.HALF_UP).in(BITS);
        }
        BigDecimal shown = length.roundedTo(TENTH, RoundingMode.HALF_UP).exactMillimetres();
        return (shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString()) + " mm";
    }
}
