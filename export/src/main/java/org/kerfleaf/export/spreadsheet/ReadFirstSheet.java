package org.kerfleaf.export.spreadsheet;

import java.util.List;
import java.util.stream.Collectors;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Plan.PlannedSize;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.Problem;

/** What must be known before the first cut: what is wrong, what is not known, what can hurt. */
final class ReadFirstSheet {
    private static final List<Column> COLUMNS = List.of(
            Column.text("matter", "Matter", 26),
            Column.text("words", "What to know", 72),
            Column.text("steps", "Steps", 18),
            Column.text("source", "Source", 30));

    private static final List<Column> SIZES = List.of(
            Column.text("size", "Size", 0), Column.text("value", "In this plan", 0), Column.text("range", "Range", 0));

    private final Plan plan;
    private final Table table;

    private ReadFirstSheet(Book book) {
        plan = book.plan();
        table = book.sheet("Read first", 1, COLUMNS);
    }

    static void write(Book book) {
        ReadFirstSheet sheet = new ReadFirstSheet(book);
        sheet.whatIsWrong();
        sheet.whatIsNotKnown();
        sheet.whatCanHurt();
        sheet.table.filtered();
        sheet.sizes();
        sheet.howToUseIt();
    }

    private void whatIsWrong() {
        for (Problem problem : plan.problems()) {
            String where = problem.origin().line() > 0
                    ? "line %d".formatted(problem.origin().line())
                    : "the workbook";
            row("Does not make sense yet", problem.words(), "", where, true);
        }
        for (Check check : plan.checks()) {
            if (check.verdict() == Verdict.SHORT) {
                row("Short: " + check.name(), check.result() + " " + check.advice(), "", check.source(), true);
            }
        }
    }

    private void whatIsNotKnown() {
        for (Check check : plan.checks()) {
            if (check.verdict() == Verdict.NOT_KNOWN) {
                row("Not known: " + check.name(), check.result() + " " + check.advice(), "", check.source(), false);
            }
        }
        List<String> unpriced = plan.cost().notKnown();
        if (!unpriced.isEmpty()) {
            row(
                    "Not known: price or share",
                    String.join(", ", unpriced) + ". The totals leave these out.",
                    "",
                    "",
                    false);
        }
        if (plan.site().isPresent()) {
            row("Estimates", SitePlan.DEFERS, "", "", false);
        }
    }

    private void whatCanHurt() {
        for (Caution caution : plan.cautions()) {
            String steps = caution.steps().isEmpty()
                    ? "all"
                    : caution.steps().stream().map(String::valueOf).collect(Collectors.joining(", "));
            row(caution.topic().title(), caution.words(), steps, caution.source(), false);
        }
        if (table.isEmpty()) {
            row("Cautions", "This plan names no tool and no matter that calls for one.", "", "", false);
        }
    }

    private void row(String matter, String words, String steps, String source, boolean strong) {
        Line line = table.row();
        if (strong) {
            line.strong("matter", matter);
        } else {
            line.text("matter", matter);
        }
        line.text("words", words.strip()).text("steps", steps).text("source", source);
    }

    private void sizes() {
        if (plan.sizes().isEmpty()) {
            return;
        }
        Table sizes = table.leaf().nextTable("The sizes this plan is made for", SIZES);
        for (PlannedSize size : plan.sizes()) {
            sizes.row()
                    .text("size", size.label())
                    .text("value", size.value().in(plan.style()))
                    .text("range", range(size));
        }
    }

    private String range(PlannedSize size) {
        String least = size.least().map(bound -> bound.in(plan.style())).orElse("");
        String most = size.most().map(bound -> "to " + bound.in(plan.style())).orElse("");
        return (least + " " + most).strip();
    }

    private void howToUseIt() {
        table.leaf()
                .nextRemark(
                        "Blue figures are yours to change: prices and numbers to buy. All that follows from them is a formula.");
        table.leaf()
                .remark(
                        "Another size is changed in the workbook, not here: it would change the parts, the cuts and the saw settings too.");
    }
}
