package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import java.math.RoundingMode;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.TemperatureChange;
import org.kerfleaf.reason.Figure;

/**
 * How large to cut a pane so that it is free when hot and still held when cold.
 *
 * <p>The pane must not outgrow its pocket: cut = pocket / (1 + expansion · warmer + damp). Source: the arithmetic of sheet
 * makers' glazing guides (derived), from bottom of pocket to bottom of pocket.
 */
public final class PaneSize {
    private static final String GUIDES = "sheet makers' glazing guides, worked out (derived)";

    /** For a pane in dry air. */
    public static final Ratio DRY = Ratio.of(0);

    private PaneSize() {}

    /** The largest pane that fits when hottest and dampest, to the nanometre. */
    public static Figure<Length> largest(Length pocket, Expansion expansion, TemperatureChange warmer, Ratio damp) {
        return Figure.of(
                exact(pocket, expansion, warmer, damp),
                "pocket / (1 + expansion · warmer + damp)",
                GUIDES,
                given("pocket", pocket),
                given("expansion", expansion),
                given("warmer", warmer),
                given("damp", damp));
    }

    /** The size to cut, rounded down to the step a tape is read to; the exact size is among the reasons. */
    public static Figure<Length> cut(
            Length pocket, Expansion expansion, TemperatureChange warmer, Ratio damp, MeasureStyle style) {
        Length exact = exact(pocket, expansion, warmer, damp);
        return Figure.of(
                exact.roundedTo(style.step(), RoundingMode.FLOOR),
                "pocket / (1 + expansion · warmer + damp), rounded down to the tape's step",
                GUIDES,
                given("pocket", pocket),
                given("expansion", expansion),
                given("warmer", warmer),
                given("damp", damp),
                given("exact", exact));
    }

    private static Length exact(Length pocket, Expansion expansion, TemperatureChange warmer, Ratio damp) {
        return pocket.times(1 / (1 + expansion.over(warmer).value() + damp.value()));
    }

    /** How much of each edge is still held when coldest, if the pane lies in the middle: (cut · (1 - expansion · colder) - opening) / 2. */
    public static Figure<Length> coldBite(Length cut, Length opening, Expansion expansion, TemperatureChange colder) {
        Length shrunk = cut.times(1 - expansion.over(colder).value());
        return Figure.of(
                shrunk.minus(opening).half(),
                "(cut · (1 - expansion · colder) - opening) / 2",
                GUIDES,
                given("cut", cut),
                given("expansion", expansion),
                given("colder", colder),
                given("opening", opening));
    }
}
