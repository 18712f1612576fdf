package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.MeasureTextException;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.reason.Figure;

/**
 * How stiff a wood is along its grain: its modulus of elasticity.
 *
 * @param pascals the number, more than zero
 */
public record Stiffness(double pascals) implements Quantity {
    private static final double PER_PSI = 4.4482216152605 / 645.16e-6;

    private static final Pattern TEXT = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(million\\s+)?(psi|mpa|gpa)");

    public static Stiffness ofPascals(double pascals) {
        return new Stiffness(pascals);
    }

    public static Stiffness ofPoundsPerSquareInch(double psi) {
        return new Stiffness(psi * PER_PSI);
    }

    /** Reads {@code 1.2 million psi}, {@code 1200000 psi}, {@code 8000 MPa}, {@code 8 GPa}. @throws MeasureTextException if it is none */
    public static Stiffness parse(String text) {
        Matcher modulus = TEXT.matcher(text.strip().toLowerCase(Locale.ROOT));
        if (!modulus.matches() || Double.parseDouble(modulus.group(1)) == 0) {
            throw new MeasureTextException(
                    text,
                    1,
                    "this is no modulus of elasticity",
                    "A number with psi, MPa or GPa would be right: 1.2 million psi, 8000 MPa.");
        }
        double number = Double.parseDouble(modulus.group(1)) * (modulus.group(2) == null ? 1 : 1e6);
        return switch (modulus.group(3)) {
            case "psi" -> ofPoundsPerSquareInch(number);
            case "gpa" -> ofPascals(number * 1e9);
            default -> ofPascals(number * 1e6);
        };
    }

    /** The stiffness of a wood by the words of a stock's name; empty where they name no single species of the table. */
    public static Optional<Figure<Stiffness>> named(String stock) {
        return WoodSpecies.in(Words.of(stock))
                .map(wood -> Figure.of(
                        ofPoundsPerSquareInch(wood.millionPsi() * 1e6),
                        "modulus of elasticity of clear wood at 12 % moisture",
                        wood.source(),
                        given("wood", wood.words())));
    }

    /** Pounds on a square inch, or megapascals, to three places. */
    @Override
    public String in(MeasureStyle style) {
        boolean inches = style.unit() == LengthUnit.INCHES;
        BigDecimal shown =
                BigDecimal.valueOf(inches ? pascals / PER_PSI : pascals / 1e6).round(new MathContext(3));
        return shown.stripTrailingZeros().toPlainString() + (inches ? " psi" : " MPa");
    }
}
