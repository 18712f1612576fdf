package org.kerfleaf.export.terminal;

import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedStep;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.schedule.Schedule.Course;
import org.kerfleaf.schedule.Schedule.First;
import org.kerfleaf.schedule.Sitting;

/** What must come before each step, how long it all takes, and on which day which step falls. */
final class ScheduleSection {
    private static final int DAYS_FROM = 48;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    private ScheduleSection() {}

    /** Whether there is more to say than the list of steps does. */
    static boolean isWorthIt(Plan plan) {
        return plan.steps().size() > 1
                && plan.schedule().course().isPresent()
                && !plan.schedule().work().value().isZero();
    }

    static void tell(Plan plan, Page page) {
        Course course = plan.schedule().course().orElseThrow();
        Grid grid = new Grid()
                .number("")
                .words("Step")
                .number("Earliest")
                .number("Done")
                .number("Slack")
                .words("What must come first");
        for (Schedule.Line line : course.lines()) {
            grid.row(
                    Cell.of(line.step()),
                    Cell.of(title(plan, line.step())),
                    Cell.of(elapsed(line.start())),
                    Cell.of(elapsed(line.end())),
                    Cell.of(line.slack().isZero() ? "-" : elapsed(line.slack())),
                    Cell.of(first(line.first())));
        }
        page.grid(grid);
        page.blank();
        String least = course.notKnown().isEmpty() ? "" : "at least ";
        page.line("Alone, as written        " + time(least, course.alone()));
        page.line("With hands enough        " + time(least, course.finish()));
        page.line("Until everything is hard " + time(least, course.ready()));
        page.line("No slack in              " + numbers(course.critical()));
        if (!course.notKnown().isEmpty()) {
            page.hanging("Not known, and left out: ", String.join("; ", course.notKnown()) + ".");
        }
        days(plan, course, page);
        page.beforeReasons();
        page.why("alone", course.alone());
        page.why("with hands enough", course.finish());
        page.why("until everything is hard", course.ready());
    }

    private static void days(Plan plan, Course course, Page page) {
        if (course.days().isEmpty()) {
            return;
        }
        page.blank();
        Grid grid = new Grid().words("Day").words("From").words("To").number("").words("Step");
        for (Sitting sitting : course.days()) {
            grid.row(
                    Cell.of(DAY.format(sitting.from())),
                    Cell.of(sitting.from().toLocalTime().toString()),
                    Cell.of(sitting.to().toLocalTime().toString()),
                    Cell.of(sitting.step()),
                    Cell.of(title(plan, sitting.step()) + (sitting.ends() ? "" : ", to go on with")));
        }
        page.grid(grid);
    }

    private static String time(String least, Figure<Duration> time) {
        return least + elapsed(time.value());
    }

    /** From two days on in days: {@code 8 days 14 h}. */
    private static String elapsed(Duration time) {
        if (time.toHours() < DAYS_FROM) {
            return WorkSections.hours(time);
        }
        Duration rest = time.minusDays(time.toDays());
        return time.toDays() + " days" + (rest.isZero() ? "" : " " + WorkSections.hours(rest));
    }

    private static String first(List<First> first) {
        return first.isEmpty()
                ? "-"
                : first.stream()
                        .map(one -> one.step() + " (" + one.because()
                                + (one.waiting().isZero() ? "" : ", " + elapsed(one.waiting())) + ")")
                        .collect(Collectors.joining(", "));
    }

    private static String numbers(List<Integer> steps) {
        return (steps.size() == 1 ? "step " : "steps ")
                + steps.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static String title(Plan plan, int step) {
        return plan.steps().stream()
                .filter(one -> one.number() == step)
                .map(PlannedStep::title)
                .findFirst()
                .orElse("");
    }
}
