package org.kerfleaf.sketch;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;

/**
 * One run of a workbook's cells: which cell is running, which unit and currency hold, which sizes are being tried.
 *
 * <p>The kernel binds a run to the thread that runs the cells and tells it before each snippet where it stands. Words ask
 * it for an {@link Origin}; only {@code size}, {@code held}, {@code slope}, {@code count} and {@code pick} ask it for a
 * value.
 */
public final class SketchRun {
    private static final ThreadLocal<SketchRun> CURRENT = new ThreadLocal<>();

    private final Map<String, String> tried;
    private final Map<String, Size> sizes = new LinkedHashMap<>();
    private final List<Instead> insteads = new ArrayList<>();
    private int cell;
    private int line;
    private int step;
    private int ordinal;
    private LengthUnit unit;
    private CurrencyUnit currency;

    /** A run in which the sizes of these labels have these values instead of the workbook's. */
    public SketchRun(Map<String, String> tried) {
        this.tried = Map.copyOf(tried);
    }

    /** The run bound to this thread. @throws SketchException on a thread that runs no cells */
    public static SketchRun current() {
        SketchRun run = CURRENT.get();
        if (run == null) {
            throw new SketchException("Words work only while a workbook runs, on the thread that runs it.");
        }
        return run;
    }

    /** Does something with this run bound to the thread. */
    public <T> T doing(Supplier<T> work) {
        SketchRun before = CURRENT.get();
        CURRENT.set(this);
        try {
            return work.get();
        } finally {
            if (before == null) {
                CURRENT.remove();
            } else {
                CURRENT.set(before);
            }
        }
    }

    /** Says where the next snippet stands: cell ordinal from 0, line of the file from 1, build step number or 0. */
    public void at(int nextCell, int nextLine, int nextStep) {
        if (nextCell != cell) {
            ordinal = 0;
        }
        cell = nextCell;
        line = nextLine;
        step = nextStep;
    }

    /** The identity of the next thing made. */
    public Origin next() {
        return new Origin(cell, ordinal++, line, step);
    }

    /** Sets the unit of lengths that name none. */
    void measuresIn(LengthUnit chosen) {
        unit = chosen;
    }

    /** Sets the currency of prices. */
    void pricesIn(CurrencyUnit chosen) {
        if (currency != null && !currency.equals(chosen)) {
            throw new SketchException("Prices are in %s already, and here in %s. One workbook, one currency."
                    .formatted(currency.getCode(), chosen.getCode()));
        }
        currency = chosen;
    }

    /** The value being tried for a size, if it is another than the workbook's. */
    Optional<String> tried(String label) {
        return Optional.ofNullable(tried.get(label));
    }

    /** Keeps a size; its label is its identity. */
    void keep(Size size) {
        Size earlier = sizes.putIfAbsent(size.label(), size);
        if (earlier != null) {
            throw new SketchException("“%s” is a size already, in line %d. One label, one size."
                    .formatted(size.label(), earlier.origin().line()));
        }
    }

    /** Keeps stocks of which one is bought. */
    void keep(Instead instead) {
        insteads.add(instead);
    }

    /** The choices of stock so far, in the order asked. */
    public List<Instead> insteads() {
        return List.copyOf(insteads);
    }

    /** The sizes asked for so far, in the order asked. */
    public List<Size> sizes() {
        return List.copyOf(sizes.values());
    }

    /** Reads a length; one without a unit is in the workbook's. */
    static Length length(String text) {
        return Length.parse(text, current().unit);
    }

    /** Passes a number of things through, if there is at least one. */
    static int atLeastOne(String what, int number) {
        if (number < 1) {
            throw new SketchException("%s of %d: 1 or more would be right.".formatted(what, number));
        }
        return number;
    }

    /** Passes a length through, if it is more than nothing. */
    static Length positive(String what, Length length) {
        if (!length.isPositive()) {
            throw new SketchException(
                    "%s of %s: more than nothing would be right.".formatted(what, length.isZero() ? "0" : length));
        }
        return length;
    }

    /** Passes a length through, if it is not less than nothing. */
    static Length notNegative(String what, Length length) {
        if (length.isNegative()) {
            throw new SketchException("%s of %s: nothing or more would be right.".formatted(what, length));
        }
        return length;
    }

    /** Reads an area or volume that is more than nothing. */
    static <T extends Comparable<T>> T positive(String what, String said, T value, T nothing) {
        if (value.compareTo(nothing) <= 0) {
            throw new SketchException("%s “%s”: more than nothing would be right.".formatted(what, said));
        }
        return value;
    }

    /** Reads a price in the workbook's currency. */
    static Money price(String text) {
        CurrencyUnit currency = current().currency;
        if (currency == null) {
            throw new SketchException(
                    "“%s” is a price in no currency. Say first: pricesIn(\"USD\", \"2026-04-12\").".formatted(text));
        }
        try {
            Money price = Money.of(currency, new BigDecimal(text.strip()));
            if (price.isNegative()) {
                throw new SketchException("“%s” is less than nothing. What it costs would be right.".formatted(text));
            }
            return price;
        } catch (NumberFormatException | ArithmeticException notAPrice) {
            throw new SketchException(
                    "“%s” is not a price. A number like 61.50, in %s, would be.".formatted(text, currency.getCode()));
        }
    }
}
