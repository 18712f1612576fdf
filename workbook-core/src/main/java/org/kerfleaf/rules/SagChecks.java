package org.kerfleaf.rules;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.stock.Stiffness;

/** How far a shelf sags. An estimate; the limit it is held to is always named, since usual limits differ by a factor of four. */
public final class SagChecks {
    /** Wood under load for months sags about this many times its first sag. Common practice. */
    public static final double CREEP = 1.5;

    private static final Length FOOT = Length.ofInches(12);

    /** How much sag is too much. */
    public enum Limit {
        /** Span / 144. */
        WOODWORK_STANDARD("span / 144", "Architectural Woodwork Standards 2009, 1.2.21 (seen in a copy)"),
        /** 1/32 in for each foot: what an eye sees. */
        VISIBLE("1/32 in for each foot", "common practice, no source"),
        /** 0.02 in for each foot, when first loaded. */
        FIRST_LOAD("0.02 in for each foot when first loaded", "shop guidelines (seen in a copy)");

        private final String words;
        private final String source;

        Limit(String words, String source) {
            this.words = words;
            this.source = source;
        }

        /** The sag allowed over a span. */
        public Length over(Length span) {
            return switch (this) {
                case WOODWORK_STANDARD -> span.dividedBy(144);
                case VISIBLE -> Length.ofSixtyFourths(2).times(span.dividedBy(FOOT));
                case FIRST_LOAD -> Length.ofInches(0.02).times(span.dividedBy(FOOT));
            };
        }
    }

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
    public static Check sag(String of, Length sag, Length span, Limit limit, MeasureStyle style) {
        Held held = new Held("Sag", of, limit.source, style);
        Length allowed = limit.over(span);
        return held.atMost(
                "Over %s it sags %s, held to %s. %s"
                        .formatted(span.in(style), thousandths(sag, style), limit.words, SitePlan.DEFERS),
                sag,
                allowed,
                "A bracket in the middle, a lip or a thicker board would hold.");
    }

    private static String thousandths(Length length, MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES
                ? Say.number(length.inInches(), 3) + " in"
                : Say.number(length.inMillimetres(), 2) + " mm";
    }
}
