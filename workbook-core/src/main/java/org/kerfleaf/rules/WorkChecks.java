package org.kerfleaf.rules;

import static org.kerfleaf.reason.Given.given;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.List;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/** Whether a day's work can be done, and borne. */
public final class WorkChecks {
    private static final double FULL_LOAD = 0.80;
    private static final String NOISE =
            "NIOSH 98-126: 85 dB(A), 3 dB exchange (the table’s whole steps seen in a copy)";
    private static final double LOUD = 85;
    private static final double EXCHANGE = 3;
    private static final double MINUTES_AT_LOUD = 480;

    private WorkChecks() {}

    /**
     * Check 59: a station's tools are busy for 80 % of the session at most.
     *
     * @param toolTime the time one tool would need for all of it
     * @param tools how many tools stand there, 1 or more
     */
    public static Check stationLoad(String of, Duration toolTime, int tools, Duration session, MeasureStyle style) {
        Held held = new Held("Station load", of, Reason.COMMON_PRACTICE, style);
        double load = (double) toolTime.toSeconds() / ((double) session.toSeconds() * tools);
        long enough = BigDecimal.valueOf(toolTime.toSeconds())
                .divide(BigDecimal.valueOf(session.toSeconds() * FULL_LOAD), 0, RoundingMode.CEILING)
                .longValue();
        return held.level(
                "%d minutes of work for %d %s in a session of %d minutes: busy for %s. Allowed: 80 %%."
                        .formatted(
                                toolTime.toMinutes(),
                                tools,
                                tools == 1 ? "tool" : "tools",
                                session.toMinutes(),
                                Say.percent(load)),
                (FULL_LOAD - load) / FULL_LOAD,
                Say.percent(FULL_LOAD - load) + " to spare",
                "over by " + Say.percent(load - FULL_LOAD),
                "%d tools would do, or part of it cut beforehand.".formatted(enough));
    }

    /** Check 59 where it is not known how many tools there are, or how long one of them is needed. */
    public static Check stationLoadNotKnown(String of, String missing, MeasureStyle style) {
        return new Held("Station load", of, Reason.COMMON_PRACTICE, style)
                .notKnown("How busy the station is, is not known.", missing);
    }

    /**
     * Check 58: the chain of one kit's work and waiting ends within the session.
     *
     * @param chain from the first work to the last
     * @param least what was left out of the chain since nobody said it; then it is the least it takes
     */
    public static Check session(Duration chain, Duration session, List<String> least, MeasureStyle style) {
        Held held = new Held("Session", "", Reason.GEOMETRY, style);
        Duration left = session.minus(chain);
        String sentence = "%d minutes from the first work to the last, waiting counted. Allowed: %d minutes."
                .formatted(chain.toMinutes(), session.toMinutes());
        if (!left.isNegative() && !least.isEmpty()) {
            return held.notKnown(sentence, "Nobody said " + String.join("; ", least) + ".");
        }
        String much = left.abs().toMinutes() + " minutes";
        return held.level(
                sentence,
                (double) left.toSeconds() / session.toSeconds(),
                much + " to spare",
                "over by " + much,
                "Do what comes first the evening before, or let the glue and paint of it dry between two sessions.");
    }

    /** Check 57 where it is not known how long it is heard. */
    public static Check noiseNotKnown(String of, double decibels, MeasureStyle style) {
        return noiseHeld(of, style)
                .notKnown(
                        "%s dB, for a time nobody said.".formatted(Say.number(decibels, 0)),
                        "Say takes(\"40 min\") in this step.");
    }

    /** How long a noise is borne without muffs: 480 minutes at 85 dB(A), half of that for every 3 dB more. */
    public static Figure<Duration> borne(double decibels) {
        double minutes = MINUTES_AT_LOUD / StrictMath.pow(2, (decibels - LOUD) / EXCHANGE);
        return Figure.of(
                Duration.ofSeconds(Math.round(minutes * 60)),
                "480 minutes / 2^((dB − 85) / 3)",
                NOISE,
                given("dB(A)", Say.number(decibels, 0)));
    }

    private static Held noiseHeld(String of, MeasureStyle style) {
        return new Held("Noise", of, NOISE, style);
    }

    /** Check 57: a noise is borne no longer than 480 minutes at 85 dB(A), half of that for every 3 dB more. */
    public static Check noise(String of, double decibels, Duration heard, MeasureStyle style) {
        Held held = noiseHeld(of, style);
        double allowed = borne(decibels).value().toSeconds() / 60.0;
        double left = allowed - heard.toSeconds() / 60.0;
        String much = Say.number(Math.abs(left), 0) + " minutes";
        return held.level(
                "%s dB for %d minutes without muffs. Allowed: %s minutes."
                        .formatted(Say.number(decibels, 0), heard.toMinutes(), Say.number(allowed, 0)),
                left / allowed,
                much + " to spare",
                "over by " + much,
                "Muffs for everybody near it.");
    }
}
