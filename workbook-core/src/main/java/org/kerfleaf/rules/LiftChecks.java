package org.kerfleaf.rules;

import static org.kerfleaf.reason.Given.given;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/**
 * Whether people can lift it.
 *
 * <p>Source: NIOSH publication 94-110, the lifting equation in inches and pounds: 51 lb · 10/H · (1 - 0.0075 |V - 30|) · (0.82 +
 * 1.8/D) · coupling, no twist, lifts few and far between. That two share two thirds of their sum, and three a half, is from
 * memory.
 */
public final class LiftChecks {
    private static final String SOURCE = "NIOSH 94-110 (seen in a copy); share of a team from memory";
    private static final String EQUATION = "NIOSH 94-110 (seen in a copy)";
    private static final double LOAD_CONSTANT = 51;
    private static final double NEAR = 10;
    private static final double KNUCKLES = 30;

    /** A box without handles. */
    public static final Ratio POOR_GRIP = Ratio.of(0.90);

    private LiftChecks() {}

    /**
     * What people may lift together.
     *
     * @param out from the ankles to the hands, level; under 10 in counts as 10
     * @param from height of the hands at the start
     * @param up how far it is lifted; under 10 in counts as 10
     * @param grip 1 for good handles, 0.9 for none
     */
    public static Figure<Mass> limit(Length out, Length from, Length up, Ratio grip, int people) {
        double one = LOAD_CONSTANT
                * outShare(out).value().value()
                * heightShare(from).value().value()
                * wayShare(up).value().value()
                * grip.value();
        return Figure.of(
                Mass.ofPounds(one * people * share(people)),
                "51 lb · 10/H · (1 - 0.0075 · |V - 30|) · (0.82 + 1.8/D) · grip, for each; a team shares less than its sum",
                SOURCE,
                given("H", out),
                given("V", from),
                given("D", up),
                given("grip", grip),
                given("people", people),
                given("share", Ratio.of(share(people))));
    }

    /** What is left of the most where the hands are so far out: 10 in / H, 1 at most. */
    public static Figure<Ratio> outShare(Length out) {
        return Figure.of(
                Ratio.of(NEAR / Math.max(NEAR, out.inInches())),
                "10 in / how far out the hands are, 1 at most",
                EQUATION,
                given("H", out));
    }

    /** What is left of it where the hands are so high at the start: 1 − 0.0075 |V − 30|, V in inches. */
    public static Figure<Ratio> heightShare(Length from) {
        return Figure.of(
                Ratio.of(Math.max(0, 1 - 0.0075 * Math.abs(from.inInches() - KNUCKLES))),
                "1 − 0.0075 · |V − 30|, V the height of the hands in inches",
                EQUATION,
                given("V", from));
    }

    /** What is left of it where it is lifted so far: 0.82 + 1.8 / D, 1 at most, D in inches. */
    public static Figure<Ratio> wayShare(Length up) {
        return Figure.of(
                Ratio.of(0.82 + 1.8 / Math.max(NEAR, up.inInches())),
                "0.82 + 1.8 / D, D how far it is lifted in inches, 10 at least",
                EQUATION,
                given("D", up));
    }

    /**
     * How far out the hands are: 8 in + half of what is held towards the body, 10 in + half below 10 in of height
     * (NIOSH 94-110, table of H, from memory).
     *
     * @param deep the load's size away from the body
     * @param from height of the hands at the start
     */
    public static Figure<Length> out(Length deep, Length from) {
        Length body = Length.ofInches(from.inInches() < NEAR ? 10L : 8L);
        return Figure.of(
                body.plus(deep.half()),
                "%s + half of what is held towards the body".formatted(from.inInches() < NEAR ? "10 in" : "8 in"),
                "NIOSH 94-110 (from memory)",
                given("towards the body", deep),
                given("hands at", from));
    }

    private static double share(int people) {
        return people <= 1 ? 1 : people == 2 ? 2.0 / 3 : 0.5;
    }

    /** Check 55: the weight is within what so many people may lift. */
    public static Check lift(String of, Mass weight, Mass limit, int people, MeasureStyle style) {
        Held held = new Held("Lift", of, SOURCE, style);
        double left = limit.inPounds() - weight.inPounds();
        String much = Mass.ofPounds(Math.abs(left)).in(style);
        return held.level(
                "%s is lifted by %s. Allowed: %s."
                        .formatted(weight.in(style), people == 1 ? "one person" : people + " people", limit.in(style)),
                left / Math.max(limit.inPounds(), 1e-9),
                much + " to spare",
                "too heavy by " + much,
                "One more person, or a prop to slide it onto, would do. Take shelves and door out first.");
    }

    /**
     * Check 55 for what stands filled: more than 51 lb (23 kg) is too heavy for one person even close to the body and at
     * the best height; a team shares less than its sum.
     */
    public static Check filled(String of, Mass weight, int people, MeasureStyle style) {
        Held held = new Held("Lift", of + ", filled", SOURCE, style);
        Mass most = Mass.ofPounds(LOAD_CONSTANT * people * share(people));
        double left = most.inPounds() - weight.inPounds();
        String much = Mass.ofPounds(Math.abs(left)).in(style);
        return held.level(
                "Filled it weighs %s. At the best height and close to the body %s may lift %s."
                        .formatted(weight.in(style), people == 1 ? "one person" : people + " people", most.in(style)),
                left / most.inPounds(),
                much + " to spare",
                "too heavy by " + much,
                "Fill it where it stands, and empty it before it is moved.");
    }

    /** Check 55, where something it needs was not said. */
    public static Check liftNotKnown(String of, String why, String missing, MeasureStyle style) {
        return new Held("Lift", of, SOURCE, style).notKnown(why, missing);
    }

    /**
     * Check 56: two fixings on each side of where it balances are in before anybody lets go.
     *
     * @param weight of what is let go, if known
     * @param eachSide how many fixings are on the poorer side of where it balances
     */
    public static Check letGo(String of, Optional<Mass> weight, int eachSide, MeasureStyle style) {
        Held held = new Held("Let go", of, "statics; two fixings on each side are common practice, no source", style);
        if (weight.isEmpty()) {
            return held.notKnown(
                    "Where it balances is not known, for the weight of a part is not.",
                    "Say the species of every board in it.");
        }
        String what = "%s is held before anybody lets go by %s on each side of where it balances."
                .formatted(weight.get().in(style), eachSide == 1 ? "1 fixing" : eachSide + " fixings");
        return eachSide >= 2
                ? held.holds(what + " Wanted: 2.")
                : held.falls(
                        what + " Wanted: 2.",
                        "Keep the prop under it until two on each side are in, or fasten it at both ends.");
    }
}
