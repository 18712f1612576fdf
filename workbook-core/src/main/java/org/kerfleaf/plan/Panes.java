package org.kerfleaf.plan;

import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.TemperatureChange;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Trait;
import org.kerfleaf.stock.GlazingKind;
import org.kerfleaf.stock.PaneSize;

/** Sizes panes: so that they still fit when they are warm and, where said, damp. */
final class Panes {
    private Panes() {}

    /**
     * What a pane goes into.
     *
     * @param clearWide the clear opening
     * @param rabbet how far the rabbet goes beyond it, on each side
     */
    record Pocket(Length clearWide, Length clearHigh, Length rabbet) {
        Length wide() {
            return clearWide.plus(rabbet, rabbet);
        }

        Length high() {
            return clearHigh.plus(rabbet, rabbet);
        }
    }

    /** What the pane's sheet is made of. */
    static GlazingKind kind(Part pane, Sheet sheet) {
        return GlazingKind.named(sheet.name())
                .orElseThrow(() -> new Unplannable(
                        pane.origin(),
                        "How much “%s” grows with warmth is not known. Name its sheet acrylic, polycarbonate or glass."
                                .formatted(sheet.name())));
    }

    /** The size to cut for one direction of a pocket. */
    static Figure<Length> cut(Part pane, Sheet sheet, Length pocket, MeasureStyle style) {
        GlazingKind kind = kind(pane, sheet);
        TemperatureChange warmer = pane.trait(Trait.Warmer.class)
                .map(Trait.Warmer::change)
                .orElseThrow(() -> new Unplannable(
                        pane.origin(),
                        "How much warmer “%s” gets is not known. Say .warmer(\"60 F\"), counted from the day it is cut."
                                .formatted(pane.name())));
        return PaneSize.cut(pocket, kind.expansion().value(), warmer, swelling(pane, kind), style);
    }

    private static Ratio swelling(Part pane, GlazingKind kind) {
        if (pane.trait(Trait.InDamp.class).isEmpty()) {
            return PaneSize.DRY;
        }
        return kind.swelling()
                .orElseThrow(() -> new Unplannable(
                        pane.origin(), "How much %s swells in damp is not known.".formatted(kind.words())))
                .value();
    }
}
