package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;

/** The value of one expression in prose. */
public sealed interface Live {
    /** A length. */
    record OfLength(Length length) implements Live {}

    /** An angle or slope. */
    record OfAngle(Angle angle) implements Live {}

    /** Anything else, as text. */
    record OfText(String text) implements Live {}

    /** A question the plan answers. */
    record OfQuestion(Asked asked) implements Live {}

    /** What an expression's value is in prose; of something that may not have been said, what was said. */
    static Live of(Object value) {
        if (value instanceof Optional<?> perhaps) {
            return perhaps.isPresent() ? of(perhaps.get()) : new OfText("not said");
        }
        if (value instanceof Length length) {
            return new OfLength(length);
        }
        if (value instanceof Angle angle) {
            return new OfAngle(angle);
        }
        return value instanceof Asked asked ? new OfQuestion(asked) : new OfText(String.valueOf(value));
    }
}
