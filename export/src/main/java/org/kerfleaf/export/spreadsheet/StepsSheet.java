package org.kerfleaf.export.spreadsheet;

import java.util.List;
import java.util.stream.Collectors;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.plan.PlannedStep;
import org.kerfleaf.plan.PlannedStep.Take;
import org.kerfleaf.schedule.Schedule;

/** The build steps in their order, with what to take to each. */
final class StepsSheet {
    private static final List<Column> COLUMNS = List.of(
            Column.box(),
            Column.number("number", "No.", 5),
            Column.text("title", "Step", 30),
            Column.text("before", "Before you begin", 24),
            Column.text("take", "Take", 56),
            Column.number("people", "People", 8),
            Column.number("hours", "Hours of work", 10),
            Column.number("start", "Earliest, hours from the first work", 12),
            Column.number("slack", "Slack, hours", 9),
            Column.text("first", "What must come first", 32),
            Column.text("cautions", "Cautions (in full on Read first)", 32));

    private StepsSheet() {}

    static void write(Book book) {
        List<PlannedStep> steps = book.plan().steps();
        if (steps.isEmpty()) {
            return;
        }
        Table table = book.sheet("Steps", 3, COLUMNS);
        steps.forEach(step -> line(table.row(), step, book.plan().schedule()));
        table.filtered();
        table.totals()
                .text("take", "Hours of work, waiting not counted")
                .formula("hours", Line.knownSum(table.range("hours")), "0.0#");
    }

    private static void line(Line line, PlannedStep step, Schedule schedule) {
        line.count("number", step.number())
                .text("title", step.title())
                .text("before", String.join(", ", step.before()))
                .text("take", step.take().stream().map(StepsSheet::inWords).collect(Collectors.joining("; ")))
                .count("people", step.people())
                .text("cautions", topics(step.cautions()));
        if (step.work().isPresent()) {
            line.number("hours", step.work().get().toMinutes() / 60.0, "0.0#");
        } else {
            line.notKnown("hours");
        }
        schedule.course().stream()
                .flatMap(course -> course.lines().stream())
                .filter(when -> when.step() == step.number())
                .forEach(when -> when(line, when));
    }

    private static void when(Line line, Schedule.Line when) {
        line.number("start", when.start().toMinutes() / 60.0, "0.0#")
                .number("slack", when.slack().toMinutes() / 60.0, "0.0#")
                .text(
                        "first",
                        when.first().stream()
                                .map(first -> "%d: %s%s"
                                        .formatted(
                                                first.step(),
                                                first.because(),
                                                first.waiting().isZero()
                                                        ? ""
                                                        : ", wait "
                                                                + first.waiting()
                                                                        .toMinutes() + " min"))
                                .collect(Collectors.joining("; ")));
    }

    private static String inWords(Take take) {
        return take.letter().map(letter -> letter + " " + take.words()).orElse(take.words());
    }

    private static String topics(List<Caution> cautions) {
        return cautions.stream()
                .map(caution -> caution.topic().title())
                .distinct()
                .collect(Collectors.joining(", "));
    }
}
