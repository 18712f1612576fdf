package org.kerfleaf.rules;

import static org.kerfleaf.reason.Given.given;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Touching;

/** Whether what must go in has room, and a hand with it. */
public final class ContentsChecks {
    private static final Length INCHES = Length.ofInches(2);
    private static final Length MILLIMETRES = Length.ofMillimetres(50L);

    private ContentsChecks() {}

    /** What a hand needs to take something out: 2 in or 50 mm. Common practice. */
    public static Length handRoom(MeasureStyle style) {
        return Say.rule(style, INCHES, MILLIMETRES);
    }

    /**
     * The clear size that things need one way.
     *
     * @param things all that stand in a row that way, together
     * @param inRow how many these are
     */
    public static Figure<Length> need(Length things, int inRow, Length handRoom) {
        return Figure.of(
                things.plus(handRoom),
                "the things in a row, and room for a hand",
                Reason.COMMON_PRACTICE,
                given("in a row", inRow),
                given("together", things),
                given("hand room", handRoom));
    }

    /**
     * Things have the clear size they need one way.
     *
     * @param way {@code wide}, {@code deep} or {@code high}
     * @param there the clear size that is there; empty if it is open that way
     */
    public static Check room(
            String things, String on, String way, Length need, Optional<Length> there, MeasureStyle style) {
        Held held = new Held("Room for what goes in", things + " on " + on + ", " + way, Reason.COMMON_PRACTICE, style);
        if (there.isEmpty()) {
            return held.holds("They need %s; it is open that way.".formatted(need.in(style)));
        }
        boolean touches = need.isWithin(there.get(), Touching.TOLERANCE);
        Length clear = touches ? need : there.get();
        return held.atLeast(
                "%s are clear there, %s, for the things and a hand.".formatted(Say.fine(clear, style), way),
                clear,
                need,
                "They no longer fit. Make the inside %s larger that way, or say how much room a hand really needs: handRoom(...)."
                        .formatted(Say.difference(need.minus(clear), style)));
    }

    /** The same, where something it needs was not said. */
    public static Check roomNotKnown(String things, String why, String missing, MeasureStyle style) {
        return new Held("Room for what goes in", things, Reason.COMMON_PRACTICE, style).notKnown(why, missing);
    }
}
