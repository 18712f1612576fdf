package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import java.time.Duration;
import java.util.List;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/** How long it takes to close a glued joint and how many clamps draw it tight. Common practice, no source: measure your own. */
public final class GlueUp {
    /** Spreading, for each 500 cm². */
    private static final double SECONDS_ON_SQUARE_METRE = 1200;

    private static final long SECONDS_EACH_FASTENER = 30;
    private static final long SECONDS_EACH_CLAMP = 30;

    /** One clamp for so much of a contact's length: 6 in. */
    private static final Length CLAMP_EVERY = Length.ofInches(6);

    private GlueUp() {}

    /** Clamps along contacts: one for each 6 in of each, rounded up; none where fasteners draw it tight. */
    public static Figure<Integer> clamps(List<Length> contacts, int fasteners) {
        if (fasteners > 0) {
            return Figure.of(0, "the fasteners draw it tight", Reason.COMMON_PRACTICE, given("fasteners", fasteners));
        }
        int clamps = contacts.stream()
                .mapToInt(along -> (int) Math.max(1, Math.ceil(along.dividedBy(CLAMP_EVERY) - 1e-9)))
                .sum();
        return Figure.of(
                clamps,
                "one for each 6 in of each contact, rounded up",
                Reason.COMMON_PRACTICE,
                given("contacts", contacts.size()));
    }

    /** Spreading: a minute for each 500 cm²; closing: half a minute for each fastener or clamp. */
    public static Figure<Duration> closing(Area area, int fasteners, int clamps) {
        long seconds = Math.round(area.inSquareMetres() * SECONDS_ON_SQUARE_METRE)
                + fasteners * SECONDS_EACH_FASTENER
                + clamps * SECONDS_EACH_CLAMP;
        return Figure.of(
                Duration.ofSeconds(seconds),
                "a minute for each 500 cm² to spread, half a minute for each fastener or clamp",
                Reason.COMMON_PRACTICE,
                given("area", area),
                given("fasteners", fasteners),
                given("clamps", clamps));
    }
}
