package org.kerfleaf.export.spreadsheet;

import org.joda.money.CurrencyUnit;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.TapeReading;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.plan.Plan;

/** Numbers as the spreadsheet holds them, each in the unit its column's head names, and their formats. */
record Printed(MeasureStyle style, CurrencyUnit currency) {
    boolean inInches() {
        return style.unit() == LengthUnit.INCHES;
    }

    /** Inches or millimetres, rounded to the print step as the tape reads; exact 64ths stay as they are. */
    double number(Length length) {
        TapeReading reading = length.read(style);
        double size = reading.whole() + (double) reading.numerator() / reading.denominator();
        return reading.negative() ? -size : size;
    }

    /** Inches or millimetres as they are, for what no tape shows. */
    double fine(Length length) {
        return inInches() ? length.inInches() : length.inMillimetres();
    }

    /** A format that shows that number whole: every fraction over the print step's denominator, so that columns line up. */
    String format(Length length) {
        return inInches() ? fractions(Math.max(length.read(style).denominator(), style.finest())) : "0.0";
    }

    /** The format of a length that a formula makes. */
    String lengthFormat() {
        return inInches() ? fractions(style.finest()) : "0.0";
    }

    private static String fractions(int denominator) {
        return "# %s/%d".formatted("?".repeat(Integer.toString(denominator).length()), denominator);
    }

    String lengthHead(String words) {
        return words + ", " + style.unit().symbol();
    }

    /** Square feet or square metres. */
    double number(Area area) {
        return inInches() ? area.inSquareFeet() : area.inSquareMetres();
    }

    String areaHead(String words) {
        return words + (inInches() ? ", sq ft" : ", m²");
    }

    /** How many square units of length one unit of area has. */
    int perArea() {
        return inInches() ? 144 : 1_000_000;
    }

    /** Pounds or kilograms. */
    double number(Mass mass) {
        return inInches() ? mass.inPounds() : mass.inKilograms();
    }

    String massHead(String words) {
        return words + (inInches() ? ", lb" : ", kg");
    }

    /** Fluid ounces or millilitres. */
    double number(Volume volume) {
        return inInches() ? volume.inFluidOunces() : volume.inLitres() * 1000;
    }

    String volumeHead(String words) {
        return words + (inInches() ? ", fl oz" : ", ml");
    }

    String moneyFormat() {
        int places = currency.getDecimalPlaces();
        return places == 0 ? "#,##0" : "#,##0." + "0".repeat(places);
    }

    String moneyHead(String words) {
        return hasCurrency() ? "%s, %s".formatted(words, currency.getCode()) : words;
    }

    /** Whether the workbook says in what its prices are; XXX is ISO 4217's code for none. */
    boolean hasCurrency() {
        return !currency.equals(Plan.NO_CURRENCY);
    }
}
