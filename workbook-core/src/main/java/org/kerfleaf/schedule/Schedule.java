package org.kerfleaf.schedule;

import java.time.Duration;
import java.util.List;
import org.kerfleaf.reason.Figure;

/**
 * How long the build takes.
 *
 * @param work the sum of the steps' hours of work
 * @param stepsWithoutTime numbers of the steps that do not say how long they take
 * @param ahead what must be asked or ordered so many working days before
 */
public record Schedule(Figure<Duration> work, List<Integer> stepsWithoutTime, List<Ahead> ahead) {
    /** Something to do before the first step. */
    public record Ahead(String what, int workingDays) {}
}
