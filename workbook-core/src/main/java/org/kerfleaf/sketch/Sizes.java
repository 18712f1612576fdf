package org.kerfleaf.sketch;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;

/** Asks the run for the sizes a reader may change. */
public final class Sizes {
    private static final String TO = " to ";

    private Sizes() {}

    /** A length within a range: {@code "16 in to 30 in"}. @throws SketchException if the value is out of the range */
    public static Length length(String label, String value, Optional<String> range) {
        return ask(label, value, range, Size.Kind.LENGTH, SketchRun::length);
    }

    /** A slope or angle within a range. @throws SketchException if the value is out of the range */
    public static Angle angle(String label, String value, Optional<String> range) {
        return ask(label, value, range, Size.Kind.ANGLE, Angle::parse);
    }

    /** A whole number within a range. @throws SketchException if the value is out of the range */
    public static int count(String label, int value, Optional<String> range) {
        return ask(label, Integer.toString(value), range, Size.Kind.COUNT, text -> wholeNumber(label, text));
    }

    /** One of several words. @throws SketchException if the value is none of them */
    public static String choice(String label, String value, String... among) {
        SketchRun run = SketchRun.current();
        String chosen = run.tried(label).orElse(value);
        List<String> choices = Arrays.asList(among);
        if (!choices.contains(chosen)) {
            throw new SketchException(
                    "%s can be %s; “%s” is none of them.".formatted(label, String.join(", ", choices), chosen));
        }
        run.keep(new Size(run.next(), label, Size.Kind.CHOICE, chosen, Optional.empty(), Optional.empty()));
        return chosen;
    }

    /** A length that is no size of its own; without a unit it is in the workbook's. */
    public static Length fixed(String text) {
        return SketchRun.length(text);
    }

    private static <T extends Comparable<T>> T ask(
            String label, String said, Optional<String> range, Size.Kind kind, Function<String, T> read) {
        SketchRun run = SketchRun.current();
        T value = read.apply(run.tried(label).orElse(said));
        Optional<T> least = range.map(r -> read.apply(end(label, r, 0)));
        Optional<T> most = range.map(r -> read.apply(end(label, r, 1)));
        boolean under = least.isPresent() && value.compareTo(least.get()) < 0;
        boolean over = most.isPresent() && value.compareTo(most.get()) > 0;
        if (under || over) {
            throw new SketchException(
                    "%s can be %s; %s is past the rule.".formatted(label, range.orElseThrow(), value));
        }
        run.keep(new Size(run.next(), label, kind, value.toString(), least.map(T::toString), most.map(T::toString)));
        return value;
    }

    private static String end(String label, String range, int which) {
        String[] ends = range.split(TO);
        if (ends.length != 2) {
            throw new SketchException(
                    "The range of %s, “%s”, has no two ends. “16 in to 30 in” would.".formatted(label, range));
        }
        return ends[which].strip();
    }

    private static Integer wholeNumber(String label, String text) {
        try {
            return Integer.valueOf(text.strip());
        } catch (NumberFormatException notWhole) {
            throw new SketchException("%s is a count; “%s” is no whole number. 3 would be.".formatted(label, text));
        }
    }
}
