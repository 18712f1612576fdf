package org.kerfleaf.measure;

/** A plain number: a share, a factor, a multiple. Printed to four significant places at most. */
public record Ratio(double value) implements Quantity {
    public static Ratio of(double value) {
        return new Ratio(value);
    }

    @Override
    public String in(MeasureStyle style) {
        return Decimals.significant(value, 4);
    }
}
