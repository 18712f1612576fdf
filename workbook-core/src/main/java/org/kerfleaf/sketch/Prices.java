package org.kerfleaf.sketch;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;

/** The currency of all prices and the day they were true. @group sizes */
public record Prices(Origin origin, String currency, LocalDate day) implements Declaration {
    /** Prices in that currency (ISO 4217 code), as of that day (ISO 8601). */
    public static Prices in(String currency, String day) {
        try {
            CurrencyUnit unit = CurrencyUnit.of(currency);
            SketchRun.current().pricesIn(unit);
            return new Prices(SketchRun.current().next(), unit.getCode(), LocalDate.parse(day));
        } catch (IllegalCurrencyException unknown) {
            throw new SketchException(
                    "“%s” is no currency code. Three letters like USD, EUR or GBP would be.".formatted(currency));
        } catch (DateTimeParseException notADay) {
            throw new SketchException("“%s” is no day. A day like 2026-04-12 would be.".formatted(day));
        }
    }
}
