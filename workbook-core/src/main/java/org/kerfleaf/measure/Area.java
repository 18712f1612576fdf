package org.kerfleaf.measure;

/**
 * An area.
 *
 * @param squareMillimetres the number; below zero only as a difference
 */
public record Area(double squareMillimetres) implements Quantity, Comparable<Area> {
    /** No area at all. */
    public static final Area ZERO = new Area(0);

    private static final double PER_SQUARE_INCH = 645.16;

    /** @throws ArithmeticException if the number is infinite or none */
    public Area {
        squareMillimetres = Decimals.counted(squareMillimetres, "mm2");
    }

    /** Square millimetres. */
    public static Area ofSquareMillimetres(double squareMillimetres) {
        return new Area(squareMillimetres);
    }

    /** Reads {@code 350 sq ft}, {@code 12 m2}, {@code 600 sq in}. @throws MeasureTextException if it is no area */
    public static Area parse(String text) {
        return UnitText.AREA.read(text, Area::new);
    }

    /** This and another. */
    public Area plus(Area other) {
        return new Area(squareMillimetres + other.squareMillimetres);
    }

    /** This less another. */
    public Area minus(Area other) {
        return new Area(squareMillimetres - other.squareMillimetres);
    }

    /** This scaled by a number. */
    public Area times(double count) {
        return new Area(squareMillimetres * count);
    }

    /** How many times the other goes into this, as a number. @throws ArithmeticException if the other is zero */
    public double dividedBy(Area other) {
        return Decimals.ratio(squareMillimetres, other.squareMillimetres, this, other);
    }

    /** The volume of a plate of this area and that thickness. */
    public Volume by(Length thickness) {
        return Volume.ofCubicMillimetres(squareMillimetres * thickness.inMillimetres());
    }

    /** In square inches, as a decimal number. */
    public double inSquareInches() {
        return squareMillimetres / PER_SQUARE_INCH;
    }

    /** In square feet, as a decimal number. */
    public double inSquareFeet() {
        return inSquareInches() / 144;
    }

    /** In square metres, as a decimal number. */
    public double inSquareMetres() {
        return squareMillimetres / 1e6;
    }

    /** Square feet to one decimal, or square metres to two. */
    @Override
    public String in(MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Decimals.of(inSquareFeet(), 1) + " sq ft"
                : Decimals.of(inSquareMetres(), 2) + " m²";
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(squareMillimetres, other.squareMillimetres);
    }

    /** The canonical text, {@code 645.16 mm2}, read back exactly by {@link #parse(String)}. */
    @Override
    public String toString() {
        return Decimals.exact(squareMillimetres) + " mm2";
    }
}
