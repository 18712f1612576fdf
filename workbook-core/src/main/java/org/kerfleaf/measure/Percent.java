package org.kerfleaf.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * So many parts of a hundred: the water in wood by the weight of the dry wood, the humidity of air, the solids in paint.
 *
 * @param number 12 for 12 %
 */
public record Percent(double number) implements Quantity, Comparable<Percent> {
    private static final Pattern TEXT = Pattern.compile("(\\d{1,3}(?:[.,]\\d{1,3})?) *(?:%|per ?cent)");

    /** @throws ArithmeticException if the number is infinite or none */
    public Percent {
        number = Decimals.counted(number, "%");
    }

    /** So many of a hundred. */
    public static Percent of(double number) {
        return new Percent(number);
    }

    /** Reads {@code 12 %}, {@code 12.5%}, {@code 12 per cent}. @throws MeasureTextException if it is no such number */
    public static Percent parse(String text) {
        Matcher share = TEXT.matcher(TextCursor.plain(text).strip());
        if (!share.matches()) {
            throw new MeasureTextException(
                    text, 1, "this is no share of a hundred", "A number with % would be right: 12 %.");
        }
        return new Percent(Double.parseDouble(share.group(1).replace(',', '.')));
    }

    /** As a share of one: 0.12 for 12 %. */
    public double share() {
        return number / 100;
    }

    /** To one place: {@code 12 %}, {@code 12.5 %}. */
    @Override
    public String in(MeasureStyle style) {
        return Decimals.upTo(number, 1) + " %";
    }

    @Override
    public int compareTo(Percent other) {
        return Double.compare(number, other.number);
    }

    /** The number in full, read back by {@link #parse(String)} up to three places. */
    @Override
    public String toString() {
        return Decimals.exact(number) + " %";
    }
}
