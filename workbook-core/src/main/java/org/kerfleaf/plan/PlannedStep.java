package org.kerfleaf.plan;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.reason.Figure;

/**
 * One build step.
 *
 * @param number from 1, in document order
 * @param title the sub-heading under “Build steps”
 * @param take what to have at hand: parts with letters, screws counted, glue, tools
 * @param work hours of work, if said
 * @param people how many it needs
 * @param cautions of the tools and matters it uses
 * @param before what must be there, or must not, before it begins: {@code 2 people}, {@code no children near}
 * @param noise how loud it is, if that was said
 */
public record PlannedStep(
        int number,
        String title,
        List<Take> take,
        Optional<Duration> work,
        int people,
        List<Caution> cautions,
        List<String> before,
        Optional<Noise> noise) {
    public PlannedStep {
        take = List.copyOf(take);
        cautions = List.copyOf(cautions);
        before = List.copyOf(before);
    }

    /**
     * How loud a step is.
     *
     * @param decibels at the ear, dB(A)
     * @param allowed how long that is borne without muffs
     */
    public record Noise(int decibels, Figure<Duration> allowed) {}

    /**
     * One thing to have at hand.
     *
     * @param letter of the part, if it is one
     * @param words {@code Floor}, {@code Side, 2}, {@code 5 screws, No. 6 x 1 5/8 in}
     */
    public record Take(Optional<String> letter, String words) {}
}
