package org.kerfleaf.measure;

/** A number of things, without a unit of its own. */
public record Count(long number) implements Quantity {
    public static Count of(long number) {
        return new Count(number);
    }

    @Override
    public String in(MeasureStyle style) {
        return Long.toString(number);
    }
}
