package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;

/** For every check a workbook in which it holds and one in which it does not, which differ in one size or one word: {@code checks.md}. */
class ChecksTripTest {
    private static final String TABLE = "checks.md";

    private static final Map<Sample, Plan> AS_WRITTEN = new HashMap<>();

    /** A row of the table: the check's number among the trade's 61 or - for one that is none of them, how its name begins, the change, and what it comes to before and after. */
    private record Row(ChangeTable.Row row) {
        int number() {
            return row.cell(0).equals("-") ? 0 : Integer.parseInt(row.cell(0));
        }

        String check() {
            return row.cell(1);
        }

        String said() {
            return row.cell(2);
        }

        String instead() {
            return row.cell(3);
        }

        String was() {
            return row.cell(4);
        }

        String then() {
            return row.cell(5);
        }

        Plan changed() {
            return Sample.plan(row.changed(said(), instead()), row.sizes(said(), instead()));
        }
    }

    private static List<Row> rows() {
        return ChangeTable.rows(TABLE).stream().map(Row::new).toList();
    }

    /** Those of the trade's 61. */
    private static List<Row> ofTheTrade() {
        return rows().stream().filter(row -> row.number() > 0).toList();
    }

    @TestFactory
    Stream<DynamicTest> check_withOneChange_comesToAnother() {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        "%d %s: %s, %s".formatted(row.number(), row.check(), row.said(), row.instead()),
                        () -> trips(row)));
    }

    private static void trips(Row row) {
        Check before = worst(AS_WRITTEN.computeIfAbsent(row.row().sample(), Sample::plan), row.check());
        assertThat(before.verdict().word()).as(before.toString()).isEqualTo(row.was());

        Check after = worst(row.changed(), row.check());

        assertThat(after.verdict().word()).as(after.toString()).isEqualTo(row.then());
        assertThat(row.then()).isNotEqualTo(row.was());
        assertThat(after.source()).isNotBlank();
        assertThat(after.advice().isBlank()).as(after.toString()).isEqualTo(after.verdict() == Verdict.HOLDS);
    }

    /** The worst of all checks whose name begins so: short before not known before holds. */
    private static Check worst(Plan plan, String name) {
        List<Verdict> worstFirst = List.of(Verdict.SHORT, Verdict.NOT_KNOWN, Verdict.HOLDS);
        return plan.checks().stream()
                .filter(check -> check.name().startsWith(name))
                .min(Comparator.comparingInt(check -> worstFirst.indexOf(check.verdict())))
                .orElseThrow(() -> new AssertionError("no “%s” among %s"
                        .formatted(name, plan.checks().stream().map(Check::name).toList())));
    }

    /** Of every check that has rows: one where it holds, one where it falls short, and one where its data is missing or a reason why it never is. */
    @Test
    void everyCheck_holdsSomewhere_fallsShortSomewhere_andSaysWhatItDoesNotKnow() {
        Map<Integer, Set<String>> verdicts = new TreeMap<>();
        for (Row row : ofTheTrade()) {
            Set<String> of = verdicts.computeIfAbsent(row.number(), n -> new TreeSet<>());
            of.add(row.was());
            of.add(row.then());
        }
        Set<Integer> known = alwaysKnown();

        verdicts.forEach((number, of) -> {
            assertThat(of).as("check %d", number).contains(Verdict.HOLDS.word(), Verdict.SHORT.word());
            assertThat(of.contains(Verdict.NOT_KNOWN.word()))
                    .as("check %d: a row “not known”, or a row under “Always known”, not both", number)
                    .isNotEqualTo(known.contains(number));
        });
    }

    private static Set<Integer> alwaysKnown() {
        return ChangeTable.lines(TABLE).stream()
                .dropWhile(line -> !line.equals("## Always known"))
                .filter(line -> line.matches("\\| \\d.*"))
                .map(line -> Integer.parseInt(ChangeTable.cells(line).get(0)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The guide for contributors says which of the 61 have a row; where it does not, this prints what it should say. */
    @Test
    void developersGuide_saysWhichChecksHaveARow() throws IOException {
        Set<Integer> numbers = rows().stream()
                .map(Row::number)
                .filter(number -> number > 0)
                .collect(Collectors.toCollection(TreeSet::new));
        String words = "%d of the 61 checks: %s."
                .formatted(numbers.size(), numbers.stream().map(String::valueOf).collect(Collectors.joining(", ")));

        assertThat(Files.readString(Path.of("../DEVELOPERS.md")).contains(words))
                .as("DEVELOPERS.md says: %s", words)
                .isTrue();
    }
}
