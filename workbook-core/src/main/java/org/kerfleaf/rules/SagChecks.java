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
import org.kerfleaf.stock.CrossSection;
import org.kerfleaf.stock.Stiffness;

/** How far a shelf sags. An estimate; the limit it is held to is always named, since usual limits differ by a factor of four. */
public final class SagChecks {
    /** Wood under load for months sags about this many times its first sag. Common practice. */
    public static final double CREEP = 1.5;

    private SagChecks() {}

    /**
     * The sag in the middle of a board on two supports: 5 w L⁴ / (384 E I) under a load spread evenly, P L³ / (48 E I) under one
     * that stands in the middle.
     *
     * @param load all that lies on the span, and the board's own weight if it counts
     * @param inTheMiddle whether it all stands there
     */
    public static Figure<Length> sag(
            Length span, CrossSection section, Stiffness stiffness, Mass load, boolean inTheMiddle) {
        double metres = span.inMillimetres() / 1000;
        double inertia = inMetres(section);
        double sag = share(inTheMiddle)
                * Force.weightOf(load).newtons()
                * metres
                * metres
                * metres
                / (stiffness.pascals() * inertia);
        return Figure.of(
                Length.ofMillimetres(sag * 1000),
                inTheMiddle
                        ? "load · span³ / (48 · E · I), I = width · thickness³ / 12"
                        : "5 · load · span³ / (384 · E · I), I = width · thickness³ / 12",
                inTheMiddle
                        ? "statics, two supports and a load in the middle"
                        : "statics, two supports and an even load",
                given("load", load),
                given("span", span),
                given("E", stiffness),
                given("width", section.width()),
                given("thickness", section.thickness()));
    }

    private static double share(boolean inTheMiddle) {
        return inTheMiddle ? 1.0 / 48 : 5.0 / 384;
    }

    private static double inMetres(CrossSection section) {
        return section.inertia().value().millimetresToTheFourth() / 1e12;
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
     * The longest span on which a board stays within a limit, the limit being a share of the span: (384 · E · I · limit / (5 · w))^⅓
     * where it carries w on each length, √(48 · E · I · limit / P) where P stands in the middle.
     *
     * @param load what lies on each metre, or all that stands in the middle
     */
    public static Figure<Length> longest(
            CrossSection section, Stiffness stiffness, Mass load, boolean inTheMiddle, SagLimit limit) {
        Length metre = Length.ofMillimetres(1000L);
        double share = limit.over(metre).dividedBy(metre);
        double power = stiffness.pascals()
                * inMetres(section)
                * share
                / (share(inTheMiddle) * Force.weightOf(load).newtons());
        double span = inTheMiddle ? StrictMath.sqrt(power) : StrictMath.cbrt(power);
        return Figure.of(
                Length.ofMillimetres(span * 1000),
                inTheMiddle
                        ? "√(48 · E · I · limit / P), the limit as a share of the span"
                        : "(384 · E · I · limit / (5 · w))^⅓, the limit as a share of the span",
                limit.source(),
                given("limit", limit.words()),
                given(inTheMiddle ? "P" : "w for each metre", load),
                given("E", stiffness),
                given("width", section.width()),
                given("thickness", section.thickness()));
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
