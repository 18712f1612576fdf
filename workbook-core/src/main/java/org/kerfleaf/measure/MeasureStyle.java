package org.kerfleaf.measure;

/**
 * How a workbook prints its measures.
 *
 * @param unit inches or millimetres
 * @param finest the smallest step printed: for inches the denominator of the fraction (8, 16, 32 or 64), for
 *     millimetres the number of steps in one millimetre (1 or 2, so 1 mm or 0.5 mm)
 */
public record MeasureStyle(LengthUnit unit, int finest) {
    /** Inches to the nearest 1/32 in. */
    public static final MeasureStyle INCHES = new MeasureStyle(LengthUnit.INCHES, 32);

    /** Millimetres to the nearest 0.5 mm. */
    public static final MeasureStyle MILLIMETRES = new MeasureStyle(LengthUnit.MILLIMETRES, 2);

    public MeasureStyle {
        boolean known = unit == LengthUnit.INCHES
                ? finest == 8 || finest == 16 || finest == 32 || finest == 64
                : finest == 1 || finest == 2;
        if (!known) {
            throw new IllegalArgumentException(
                    "Print step (%d) in %s: inches print to 1/8, 1/16, 1/32 or 1/64, millimetres to 1 or 1/2."
                            .formatted(finest, unit.symbol()));
        }
    }

    /** The usual style of a unit: 1/32 in or 0.5 mm. */
    public static MeasureStyle of(LengthUnit unit) {
        return unit == LengthUnit.INCHES ? INCHES : MILLIMETRES;
    }

    /** The same unit to the finest step a tape is read to, 1/64 in or 0.5 mm: for gaps, where every hair counts. */
    public MeasureStyle toTheFinest() {
        return new MeasureStyle(unit, unit == LengthUnit.INCHES ? 64 : 2);
    }

    /** The smallest printed step as a length. */
    public Length step() {
        return new Length(unit.nanometres() / finest);
    }

    /** For messages: {@code 1/32 in}, {@code 0.5 mm}. */
    @Override
    public String toString() {
        return step().read(this).digits() + " " + unit.symbol();
    }
}
