package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;

/**
 * Things that must go in, of one kind.
 *
 * @param name what they are
 * @param wide the largest of them, left to right as it stands in there
 * @param deep likewise, front to back
 * @param high likewise, upright
 * @param weight of one
 * @param count how many of them there are, 1 or more
 * @param sideBySide how many of them stand beside each other on one shelf, the others behind; all of them if not said
 * @param handRoom what a hand needs to take one out, if said
 * @group what it carries
 */
public record Contents(
        Origin origin,
        String name,
        Optional<Length> wide,
        Optional<Length> deep,
        Optional<Length> high,
        Optional<Mass> weight,
        int count,
        Optional<Integer> sideBySide,
        Optional<Length> handRoom)
        implements Declaration {

    /** Things of that name, nothing else known of them. */
    public static Contents of(String name) {
        return new Contents(
                SketchRun.current().next(),
                name,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                1,
                Optional.empty(),
                Optional.empty());
    }

    /** How wide the largest is, left to right. @example contents("Seed box").wide("7 in").deep("5 in").high("4 in") */
    public Contents wide(String size) {
        return new Contents(
                origin, name, Optional.of(SketchRun.length(size)), deep, high, weight, count, sideBySide, handRoom);
    }

    /** How deep the largest is, front to back. @example contents("Seed box").wide("7 in").deep("5 in").high("4 in") */
    public Contents deep(String size) {
        return new Contents(
                origin, name, wide, Optional.of(SketchRun.length(size)), high, weight, count, sideBySide, handRoom);
    }

    /** How high the largest is as it stands. @example contents("Seed box").wide("7 in").deep("5 in").high("4 in") */
    public Contents high(String size) {
        return new Contents(
                origin, name, wide, deep, Optional.of(SketchRun.length(size)), weight, count, sideBySide, handRoom);
    }

    /** What the heaviest weighs: {@code 2 lb}, {@code 800 g}. @example contents("Seed box").wide("7 in").deep("5 in").high("4 in").weighs("2 lb") */
    public Contents weighs(String each) {
        return new Contents(origin, name, wide, deep, high, Optional.of(Mass.parse(each)), count, sideBySide, handRoom);
    }

    /** How many there are in all, 1 or more; they stand evenly on everything said to carry them. @example contents("Seed box").weighs("2 lb").times(6) */
    public Contents times(int many) {
        if (many < 1) {
            throw new SketchException("“%s” is there %d times. 1 or more would be right.".formatted(name, many));
        }
        return new Contents(origin, name, wide, deep, high, weight, many, sideBySide, handRoom);
    }

    /** How many stand beside each other on one shelf, 1 or more; the others stand behind. @example contents("Seed box").times(6).sideBySide(2) */
    public Contents sideBySide(int many) {
        if (many < 1) {
            throw new SketchException("%d of “%s” stand side by side. 1 or more would be right.".formatted(many, name));
        }
        return new Contents(origin, name, wide, deep, high, weight, count, Optional.of(many), handRoom);
    }

    /** How much room a hand needs above, beside and before the things; 2 in or 50 mm unless said. @example contents("Seed box").wide("7 in").handRoom("1 1/2 in") */
    public Contents handRoom(String much) {
        return new Contents(
                origin, name, wide, deep, high, weight, count, sideBySide, Optional.of(SketchRun.length(much)));
    }
}
