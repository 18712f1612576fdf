package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import java.math.RoundingMode;
import java.util.List;
import java.util.stream.LongStream;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/**
 * Screws or nails in a line along a contact: the first and the last stand a set distance from its ends, the others evenly
 * between, no two further apart than said.
 *
 * <p>A contact no longer than two end distances gets one, in its middle. Where the run between the end distances is shorter
 * than one of them, two stand at a quarter of the contact from each end.
 */
public final class FastenerLine {
    /** Distance of the first and last screw from the ends of the contact: common practice, no source. */
    public static final Length END_DISTANCE = Length.ofSixtyFourths(96);

    private static final String RULE =
            "(contact - 2 · end distance) / spacing, rounded up, + 1; one if there is no room for two";

    private FastenerLine() {}

    /**
     * How many fit along a contact.
     *
     * @throws IllegalArgumentException if contact or spacing is not more than zero, or the end distance is less than zero
     */
    public static Figure<Integer> count(Length contact, Length endDistance, Length every) {
        return new Figure<>(
                number(contact, endDistance, every),
                new Reason(
                        RULE,
                        List.of(given("contact", contact), given("end distance", endDistance), given("spacing", every)),
                        Reason.COMMON_PRACTICE));
    }

    /** Where they stand, each from the same end of the contact, in order. */
    public static List<Length> positions(Length contact, Length endDistance, Length every) {
        return spread(contact, endDistance, number(contact, endDistance, every));
    }

    /** So many evenly along a contact, each from the same end of it, in order; one stands in the middle. */
    public static List<Length> spread(Length contact, Length endDistance, int many) {
        if (many == 1) {
            return List.of(contact.half());
        }
        Length run = contact.minus(endDistance.times(2));
        Length first = run.isShorterThan(endDistance) ? contact.dividedBy(4) : endDistance;
        Length between = contact.minus(first.times(2));
        return LongStream.range(0, many)
                .mapToObj(i -> first.plus(between.times(i).dividedBy(many - 1L)))
                .toList();
    }

    private static int number(Length contact, Length endDistance, Length every) {
        if (!contact.isPositive() || !every.isPositive() || endDistance.isNegative()) {
            throw new IllegalArgumentException(
                    "A line of fasteners along %s, every %s, %s from the ends: lengths more than 0 would be right."
                            .formatted(contact, every, endDistance));
        }
        Length run = contact.minus(endDistance.times(2));
        if (!run.isPositive()) {
            return 1;
        }
        long steps = run.roundedTo(every, RoundingMode.CEILING).nanometres() / every.nanometres();
        return Math.toIntExact(steps + 1);
    }
}
