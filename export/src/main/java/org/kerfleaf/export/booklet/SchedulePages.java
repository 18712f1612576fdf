package org.kerfleaf.export.booklet;

import java.time.Duration;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.PlannedStep;
import org.kerfleaf.schedule.Schedule;
import org.kerfleaf.schedule.Schedule.Course;
import org.kerfleaf.schedule.Sitting;

/** Work and waiting: what must come before each step, how long it all takes, and on which day which step falls. */
final class SchedulePages {
    private static final int DAYS_FROM = 48;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm", Locale.ENGLISH);

    private final Book book;

    SchedulePages(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        Optional<Course> planned = book.plan().schedule().course();
        if (planned.isEmpty()
                || book.plan().steps().size() < 2
                || book.plan().schedule().work().value().isZero()) {
            return;
        }
        Course course = planned.get();
        flow.page(
                "Work and waiting", "Schedule", Book.counted(book.plan().steps().size(), "step"));
        steps(course).into(flow);
        flow.add(Block.space(3));
        flow.add(Paragraph.of(sum(course), Style.LABEL, 1.4, 2));
        if (!course.days().isEmpty()) {
            flow.add(Block.space(2));
            flow.add(Marks.heading("Day by day"));
            days(course).into(flow);
        }
    }

    private Table steps(Course course) {
        Table table = new Table(
                Column.fit("No."),
                Column.share("Step", 2),
                Column.fit("Earliest"),
                Column.fit("Done"),
                Column.fit("Slack"),
                Column.share("What must come first", 3));
        for (Schedule.Line line : course.lines()) {
            boolean none = line.slack().isZero();
            table.row(
                    Cell.text(Integer.toString(line.step())),
                    none ? Cell.bold(title(line.step())) : Cell.text(title(line.step())),
                    Cell.text(elapsed(line.start())),
                    Cell.text(elapsed(line.end())),
                    Cell.text(none ? "none" : elapsed(line.slack())),
                    Cell.text(first(line.first())));
        }
        return table;
    }

    private String sum(Course course) {
        String least = course.notKnown().isEmpty() ? "" : "at least ";
        String words =
                ("Times count from the first work. Alone and as written it takes %s%s, with hands enough %s%s, and until"
                                + " everything is hard %s%s. Steps in bold have no slack: later there is later in the end.")
                        .formatted(
                                least,
                                elapsed(course.alone().value()),
                                least,
                                elapsed(course.finish().value()),
                                least,
                                elapsed(course.ready().value()));
        return course.notKnown().isEmpty()
                ? words
                : words + " Not known, and left out: " + String.join("; ", course.notKnown()) + ".";
    }

    private Table days(Course course) {
        Table table = new Table(
                Column.fit(""), Column.fit("Day"), Column.fit("From"), Column.fit("To"), Column.share("Step", 1));
        for (Sitting sitting : course.days()) {
            table.row(
                    Cell.tick(),
                    Cell.text(DAY.format(sitting.from())),
                    Cell.text(TIME.format(sitting.from())),
                    Cell.text(TIME.format(sitting.to())),
                    Cell.text(
                            sitting.step() + "  " + title(sitting.step()) + (sitting.ends() ? "" : ", to go on with")));
        }
        return table;
    }

    /** From two days on in days: {@code 8 days 14 h}. */
    private static String elapsed(Duration time) {
        if (time.toHours() < DAYS_FROM) {
            return Book.hours(time);
        }
        Duration rest = time.minusDays(time.toDays());
        return time.toDays() + " days" + (rest.isZero() ? "" : " " + Book.hours(rest));
    }

    private static String first(List<Schedule.First> first) {
        return first.stream()
                .map(one -> "%d: %s%s"
                        .formatted(
                                one.step(), one.because(), one.waiting().isZero() ? "" : ", " + elapsed(one.waiting())))
                .collect(Collectors.joining("; "));
    }

    private String title(int step) {
        return book.plan().steps().stream()
                .filter(one -> one.number() == step)
                .map(PlannedStep::title)
                .findFirst()
                .orElse("");
    }
}
