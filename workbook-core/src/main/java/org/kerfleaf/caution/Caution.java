package org.kerfleaf.caution;

import java.util.List;

/**
 * A warning that goes on the safety page and on the steps it belongs to.
 *
 * @param topic the tool or matter
 * @param words short sentences, own words
 * @param steps the numbers of the build steps that use it; empty if the whole build does
 * @param source the rule behind it
 */
public record Caution(Topic topic, String words, List<Integer> steps, String source) {
    public Caution {
        steps = List.copyOf(steps);
    }

    /** The same caution for those steps. */
    public Caution onSteps(List<Integer> numbers) {
        return new Caution(topic, words, numbers, source);
    }
}
