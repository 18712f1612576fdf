package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.time.Duration;
import java.util.List;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.sketch.Ahead;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.WorkTime;

/** Adds up the hours that were said. */
final class Scheduling {
    private final Sketch sketch;

    Scheduling(Sketch sketch) {
        this.sketch = sketch;
    }

    Schedule schedule() {
        List<WorkTime> times = sketch.all(WorkTime.class);
        Duration work = times.stream().map(WorkTime::work).reduce(Duration.ZERO, Duration::plus);
        List<Integer> silent = sketch.steps().stream()
                .map(Sketch.Step::number)
                .filter(number -> times.stream().noneMatch(t -> t.origin().step() == number))
                .toList();
        return new Schedule(
                Figure.of(
                        work,
                        "the sum of what the steps take",
                        Reason.THE_WORKBOOK,
                        given("steps with a time", times.size())),
                silent,
                sketch.all(Ahead.class).stream()
                        .map(a -> new Schedule.Ahead(a.what(), a.workingDays()))
                        .toList());
    }
}
