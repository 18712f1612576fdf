package org.kerfleaf.reason;

import org.joda.money.Money;
import org.kerfleaf.measure.Count;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;

/** One input of a rule: its name in the rule, and its value. */
public record Given(String name, Quantity value) {
    public static Given given(String name, Quantity value) {
        return new Given(name, value);
    }

    public static Given given(String name, long count) {
        return new Given(name, Count.of(count));
    }

    public static Given given(String name, Money money) {
        return new Given(name, new Words(money.toString()));
    }

    public static Given given(String name, String words) {
        return new Given(name, new Words(words));
    }

    /** {@code name value}, as the style prints it. */
    public String in(MeasureStyle style) {
        return name + " " + value.in(style);
    }

    /** An input that is no number: a name, a price. */
    private record Words(String text) implements Quantity {
        @Override
        public String in(MeasureStyle style) {
            return text;
        }
    }
}
