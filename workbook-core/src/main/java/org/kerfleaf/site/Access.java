package org.kerfleaf.site;

import static org.kerfleaf.reason.Given.given;

import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.sketch.Reach;

/**
 * What the place asks of it so that people can come up to it, use it and pass it.
 *
 * <p>Source: ADA standards (2010) 305, 307 and 308, seen in a copy. They print inches and millimetres, each rounded in its own way;
 * the workbook's unit decides which are taken.
 *
 * @param bands within which each of those who reach for it can reach
 * @param groundWide the clear ground before it, its shorter way
 * @param groundDeep likewise its longer way
 * @param proud how far what hangs between {@code cane} and {@code overHead} may stand over a path, on a post
 * @param cane up to which height a cane finds it; also how low what hangs between two posts must begin
 * @param overHead from which height on people pass under it
 * @param postsApart how far two posts may stand apart before a cane misses both
 */
public record Access(
        List<Band> bands,
        Figure<Length> groundWide,
        Figure<Length> groundDeep,
        Figure<Length> proud,
        Figure<Length> cane,
        Figure<Length> overHead,
        Figure<Length> postsApart) {
    /** The steepest that clear ground may be: 1 in so many. */
    public static final int FLATTEST = 48;

    /** A band of heights above the ground. */
    public record Band(Reach who, Figure<Length> low, Figure<Length> high) {}

    public Access {
        bands = List.copyOf(bands);
    }

    /** For these people, in the numbers of that unit. */
    public static Access of(List<Reach> people, MeasureStyle style) {
        return new Access(
                people.stream().map(who -> band(who, style)).toList(),
                rule(style, 30, 760, "clear ground, the shorter way", "305.3"),
                rule(style, 48, 1220, "clear ground, the longer way", "305.3"),
                rule(style, 12, 305, "on a post, so far over a path at most", "307.3"),
                rule(style, 27, 685, "a cane finds what begins no higher", "307.2 and 307.3"),
                rule(style, 80, 2030, "people pass under what begins no lower", "307.4"),
                rule(style, 12, 305, "two posts nearer than this are found by a cane", "307.3"));
    }

    /** How low and how high somebody reaches, forward or to the side, over nothing. */
    public static Band band(Reach who, MeasureStyle style) {
        return switch (who) {
            case ADULT -> band(who, style, 15, 380, 48, 1220, "308.2 and 308.3");
            case CHILD_3_TO_4 -> band(who, style, 20, 510, 36, 915, "advisory 308.1");
            case CHILD_5_TO_8 -> band(who, style, 18, 455, 40, 1015, "advisory 308.1");
            case CHILD_9_TO_12 -> band(who, style, 16, 405, 44, 1120, "advisory 308.1");
        };
    }

    private static Band band(
            Reach who, MeasureStyle style, long low, long lowMm, long high, long highMm, String where) {
        return new Band(
                who,
                rule(style, low, lowMm, "no lower than " + who.words() + " reaches", where),
                rule(style, high, highMm, "no higher than " + who.words() + " reaches", where));
    }

    private static Figure<Length> rule(MeasureStyle style, long inches, long millimetres, String rule, String where) {
        boolean inInches = style.unit() == LengthUnit.INCHES;
        return Figure.of(
                inInches ? Length.ofInches(inches) : Length.ofMillimetres(millimetres),
                rule,
                "ADA " + where + " (seen in a copy)",
                given("printed in", inInches ? "inches" : "millimetres"));
    }
}
