package org.kerfleaf.measure;

/** A plain number: a share, a factor, a multiple. Printed to four significant places at most. */
public record Ratio(double value) implements Quantity, Comparable<Ratio> {
    /** @throws ArithmeticException if the number is infinite or none */
    public Ratio {
        value = Decimals.counted(value, "(a plain number)");
    }

    /** That number. */
    public static Ratio of(double value) {
        return new Ratio(value);
    }

    @Override
    public String in(MeasureStyle style) {
        return Decimals.significant(value, 4);
    }

    @Override
    public int compareTo(Ratio other) {
        return Double.compare(value, other.value);
    }

    /** The number in full. */
    @Override
    public String toString() {
        return Decimals.exact(value);
    }
}
