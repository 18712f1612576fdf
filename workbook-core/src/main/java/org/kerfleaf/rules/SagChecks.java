package org.kerfleaf.rules;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.SagLimit;
import org.kerfleaf.stock.Stiffness;

/** How far a shelf sags. An estimate; the limit it is held to is always named, since usual limits differ by a factor of four. */
public final class SagChecks {
    /** Wood under load for months sags about this many times its first sag. Common practice. */
    public static final double CREEP = 1.5;

    private SagChecks() {}

    /**
     * The sag in the middle of a board on two supports under a load spread evenly: 5 w L⁴ / (384 E I), I = width · thickness³ / 12.
     *
     * @param load all that lies on the span, and the board's own weight if it counts
     */
    public static Figure<Length> sag(Length span, Length width, Length thickness, Stiffness stiffness, Mass load) {
        double metres = span.inMillimetres() / 1000;
        double high = thickness.inMillimetres() / 1000;
        double inertia = width.inMillimetres() / 1000 * high * high * high / 12;
        double sag =
                5 * Force.weightOf(load).newtons() * metres * metres * metres / (384 * stiffness.pascals() * inertia);
        return Figure.of(
                Length.ofMillimetres(sag * 1000),
                "5 · load · span³ / (384 · E · I), I = width · thickness³ / 12",
                "statics, two supports and an even load",
                given("load", load),
                given("span", span),
                given("E", stiffness),
                given("width", width),
                given("thickness", thickness));
    }

    /** Check 33: a sag is within the named limit. */
    public static Check sag(String of, Length sag, Length span, SagLimit limit, MeasureStyle style) {
        Held held = new Held("Sag", of, limit.source(), style);
        Length allowed = limit.over(span);
        return held.atMost(
                "Over %s it sags %s, held to %s. %s"
                        .formatted(span.in(style), thousandths(sag, style), limit.words(), SitePlan.DEFERS),
                sag,
                allowed,
                "A bracket in the middle, a lip or a thicker board would hold.");
    }

    /**
     * The longest span on which a board carrying so much on each length stays within a limit:
     * (384 · E · I · limit / (5 · w))^⅓, the limit being a share of the span.
     *
     * @param perMetre what lies on each metre
     */
    public static Figure<Length> longest(
            Length width, Length thickness, Stiffness stiffness, Mass perMetre, SagLimit limit) {
        double high = thickness.inMillimetres() / 1000;
        double inertia = width.inMillimetres() / 1000 * high * high * high / 12;
        Length metre = Length.ofMillimetres(1000L);
        double share = limit.over(metre).dividedBy(metre);
        double span = StrictMath.cbrt(384
                * stiffness.pascals()
                * inertia
                * share
                / (5 * Force.weightOf(perMetre).newtons()));
        return Figure.of(
                Length.ofMillimetres(span * 1000),
                "(384 · E · I · limit / (5 · w))^⅓, the limit as a share of the span",
                limit.source(),
                given("limit", limit.words()),
                given("w for each metre", perMetre),
                given("E", stiffness),
                given("width", width),
                given("thickness", thickness));
    }

    /** Check 33, where something it needs was not said. */
    public static Check sagNotKnown(String of, String why, String missing, MeasureStyle style) {
        return new Held("Sag", of, "statics", style).notKnown(why + " " + SitePlan.DEFERS, missing);
    }

    /** A sag as the sentences say it: to 0.001 in or 0.01 mm. */
    public static String thousandths(Length length, MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Say.number(length.inInches(), 3) + " in"
                : Say.number(length.inMillimetres(), 2) + " mm";
    }
}
