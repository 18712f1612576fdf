package org.kerfleaf.export.spreadsheet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.LoadWords;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.SiteWords;
import org.kerfleaf.plan.Told;
import org.kerfleaf.site.SitePlan;

/** Where it stands, what pulls and pushes at it, what it carries and who lifts it; a length also as a number. */
final class SiteAndLoadsSheet {
    private SiteAndLoadsSheet() {}

    static void write(Book book) {
        Plan plan = book.plan();
        List<Told> groups = new ArrayList<>();
        plan.site().ifPresent(site -> groups.addAll(new SiteWords(plan.style()).of(site)));
        groups.addAll(new LoadWords(plan.style()).of(plan.loads()));
        if (groups.isEmpty()) {
            return;
        }
        Table table = book.sheet(
                "Site and loads",
                2,
                List.of(
                        Column.text("of", "Of what", 32),
                        Column.text("what", "What", 36),
                        Column.text("figure", "Figure", 20),
                        Column.number("length", book.printed().lengthHead("Length"), 12),
                        Column.text("rule", "By which rule", 48),
                        Column.text("source", "Source", 30)));
        table.row().strong("of", "Estimates").text("rule", SitePlan.DEFERS);
        for (Told group : groups) {
            for (Told.Line line : group.lines()) {
                row(table.row(), group.title().isEmpty() ? "The hole" : group.title(), line);
            }
        }
        table.filtered();
    }

    private static void row(Line row, String of, Told.Line line) {
        row.text("of", of).text("what", line.what()).text("figure", line.words());
        line.figure().ifPresent(figure -> {
            if (figure.value() instanceof Length length) {
                row.length("length", length);
            }
            row.text("rule", figure.reason().rule())
                    .text("source", figure.reason().source());
        });
    }
}
