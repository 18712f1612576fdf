package org.kerfleaf.stock;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.MeasureTextException;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;

/**
 * How heavy a material is for its volume.
 *
 * @param kilogramsPerCubicMetre the number, more than zero
 */
public record Density(double kilogramsPerCubicMetre) implements Quantity {
    /** 1 lb/ft3, from 0.45359237 kg and 28.316846592 L (NIST Handbook 44, appendix C). */
    private static final double PER_POUND_IN_CUBIC_FOOT = 453.59237 / 28.316846592;

    public Density {
        if (!(kilogramsPerCubicMetre > 0)) {
            throw new IllegalArgumentException(
                    "A density of %s kg/m³: more than 0 would be right.".formatted(kilogramsPerCubicMetre));
        }
    }

    public static Density ofKilogramsPerCubicMetre(double number) {
        return new Density(number);
    }

    public static Density ofPoundsPerCubicFoot(double number) {
        return new Density(number * PER_POUND_IN_CUBIC_FOOT);
    }

    /** Reads a mass for a volume: {@code 1.4 kg/L}, {@code 90 lb/cu ft}. @throws MeasureTextException if it is none */
    public static Density parse(String text) {
        String[] halves = text.split("/", -1);
        try {
            if (halves.length == 2) {
                Volume volume = Volume.parse("1 " + halves[1].strip());
                double density = Mass.parse(halves[0]).inKilograms() / volume.inLitres() * 1000;
                if (density > 0) {
                    return new Density(density);
                }
            }
        } catch (MeasureTextException halfIsNone) {
            // The whole text is shown below: half of it would not be found again.
        }
        throw new MeasureTextException(
                text,
                1,
                "this is no weight for its volume",
                "So much for a volume (1.4 kg/L, 90 lb/cu ft) would be right.");
    }

    /**
     * The density of a stock by the words of its name: {@code exterior plywood}, {@code Douglas fir 2x4}, {@code acrylic}.
     * Empty where the words name no material of the tables, such as lumber of a species nobody said.
     */
    public static Optional<Figure<Density>> named(String stock) {
        return DensityByName.of(stock);
    }

    public Mass of(Volume volume) {
        return Mass.ofGrams(volume.inLitres() * kilogramsPerCubicMetre);
    }

    public double inPoundsPerCubicFoot() {
        return kilogramsPerCubicMetre / PER_POUND_IN_CUBIC_FOOT;
    }

    /** Pounds in a cubic foot to one decimal, or whole kilograms in a cubic metre. */
    @Override
    public String in(MeasureStyle style) {
        boolean inches = style.unit() == LengthUnit.INCHES;
        BigDecimal shown = BigDecimal.valueOf(inches ? inPoundsPerCubicFoot() : kilogramsPerCubicMetre)
                .setScale(inches ? 1 : 0, RoundingMode.HALF_UP);
        return shown.toPlainString() + (inches ? " lb/ft³" : " kg/m³");
    }
}
