package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.reason.Figure;

/** How much smaller or more out of square than its label a sheet may be. */
public enum SheetTolerance {
    /** American structural plywood: length and width +0, -1/16 in. */
    PS_1(Length.ofSixtyFourths(4), "PS 1-19: length and width +0, -1/16 in (seen in a copy)"),
    /** American oriented strand board: +0, -1/8 in. */
    PS_2(Length.ofSixtyFourths(8), "PS 2-18: length and width +0, -1/8 in (from memory)"),
    /** European plywood: length and width ±3.5 mm. */
    EN_315(Length.ofMillimetres(3.5), "EN 315:2000: length and width ± 3.5 mm (from memory)");

    private static final Length FOOT = Length.ofInches(12);
    private static final Length METRE = Length.ofMillimetres(1000);

    private final Length lacks;
    private final String source;

    SheetTolerance(Length lacks, String source) {
        this.lacks = lacks;
        this.source = source;
    }

    /** The plywood standard that sheets of this unit's market follow. */
    public static SheetTolerance of(LengthUnit unit) {
        return unit == LengthUnit.INCHES ? PS_1 : EN_315;
    }

    /** How much a side may lack. */
    public Length lacksAtMost() {
        return lacks;
    }

    public String source() {
        return source;
    }

    /** The shortest a side of this label may be. */
    public Figure<Length> shortest(Length label) {
        return Figure.of(
                label.minus(lacks),
                "a sheet may be this much short of its label",
                source,
                given("label", label),
                given("short by", lacks));
    }

    /**
     * How much the two diagonals of a sheet may differ: 1/64 in for each foot of the longer side (PS 1, PS 2), 1 mm for each
     * metre (EN 315, read here for the longer side).
     */
    public Figure<Length> outOfSquare(Length longerSide) {
        boolean european = this == EN_315;
        Length each = european ? Length.ofMillimetres(1) : Length.ofSixtyFourths(1);
        return Figure.of(
                each.times(longerSide.dividedBy(european ? METRE : FOOT)),
                european ? "1 mm for each metre of the longer side" : "1/64 in for each foot of the longer side",
                european ? "EN 315:2000 (seen in a copy)" : "PS 1-19 (seen in a copy)",
                given("longer side", longerSide));
    }
}
