package org.kerfleaf.saw;

import static org.kerfleaf.reason.Given.given;

import java.util.List;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Given;
import org.kerfleaf.reason.Reason;

/**
 * What a scale of half degrees is set to, and the gap that the error leaves.
 *
 * <p>Source: geometry; that the scales of small saws are read to half a degree is common practice.
 */
public final class HalfDegrees {
    private static final long STEP = Angle.ofDegrees(0.5).nanodegrees();

    private HalfDegrees() {}

    /** The nearest half degree. */
    public static Figure<Angle> nearest(Angle exact) {
        return Figure.of(
                new Angle(Math.floorDiv(exact.nanodegrees() + STEP / 2, STEP) * STEP),
                "the nearest half degree, which a scale shows",
                Reason.COMMON_PRACTICE,
                given("exact", exact));
    }

    /**
     * How far a joint stands open at one end of its cut: cut length · tan error, twice where two such ends meet.
     *
     * @param across what is sawn through: a mitred board's width, a bevelled sheet's thickness
     */
    public static Figure<Length> gap(Angle exact, Length across, boolean meetsItsLike) {
        Angle off = nearest(exact).value().minus(exact);
        Angle error = off.nanodegrees() < 0 ? Angle.ZERO.minus(off) : off;
        return Figure.of(
                error.rise(exact.lengthOver(across)).times(meetsItsLike ? 2L : 1L),
                (meetsItsLike ? "2 · " : "") + "across / cos angle · tan error"
                        + (meetsItsLike ? ", since two such ends meet" : ""),
                Reason.GEOMETRY,
                given("across", across),
                given("angle", exact),
                new Given("error", error));
    }

    /** What to set of an angle between two marks, and the gap; nothing if it is on a mark to a hundredth of a degree. */
    static List<Reading> of(String what, Angle exact, Angle set, Length across, boolean meetsItsLike) {
        Figure<Angle> nearest = nearest(set);
        if (Math.abs(nearest.value().minus(set).inDegrees()) < 0.005) {
            return List.of();
        }
        return List.of(
                new Reading(what + ", to the nearest half degree", nearest),
                new Reading("gap that leaves at the " + what + "'s cut", gap(exact, across, meetsItsLike)));
    }
}
