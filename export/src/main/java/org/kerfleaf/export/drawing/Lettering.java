package org.kerfleaf.export.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.PlannedPart;

/** What is written on parts: letter, name and size, in the unit of the workbook. */
public final class Lettering {
    private final Map<String, PlannedPart> parts = new HashMap<>();
    private final MeasureStyle measures;

    public Lettering(List<PlannedPart> parts, MeasureStyle measures) {
        parts.forEach(part -> this.parts.put(part.name(), part));
        this.measures = measures;
    }

    public MeasureStyle measures() {
        return measures;
    }

    /** The part's letter, empty if the plan knows no such part. */
    public String letter(String part) {
        return Optional.ofNullable(parts.get(part)).map(PlannedPart::letter).orElse("");
    }

    /** {@code A Floor}. */
    public String title(String part) {
        return (letter(part) + " " + part).strip();
    }

    /** Two lengths to the nearest mark with a cross between, along the grain first, without the unit. */
    public Rich size(Length along, Length across, Style style) {
        return Rich.nearest(along, measures, style).plus(" × ", style).plus(Rich.nearest(across, measures, style));
    }

    /** The size of a rectangle on a sheet as the cut list says it: along the part's own grain first. */
    Rich size(Length onSheetLong, Length onSheetWide, boolean turned, Style style) {
        return turned ? size(onSheetWide, onSheetLong, style) : size(onSheetLong, onSheetWide, style);
    }

    /** One length to the nearest mark, without its unit. */
    public Rich length(Length length, Style style) {
        return Rich.nearest(length, measures, style);
    }
}
