package org.kerfleaf.rules;

import java.util.Locale;
import java.util.OptionalDouble;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.Check.Verdict;

/** Makes checks: a rule's name, what it is held against, its source, and then one of the ways to hold it. */
record Held(String rule, String against, String source, MeasureStyle style) {
    private String name() {
        return against.isEmpty() ? rule : rule + ": " + against;
    }

    /** Holds if {@code have} is {@code wanted} or more. */
    Check atLeast(String sentence, Length have, Length wanted, String advice) {
        String bound = " Wanted: " + Say.fine(wanted, style) + ".";
        return line(sentence + bound, have.minus(wanted), wanted, "short by ", advice);
    }

    /** Holds if {@code have} is {@code allowed} or less. */
    Check atMost(String sentence, Length have, Length allowed, String advice) {
        String bound = " Allowed: " + Say.fine(allowed, style) + ".";
        return line(sentence + bound, allowed.minus(have), allowed, "over by ", advice);
    }

    /** Holds if {@code have} lies between the two; the level is 1 in the middle and 0 at either end. */
    Check between(String sentence, Length have, Length least, Length most, String advice) {
        String bounds = " Wanted: " + Say.fine(least, style) + " to " + Say.fine(most, style) + ".";
        Length left = have.minus(least).min(most.minus(have));
        String lacking = have.isLongerThan(most) ? "over by " : "short by ";
        return line(sentence + bounds, left, most.minus(least).half(), lacking, advice);
    }

    private Check line(String sentence, Length left, Length scale, String lacking, String advice) {
        String much = Say.difference(left, style);
        double level = scale.isZero() ? Long.signum(left.nanometres()) : left.dividedBy(scale.absolute());
        return level(sentence, level, left.isZero() ? "nothing to spare" : much + " to spare", lacking + much, advice);
    }

    /** Holds if the level, a share of what was wanted, is zero or more; the margin is said in words for both cases. */
    Check level(String sentence, double level, String spare, String lacking, String advice) {
        boolean holds = level >= 0;
        return new Check(
                name(),
                holds ? sentence : sentence + " " + capital(lacking) + ".",
                holds ? spare : lacking,
                OptionalDouble.of(level),
                holds ? Verdict.HOLDS : Verdict.SHORT,
                holds ? "" : advice,
                source);
    }

    /** A rule without a number that holds. */
    Check holds(String sentence) {
        return new Check(name(), sentence, "", OptionalDouble.empty(), Verdict.HOLDS, "", source);
    }

    /** A rule without a number that does not. */
    Check falls(String sentence, String advice) {
        return new Check(name(), sentence, "", OptionalDouble.empty(), Verdict.SHORT, advice, source);
    }

    /** Something needed was not said. */
    Check notKnown(String sentence, String missing) {
        return new Check(name(), sentence, "", OptionalDouble.empty(), Verdict.NOT_KNOWN, missing, source);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
