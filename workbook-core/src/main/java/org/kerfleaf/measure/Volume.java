package org.kerfleaf.measure;

/**
 * A volume: of wood, of paint in a can, of a hole.
 *
 * @param cubicMillimetres the number; below zero only as a difference
 */
public record Volume(double cubicMillimetres) implements Quantity, Comparable<Volume> {
    /** No volume at all. */
    public static final Volume ZERO = new Volume(0);

    private static final double PER_CUBIC_INCH = 16_387.064;
    private static final double PER_GALLON = 3_785_411.784;

    /** @throws ArithmeticException if the number is infinite or none */
    public Volume {
        cubicMillimetres = Decimals.counted(cubicMillimetres, "mm3");
    }

    /** Cubic millimetres. */
    public static Volume ofCubicMillimetres(double cubicMillimetres) {
        return new Volume(cubicMillimetres);
    }

    /** Litres. */
    public static Volume ofLitres(double litres) {
        return new Volume(litres * 1e6);
    }

    /** US gallons of 231 cubic inches (NIST Handbook 44, appendix C). */
    public static Volume ofGallons(double gallons) {
        return new Volume(gallons * PER_GALLON);
    }

    /** Reads {@code 8 fl oz}, {@code 1 qt}, {@code 310 ml}, {@code 2.5 l}. @throws MeasureTextException if it is no volume */
    public static Volume parse(String text) {
        return UnitText.VOLUME.read(text, Volume::new);
    }

    /** This and another. */
    public Volume plus(Volume other) {
        return new Volume(cubicMillimetres + other.cubicMillimetres);
    }

    /** This less another. */
    public Volume minus(Volume other) {
        return new Volume(cubicMillimetres - other.cubicMillimetres);
    }

    /** This scaled by a number. */
    public Volume times(double count) {
        return new Volume(cubicMillimetres * count);
    }

    /** How many times the other goes into this, as a number. @throws ArithmeticException if the other is zero */
    public double dividedBy(Volume other) {
        return Decimals.ratio(cubicMillimetres, other.cubicMillimetres, this, other);
    }

    /** In cubic inches, as a decimal number. */
    public double inCubicInches() {
        return cubicMillimetres / PER_CUBIC_INCH;
    }

    /** In cubic feet, as a decimal number. */
    public double inCubicFeet() {
        return inCubicInches() / 1728;
    }

    /** In litres, as a decimal number. */
    public double inLitres() {
        return cubicMillimetres / 1e6;
    }

    /** In US gallons, as a decimal number. */
    public double inGallons() {
        return cubicMillimetres / PER_GALLON;
    }

    /** In US fluid ounces, as a decimal number. */
    public double inFluidOunces() {
        return inGallons() * 128;
    }

    /** The unit a shop would use: fluid ounces, quarts, gallons and cubic feet, or millilitres and litres. */
    @Override
    public String in(MeasureStyle style) {
        if (style.unit() == LengthUnit.MILLIMETRES) {
            return inLitres() < 1 ? Decimals.upTo(inLitres() * 1000, 0) + " ml" : Decimals.upTo(inLitres(), 2) + " l";
        }
        double ounces = inFluidOunces();
        if (ounces < 32) {
            return Decimals.upTo(ounces, 1) + " fl oz";
        }
        return ounces < 128 ? Decimals.upTo(ounces / 32, 2) + " qt" : Decimals.upTo(ounces / 128, 2) + " gal";
    }

    /** The unit for what lies in heaps and holes: cubic feet, or litres. */
    public String bulk(MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Decimals.upTo(inCubicFeet(), 2) + " cu ft"
                : Decimals.upTo(inLitres(), 0) + " l";
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicMillimetres, other.cubicMillimetres);
    }

    /** The canonical text, {@code 310000 mm3}, read back exactly by {@link #parse(String)}. */
    @Override
    public String toString() {
        return Decimals.exact(cubicMillimetres) + " mm3";
    }
}
