package org.kerfleaf.measure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The units of one kind of measure, by all the names people give them, and how numbers with such units are read. */
final class UnitTable {
    /**
     * One unit.
     *
     * @param size how much of the base unit it is, exact
     * @param names the symbol first, then what else it is called; in lower case, words parted by a space
     */
    record Unit(Rational size, List<String> names) {
        String symbol() {
            return names.get(0);
        }
    }

    private static final String FEET = "ft";
    private static final Pattern LINK = Pattern.compile(" *(,|\\+|and\\b) *| +");
    private static final Pattern DASH_TO_INCHES = Pattern.compile("-(?=[0-9¼-¾⅐-⅞])");
    private static final Pattern DASH_TO_UNIT = Pattern.compile("-(?=\\p{L})");

    private final Map<String, Unit> byName = new HashMap<>();
    private final Pattern anyName;
    private final String wanted;

    /** @param examples good texts, for messages */
    UnitTable(String kind, String examples, Unit... units) {
        for (Unit unit : units) {
            unit.names().forEach(name -> byName.put(squeezed(name), unit));
        }
        wanted = "Units of %s: %s, as in %s."
                .formatted(kind, Arrays.stream(units).map(Unit::symbol).collect(Collectors.joining(", ")), examples);
        anyName = Pattern.compile(Arrays.stream(units)
                .flatMap(unit -> unit.names().stream())
                .sorted(Comparator.comparing(String::length).reversed())
                .map(UnitTable::pattern)
                .collect(Collectors.joining("|")));
    }

    static Unit unit(String size, String... names) {
        return new Unit(Rational.of(new BigDecimal(size)), List.of(names));
    }

    /** A unit of area: {@code ft2}, {@code ft²}, {@code sq ft}, {@code square feet}. */
    static Unit square(String size, String... sides) {
        return unit(size, powers("2", "²", List.of("sq", "square"), sides));
    }

    /** A unit of volume: {@code ft3}, {@code ft³}, {@code cu ft}, {@code cubic feet}. */
    static Unit cube(String size, String... sides) {
        return unit(size, powers("3", "³", List.of("cu", "cubic"), sides));
    }

    private static String[] powers(String digit, String raised, List<String> words, String... sides) {
        List<String> names = new ArrayList<>();
        for (String side : sides) {
            names.addAll(List.of(side + digit, side + raised, side + "^" + digit));
            words.forEach(word -> names.add(word + " " + side));
        }
        return names.toArray(String[]::new);
    }

    /** A name as it may be written; {@code 5 ft2} must not be read as 5 ft and a 2. */
    private static String pattern(String name) {
        String words = Stream.of(name.split(" ")).map(Pattern::quote).collect(Collectors.joining("\\.? *"));
        boolean word = Character.isLetterOrDigit(name.charAt(name.length() - 1));
        return word ? words + "(?!\\p{L}|[²³^]|[23] *$)\\.?" : words;
    }

    private static String squeezed(String name) {
        return name.replace(" ", "").replace(".", "");
    }

    String wanted() {
        return wanted;
    }

    Unit named(String name) {
        return byName.get(squeezed(name));
    }

    /**
     * Reads the whole text: a number and its unit, or several of them added up, the larger unit first.
     *
     * @param whenNoneIsSaid the unit of a last number that names none, given the unit before it (null if it is the
     *     first); null if there is no such unit
     * @return in the base unit
     */
    Rational read(TextCursor text, UnaryOperator<Unit> whenNoneIsSaid) {
        boolean negative = text.take('-');
        text.skipSpaces();
        Rational sum = Rational.ZERO;
        Unit last = null;
        do {
            int start = text.at();
            Rational number = NumberText.read(text);
            Unit unit = readUnit(text, start, last, whenNoneIsSaid);
            if (last != null && unit.size().compareTo(last.size()) >= 0) {
                throw text.stopAt(
                        start,
                        "%s comes after %s".formatted(unit.symbol(), last.symbol()),
                        "The larger unit is said first, and each once.");
            }
            sum = sum.plus(number.times(unit.size()));
            last = unit;
        } while (goesOn(text, last));
        return negative ? sum.negated() : sum;
    }

    private Unit readUnit(TextCursor text, int start, Unit last, UnaryOperator<Unit> whenNoneIsSaid) {
        String number = text.since(start);
        text.skipSpaces();
        if (text.atEnd()) {
            Unit unit = whenNoneIsSaid.apply(last);
            if (unit == null) {
                throw text.stop("%s needs a unit".formatted(number));
            }
            return unit;
        }
        if (text.seesDigit()) {
            throw text.stop("after %s a unit or a fraction is wanted, not %s".formatted(number, text.shown()));
        }
        text.take(DASH_TO_UNIT);
        int place = text.at();
        String name = text.take(anyName);
        if (name.isEmpty()) {
            throw text.stopAt(place, "after %s a unit is wanted, not %s".formatted(number, text.shown()));
        }
        return named(name);
    }

    private static boolean goesOn(TextCursor text, Unit last) {
        int end = text.at();
        boolean linked = !text.take(LINK).isBlank();
        if (last.symbol().equals(FEET) && text.at() == end) {
            linked = !text.take(DASH_TO_INCHES).isEmpty();
        }
        if (text.next() == '-') {
            throw text.stopAt(
                    text.at(),
                    "a dash here could mean “and” or “less”",
                    "Write them side by side, as in 5 ft 3 in, or take one from the other.");
        }
        return linked || !text.atEnd();
    }
}
