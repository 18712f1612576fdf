package org.kerfleaf.schedule;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.reason.Figure;

/**
 * How long the build takes.
 *
 * @param work the sum of the steps' hours of work
 * @param stepsWithoutTime numbers of the steps that do not say how long they take
 * @param ahead what must be asked or ordered so many working days before
 * @param course what comes after what; empty if the workbook has no steps
 */
public record Schedule(
        Figure<Duration> work, List<Integer> stepsWithoutTime, List<Ahead> ahead, Optional<Course> course) {
    public Schedule {
        stepsWithoutTime = List.copyOf(stepsWithoutTime);
        ahead = List.copyOf(ahead);
    }

    /** Something to do before the first step. */
    public record Ahead(String what, int workingDays) {}

    /**
     * What comes after what, and when.
     *
     * @param lines one for each step, in their order
     * @param finish from the first work to the last, with enough hands for all that may go on at once
     * @param alone the same for one pair of hands, one step after the other as written
     * @param ready as {@code alone}, until what was glued, painted and poured last has cured
     * @param notKnown what nobody said, and the figures therefore leave out: they are the least it takes
     * @param days in which hours which step falls; empty if no free hours were said
     */
    public record Course(
            List<Line> lines,
            Figure<Duration> finish,
            Figure<Duration> alone,
            Figure<Duration> ready,
            List<String> notKnown,
            List<Sitting> days) {
        public Course {
            lines = List.copyOf(lines);
            notKnown = List.copyOf(notKnown);
            days = List.copyOf(days);
        }

        /** The steps of which none may begin later if the end is not to be later. */
        public List<Integer> critical() {
            return lines.stream()
                    .filter(line -> line.slack().isZero())
                    .map(Line::step)
                    .toList();
        }
    }

    /**
     * One step among the others, its times counted from the first work, with hands enough.
     *
     * @param step its number
     * @param start the earliest
     * @param end the earliest, waiting between its own coats counted
     * @param slack how much later it may begin without a later end of it all
     * @param first what must come first, without what that says already
     */
    public record Line(int step, Duration start, Duration end, Duration slack, List<First> first) {
        public Line {
            first = List.copyOf(first);
        }
    }

    /**
     * What must come before a step.
     *
     * @param step which step
     * @param waiting how long to wait after it
     * @param because {@code both have Side in hand}, {@code exterior PVA stays clamped}
     */
    public record First(int step, Duration waiting, String because) {}
}
