package org.kerfleaf.measure;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What lies on something, spread evenly: so much in all, along each length or on each area.
 *
 * @param newtons in all, along a metre or on a square metre; zero or more
 * @param over what it is spread over
 */
public record SpreadLoad(double newtons, Over over) implements Quantity {
    private static final double PER_POUND = 4.4482216152605;
    private static final double PER_KILOGRAM = 9.80665;
    private static final double METRES_IN_FOOT = 0.3048;

    private static final Pattern ALONG = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(lb/ft|lb/in|kg/m|n/m|kn/m)");
    private static final Pattern IN_ALL = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(lb|kg)");

    /** What a load is spread over. */
    public enum Over {
        /** The number is all of it. */
        ALL,
        /** So much along each length. */
        LENGTH,
        /** So much on each area. */
        AREA
    }

    /** So much in all. */
    public static SpreadLoad of(Mass mass) {
        return new SpreadLoad(mass.inKilograms() * PER_KILOGRAM, Over.ALL);
    }

    /**
     * Reads {@code 20 lb/ft}, {@code 30 kg/m}, {@code 40 lb/sq ft}, {@code 2 kN/m2}, {@code 120 lb}.
     *
     * @throws MeasureTextException if it is no load
     */
    public static SpreadLoad parse(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT);
        Matcher along = ALONG.matcher(plain);
        if (along.matches()) {
            return new SpreadLoad(Double.parseDouble(along.group(1)) * perMetre(along.group(2)), Over.LENGTH);
        }
        Matcher all = IN_ALL.matcher(plain);
        if (all.matches()) {
            double each = all.group(2).equals("lb") ? PER_POUND : PER_KILOGRAM;
            return new SpreadLoad(Double.parseDouble(all.group(1)) * each, Over.ALL);
        }
        try {
            return new SpreadLoad(Pressure.parse(text).pascals(), Over.AREA);
        } catch (MeasureTextException none) {
            throw new MeasureTextException(
                    text,
                    1,
                    "this is no load",
                    "So much along a length (20 lb/ft, 30 kg/m), on an area (40 lb/sq ft, 200 kg/m2) or in all (120 lb, 50 kg)"
                            + " would be right.");
        }
    }

    private static double perMetre(String unit) {
        return switch (unit) {
            case "lb/ft" -> PER_POUND / METRES_IN_FOOT;
            case "lb/in" -> PER_POUND / METRES_IN_FOOT * 12;
            case "kg/m" -> PER_KILOGRAM;
            case "kn/m" -> 1000;
            default -> 1;
        };
    }

    /** The whole of it on something so long and so large. */
    public Mass on(Length along, Area whole) {
        double all = switch (over) {
            case ALL -> newtons;
            case LENGTH -> newtons * along.inMillimetres() / 1000;
            case AREA -> newtons * whole.inSquareMetres();
        };
        return Mass.ofGrams(all / PER_KILOGRAM * 1000);
    }

    /** In the style's unit: {@code 20 lb/ft}, {@code 40 lb/ft²}, {@code 120 lb}; {@code 30 kg/m} likewise. */
    @Override
    public String in(MeasureStyle style) {
        boolean inches = style.unit() == LengthUnit.INCHES;
        double shown = switch (over) {
            case ALL -> inches ? newtons / PER_POUND : newtons / PER_KILOGRAM;
            case LENGTH -> inches ? newtons * METRES_IN_FOOT / PER_POUND : newtons / PER_KILOGRAM;
            case AREA -> inches ? new Pressure(newtons).inPoundsPerSquareFoot() : newtons / PER_KILOGRAM;
        };
        String unit = switch (over) {
            case ALL -> inches ? " lb" : " kg";
            case LENGTH -> inches ? " lb/ft" : " kg/m";
            case AREA -> inches ? " lb/ft²" : " kg/m²";
        };
        return Decimals.of(shown, 1) + unit;
    }
}
