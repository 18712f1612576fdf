package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.reason.Figure;

/**
 * Lumber by board measure, as yards price it: a board foot is 1 in · 12 in · 12 in of the nominal size.
 *
 * @param boardFeet the number, zero or more
 */
public record BoardMeasure(double boardFeet) implements Quantity {
    /** Where the rule is from, and how sure it is. */
    public static final String SOURCE = "NIST PS 20-20, board measure (from memory)";

    private static final Pattern NAME = Pattern.compile("(\\d+)(?:/(\\d))?\\s*[x×]\\s*(\\d{1,2})");

    /**
     * The board measure of so many boards of a nominal size: thickness · width in inches · length in feet / 12. A thickness under
     * 1 in counts as 1 in.
     *
     * @param nominal as sold, {@code 2x4}, {@code 5/4x6}; empty where the name is none
     */
    public static Optional<Figure<BoardMeasure>> of(String nominal, Length length, int count) {
        Matcher name = NAME.matcher(nominal.strip().toLowerCase(Locale.ROOT));
        if (!name.matches()) {
            return Optional.empty();
        }
        double thick =
                Double.parseDouble(name.group(1)) / (name.group(2) == null ? 1 : Double.parseDouble(name.group(2)));
        double wide = Double.parseDouble(name.group(3));
        double feet = length.inInches() / 12;
        return Optional.of(Figure.of(
                new BoardMeasure(Math.max(1, thick) * wide * feet / 12 * count),
                "nominal thickness · nominal width in inches · length in feet / 12",
                SOURCE,
                given("sold as", nominal),
                given("length", length),
                given("boards", count)));
    }

    /** {@code 16 board ft}, to one place. */
    @Override
    public String in(MeasureStyle style) {
        BigDecimal shown = BigDecimal.valueOf(boardFeet).setScale(1, RoundingMode.HALF_UP);
        return shown.stripTrailingZeros().toPlainString() + " board ft";
    }
}
