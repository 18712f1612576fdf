package org.kerfleaf.measure;

/**
 * A mass, which a bathroom scale shows.
 *
 * @param grams the number; below zero only as a difference
 */
public record Mass(double grams) implements Quantity, Comparable<Mass> {
    /** No mass at all. */
    public static final Mass ZERO = new Mass(0);

    private static final double PER_POUND = 453.59237;

    /** @throws ArithmeticException if the number is infinite or none */
    public Mass {
        grams = Decimals.counted(grams, "g");
    }

    /** Grams. */
    public static Mass ofGrams(double grams) {
        return new Mass(grams);
    }

    /** Pounds of 453.59237 g (NIST SP 811, by definition). */
    public static Mass ofPounds(double pounds) {
        return new Mass(pounds * PER_POUND);
    }

    /** Reads {@code 11.2 lb}, {@code 4 kg}, {@code 350 g}. @throws MeasureTextException if it is no mass */
    public static Mass parse(String text) {
        return UnitText.MASS.read(text, Mass::new);
    }

    /** This and another. */
    public Mass plus(Mass other) {
        return new Mass(grams + other.grams);
    }

    /** This less another. */
    public Mass minus(Mass other) {
        return new Mass(grams - other.grams);
    }

    /** This scaled by a number. */
    public Mass times(double count) {
        return new Mass(grams * count);
    }

    /** How many times the other goes into this, as a number. @throws ArithmeticException if the other is zero */
    public double dividedBy(Mass other) {
        return Decimals.ratio(grams, other.grams, this, other);
    }

    /** In pounds, as a decimal number. */
    public double inPounds() {
        return grams / PER_POUND;
    }

    /** In kilograms, as a decimal number. */
    public double inKilograms() {
        return grams / 1000;
    }

    /** Pounds or kilograms to one decimal. */
    @Override
    public String in(MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Decimals.of(inPounds(), 1) + " lb"
                : Decimals.of(inKilograms(), 1) + " kg";
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(grams, other.grams);
    }

    /** The canonical text, {@code 350 g}, read back exactly by {@link #parse(String)}. */
    @Override
    public String toString() {
        return Decimals.exact(grams) + " g";
    }
}
