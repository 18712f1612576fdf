package org.kerfleaf.rules;

import java.math.RoundingMode;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.TemperatureChange;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.stock.Expansion;
import org.kerfleaf.stock.GlazingKind;
import org.kerfleaf.stock.PaneSize;

/** Whether a pane is free when hot, held when cold, and safe. */
public final class GlazingChecks {
    private static final Length BITE_INCHES = Length.ofSixtyFourths(24);
    private static final Length BITE_MILLIMETRES = Length.ofMillimetres(9.5);
    private static final String GUIDES =
            "sheet makers' glazing guides (seen in copies); 3/8 in of bite is common practice";

    private GlazingChecks() {}

    /** Check 42, hot: the pane as cut, grown by warmth and damp, still fits its pocket. */
    public static Check paneHot(
            String of,
            Length cut,
            Length pocket,
            Expansion expansion,
            TemperatureChange warmer,
            Ratio damp,
            MeasureStyle style) {
        Held held = new Held("Pane when hot", of, GUIDES, style);
        Length grown = cut.times(1 + expansion.over(warmer).value() + damp.value());
        Length fits = PaneSize.cut(pocket, expansion, warmer, damp, style).value();
        return held.atMost(
                "Cut to %s, %s warmer%s it is %s in a pocket of %s."
                        .formatted(
                                cut.in(style),
                                warmer.in(style),
                                damp.value() > 0 ? " and damp" : "",
                                Say.fine(grown, style),
                                Say.fine(pocket, style)),
                grown,
                pocket,
                "Cut to %s it would be free.".formatted(fits.in(style)));
    }

    /** Check 42, cold, where nobody said how cold it gets. */
    public static Check paneCold(String of, MeasureStyle style) {
        return new Held("Pane when cold", of, GUIDES, style)
                .notKnown(
                        "How much colder it gets than on the day it is cut was not said.",
                        "Say .colder(\"60 F\") or what it is where it stands: a pane in the frost shrinks out of its rabbet.");
    }

    /**
     * Check 42, cold: the pane is still held by 3/8 in (9.5 mm) on each side.
     *
     * @param rabbetWidth the width of the step it lies in, for the advice
     */
    public static Check paneCold(
            String of,
            Length cut,
            Length opening,
            Length rabbetWidth,
            Expansion expansion,
            TemperatureChange colder,
            MeasureStyle style) {
        Held held = new Held("Pane when cold", of, GUIDES, style);
        Length bite = PaneSize.coldBite(cut, opening, expansion, colder).value();
        Length wanted = Say.rule(style, BITE_INCHES, BITE_MILLIMETRES);
        Length step = Say.rule(style, Length.ofSixtyFourths(4), Length.ofMillimetres(1));
        Length wider = rabbetWidth.plus(wanted.minus(bite).max(Length.ZERO).roundedTo(step, RoundingMode.CEILING));
        return held.atLeast(
                "Cut to %s over an opening of %s, %s colder it is held by %s on each side."
                        .formatted(cut.in(style), Say.fine(opening, style), colder.in(style), Say.fine(bite, style)),
                bite,
                wanted,
                "A rabbet %s wide, and the pane larger with it, would hold it.".formatted(Say.fine(wider, style)));
    }

    /**
     * Capability 44: bedding and pane lie within the rabbet, so that the bead presses on the pane.
     *
     * @param fills bedding and pane on each other; empty if the bedding's thickness is not known
     * @param bead the bead's thickness, if it lies in the rabbet too
     */
    public static Check rabbetDepth(
            String of, Length depth, Optional<Length> fills, Optional<Length> bead, MeasureStyle style) {
        Held held = new Held("Rabbet depth", of, Reason.GEOMETRY, style);
        if (fills.isEmpty()) {
            return held.notKnown(
                    "How thick the bedding is, was not said.", "Say .bedded(glazingTape(\"1/16 in\")), or measure it.");
        }
        Length all = fills.get().plus(bead.orElse(Length.ZERO));
        return held.atMost(
                "Bedding and pane%s are %s on each other."
                        .formatted(bead.isPresent() ? " and bead" : "", Say.fine(all, style)),
                all,
                depth,
                "A rabbet %s deep would take them.".formatted(Say.fine(all, style)));
    }

    /** How much of a bead stands beside wood where a pin goes level into it: 1/8 in (3 mm). {@code Common practice, no source}. */
    public static Length pinned(MeasureStyle style) {
        return Say.rule(style, Length.ofSixtyFourths(8), Length.ofMillimetres(3L));
    }

    /** What a pin stays short of the far face: 1/16 in (1.5 mm). {@code Common practice, no source}. */
    public static Length tip(MeasureStyle style) {
        return Say.rule(style, Length.ofSixtyFourths(4), Length.ofMillimetres(1.5));
    }

    /**
     * Capability 46: a bead's pins find wood and never the pane.
     *
     * @param room what bedding and pane leave of the rabbet's depth; empty if not known
     * @param over how far a bead on the face reaches over wood beyond the pocket; empty for one in the rabbet or of unknown width
     * @param rabbet its width, for the advice
     */
    public static Check beads(
            String of, Optional<Length> room, Optional<Length> over, Length rabbet, MeasureStyle style) {
        Held held = new Held("Beads", of, Reason.COMMON_PRACTICE, style);
        Length beside = pinned(style);
        if (room.isEmpty()) {
            return held.notKnown(
                    "Whether its beads lie in the rabbet or on the face is not known.",
                    "Say how thick the bedding is, .bedded(glazingTape(\"1/16 in\")).");
        }
        if (!room.get().isShorterThan(beside)) {
            return held.holds("Its beads lie in the rabbet, %s of them beside wood: pins go level, over the pane."
                    .formatted(Say.fine(room.get(), style)));
        }
        if (over.isEmpty()) {
            return held.notKnown(
                    "Its beads lie on the face; how wide they are was not said.", "Say it: beads(\"3/4 in\").");
        }
        Length wanted = Say.rule(style, Length.ofSixtyFourths(16), Length.ofMillimetres(6L));
        return held.atLeast(
                over.get().isNegative()
                        ? "Its beads lie on the face, for bedding and pane fill the rabbet, and end %s before any wood."
                                .formatted(Say.fine(over.get().absolute(), style))
                        : "Its beads lie on the face and reach %s over wood past the pane: pins stand there."
                                .formatted(Say.fine(over.get(), style)),
                over.get(),
                wanted,
                "Beads %s wide reach the wood; or rout the rabbet %s deeper, and they lie in it."
                        .formatted(Say.fine(rabbet.plus(wanted), style), Say.fine(beside.minus(room.get()), style)));
    }

    /**
     * Check 29: a router leaves the pocket's corners round; a square pane wants them squared, a rounded one its radius.
     *
     * @param cutter how far across the cutter is, if known
     * @param rounded the radius of the pane's own corners, zero for a square one
     */
    public static Check paneCorner(
            String of, Optional<Length> cutter, Length rounded, boolean squared, MeasureStyle style) {
        Held held = new Held("Pane corner", of, Reason.GEOMETRY, style);
        if (squared) {
            return held.holds("The pocket's corners are squared with a chisel.");
        }
        if (cutter.isEmpty()) {
            return held.notKnown(
                    "A router leaves the pocket's corners round; how round, is not known.",
                    "Say router().cutter(\"1 3/8 in\"), or .cornersSquared().");
        }
        Length radius = cutter.get().half();
        return held.atLeast(
                "The cutter leaves corners of %s; the pane's own are %s."
                        .formatted(Say.fine(radius, style), rounded.isZero() ? "square" : Say.fine(rounded, style)),
                rounded,
                radius,
                "Square the pocket's corners with a chisel, or round the pane.");
    }

    /**
     * Check 43: nothing brittle within reach, and nothing that cannot be cut is cut.
     *
     * @param kind what the pane is made of; empty if its name does not say
     * @param cutHere whether the maker cuts it from a larger sheet
     */
    public static Check glassKind(
            String of, Optional<GlazingKind> kind, boolean withinReach, boolean cutHere, MeasureStyle style) {
        Held held = new Held("Glass kind", of, "16 CFR 1201, made for building doors, as a guide", style);
        if (kind.isEmpty()) {
            return held.notKnown(
                    "What the pane is made of was not said.", "Say acrylic, polycarbonate or which glass.");
        }
        GlazingKind pane = kind.get();
        if (pane == GlazingKind.TEMPERED_GLASS && cutHere) {
            return held.falls(
                    "Tempered glass is never cut: it goes to pieces.", "Order it to size once the pocket is measured.");
        }
        if (pane == GlazingKind.GLASS && withinReach) {
            return held.falls(
                    "Plain glass within reach breaks into blades.",
                    "Acrylic, polycarbonate or safety glass would be right.");
        }
        return held.holds("The pane is %s.".formatted(pane.words()));
    }
}
