package org.kerfleaf.rules;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Pressure;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.SagLimit;

/** Snow on a roof or a lid. An estimate, as all loads are. */
public final class SnowChecks {
    /** Where the rule is from, and how sure it is. */
    public static final String SOURCE = "ASCE 7, 7.3 (from memory)";

    private static final double ON_A_ROOF = 0.7;

    private SnowChecks() {}

    /** What lies on a flat roof: 0.7 times what lies on the ground. A slope, drifts and a warm house are left out. */
    public static Figure<Pressure> onRoof(Pressure onTheGround) {
        return Figure.of(
                onTheGround.times(ON_A_ROOF),
                "0.7 · ground snow; slope, drifts and warmth from inside are not counted",
                SOURCE,
                given("ground snow", onTheGround),
                given("share", Ratio.of(ON_A_ROOF)));
    }

    /** Check 61: a roof or lid does not sag too far under snow. */
    public static Check sag(String of, Mass snow, Length span, Length sag, SagLimit limit, MeasureStyle style) {
        return new Held("Snow", of, SOURCE + "; " + limit.source(), style)
                .atMost(
                        "%s of snow lie on it; over %s it sags %s, held to %s. %s"
                                .formatted(
                                        snow.in(style),
                                        span.in(style),
                                        SagChecks.thousandths(sag, style),
                                        limit.words(),
                                        SitePlan.DEFERS),
                        sag,
                        limit.over(span),
                        "Prop it, put a bar under its middle, or make it thicker; brush the snow off meanwhile.");
    }

    /** The same, where something it needs was not said. */
    public static Check notKnown(String of, String why, String missing, MeasureStyle style) {
        return new Held("Snow", of, SOURCE, style).notKnown(why + " " + SitePlan.DEFERS, missing);
    }
}
