package org.kerfleaf.export.spreadsheet;

import java.util.List;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;

/** Checks: what falls short first, then what is not known, then what holds. */
final class ChecksSheet {
    private static final List<Column> COLUMNS = List.of(
            Column.text("verdict", "Verdict", 11),
            Column.text("name", "Check", 28),
            Column.text("result", "The sum", 46),
            Column.text("margin", "Margin", 16),
            Column.text("advice", "What would hold", 30),
            Column.text("source", "Source", 28));

    private static final List<Verdict> ORDER = List.of(Verdict.SHORT, Verdict.NOT_KNOWN, Verdict.HOLDS);

    private ChecksSheet() {}

    static void write(Book book) {
        List<Check> checks = book.plan().checks();
        if (checks.isEmpty()) {
            return;
        }
        Table table = book.sheet("Checks", 2, COLUMNS);
        for (Verdict verdict : ORDER) {
            checks.stream().filter(check -> check.verdict() == verdict).forEach(check -> line(table.row(), check));
        }
        table.filtered();
        for (Verdict verdict : ORDER) {
            table.totals()
                    .plain()
                    .text("verdict", verdict.word())
                    .formula("name", "COUNTIF(%s,{verdict})".formatted(table.range("verdict")), "0");
        }
    }

    private static void line(Line line, Check check) {
        if (check.verdict() == Verdict.SHORT) {
            line.strong("verdict", check.verdict().word()).strong("name", check.name());
        } else {
            line.text("verdict", check.verdict().word()).text("name", check.name());
        }
        line.text("result", check.result())
                .text("margin", check.margin())
                .text("advice", check.advice())
                .text("source", check.source());
    }
}
