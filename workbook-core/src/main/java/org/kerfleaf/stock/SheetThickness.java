package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.reason.Figure;

/** How far a sheet's thickness may be from its label. Only a caliper says what this sheet is. */
public final class SheetThickness {
    /** The American standard for structural plywood. */
    public static final String PS_1 = "NIST PS 1-19, performance category thickness limits (seen in a copy)";

    /** The European standard for plywood. */
    public static final String EN_315 = "EN 315:2000, thickness tolerances (seen in a copy)";

    private static final Length THINNEST_CATEGORY = Length.ofSixtyFourths(16);
    private static final Length THICKEST_CATEGORY = Length.ofSixtyFourths(80);
    private static final Length THIRTY_SECOND = Length.ofSixtyFourths(2);
    private static final Length SIXTY_FOURTH = Length.ofSixtyFourths(1);
    private static final Length UP_TO_13_16 = Length.ofSixtyFourths(52);
    private static final Length UP_TO_3_4 = Length.ofSixtyFourths(48);
    private static final Length FROM_9_16 = Length.ofSixtyFourths(36);

    private SheetThickness() {}

    /**
     * The limits of an unsanded, touch-sanded or overlaid sheet of a PS 1 performance category; empty for a label outside
     * 1/4 to 1 1/4 in.
     */
    public static Optional<Figure<Limits>> performanceCategory(Length label) {
        return performanceCategory(label, Surface.UNSANDED);
    }

    /** The limits of a PS 1 performance category, by how it is sanded; empty for a label outside 1/4 to 1 1/4 in. */
    public static Optional<Figure<Limits>> performanceCategory(Length label, Surface surface) {
        if (label.isShorterThan(THINNEST_CATEGORY) || label.isLongerThan(THICKEST_CATEGORY)) {
            return Optional.empty();
        }
        boolean sanded = surface == Surface.SANDED;
        Length off = sanded
                ? label.isLongerThan(UP_TO_3_4) ? label.times(0.03) : SIXTY_FOURTH
                : label.isLongerThan(UP_TO_13_16) ? label.times(0.05) : THIRTY_SECOND;
        String rule = sanded
                ? "sanded: label ± 1/64 in up to 3/4 in, ± 3 % above"
                : "unsanded or touch-sanded: label ± 1/32 in up to 13/16 in, ± 5 % above";
        Limits limits = new Limits(label.minus(off), label.plus(off));
        return Optional.of(Figure.of(limits, rule, PS_1, given("label", label)));
    }

    /** The thickness PS 1 recommends to print on the sheet of a category; empty for a label outside 1/4 to 1 1/4 in. */
    public static Optional<Figure<Length>> recommendedLabel(Length category) {
        Surface lowest = category.isShorterThan(FROM_9_16) ? Surface.UNSANDED : Surface.SANDED;
        double factor = lowest == Surface.UNSANDED ? 1.03 : 1;
        return performanceCategory(category, lowest)
                .map(limits -> Figure.of(
                        limits.value().least().times(factor),
                        "under 9/16 in: 1.03 times the least; from 9/16 in: the least of a sanded sheet",
                        PS_1,
                        given("category", category)));
    }

    /** The limits of a sheet labelled in millimetres. */
    public static Figure<Limits> en315(Length label, Surface surface) {
        double t = label.inMillimetres();
        double over = (surface == Surface.SANDED ? 0.2 : 0.8) + 0.03 * t;
        double under = 0.4 + 0.03 * t;
        Limits limits = new Limits(label.minus(Length.ofMillimetres(under)), label.plus(Length.ofMillimetres(over)));
        String rule = surface == Surface.SANDED
                ? "sanded: over by 0.2 mm + 3 %, under by 0.4 mm + 3 % of the label"
                : "unsanded: over by 0.8 mm + 3 %, under by 0.4 mm + 3 % of the label";
        return Figure.of(limits, rule, EN_315, given("label", label));
    }

    /**
     * The limits of a sheet by how its faces left the mill (unsanded, the wider ones, where nobody said): PS 1 for a workbook in
     * inches, EN 315 for one in millimetres. Empty where the standard has no such label.
     */
    public static Optional<Figure<Limits>> of(Length label, Surface surface, LengthUnit unit) {
        return unit == LengthUnit.INCHES ? performanceCategory(label, surface) : Optional.of(en315(label, surface));
    }
}
