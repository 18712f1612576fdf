package org.kerfleaf.measure;

/** A number of things, without a unit of its own. */
public record Count(long number) implements Quantity, Comparable<Count> {
    /** So many things. */
    public static Count of(long number) {
        return new Count(number);
    }

    @Override
    public String in(MeasureStyle style) {
        return Long.toString(number);
    }

    @Override
    public int compareTo(Count other) {
        return Long.compare(number, other.number);
    }

    /** The number. */
    @Override
    public String toString() {
        return Long.toString(number);
    }
}
