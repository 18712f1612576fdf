package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
    private static final Path TABLE = Path.of("src/test/resources/checks.md");

    private static final Map<Sample, Plan> AS_WRITTEN = new HashMap<>();

    /**
     * A row of the table.
     *
     * @param number the check's number among the trade's 61, 0 for one that is none of them
     * @param check how its name begins
     * @param said the label of a size, or a text of the workbook in quotes of code
     * @param then what the check comes to
     */
    private record Row(Sample sample, int number, String check, String said, String instead, String then) {
        Plan changed() {
            return said.startsWith("`")
                    ? sample.planWith(said.replace("`", ""), instead.replace("`", ""))
                    : sample.plan(Map.of(said, instead));
        }
    }

    private static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        Sample sample = null;
        for (String line : lines()) {
            if (line.startsWith("## ")) {
                sample = sample(line.substring(3));
            } else if (line.matches("\\| (\\d+|-) .*")) {
                List<String> cells = Arrays.stream(
                                line.substring(1, line.lastIndexOf('|')).split(" \\| "))
                        .map(String::strip)
                        .toList();
                rows.add(new Row(
                        sample,
                        cells.get(0).equals("-") ? 0 : Integer.parseInt(cells.get(0)),
                        cells.get(1),
                        cells.get(2),
                        cells.get(3),
                        cells.get(4)));
            }
        }
        return rows;
    }

    private static List<String> lines() {
        try {
            return Files.readAllLines(TABLE);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Sample sample(String file) {
        return Stream.concat(Sample.ALL.stream(), Stream.of(Sample.BOARD_DOOR))
                .filter(one -> one.toString().equals(file))
                .findFirst()
                .orElseThrow();
    }

    @TestFactory
    Stream<DynamicTest> check_withOneChange_comesToAnother() {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        "%d %s: %s, %s".formatted(row.number(), row.check(), row.said(), row.instead()),
                        () -> trips(row)));
    }

    private static void trips(Row row) {
        Plan before = AS_WRITTEN.computeIfAbsent(row.sample(), Sample::plan);
        Verdict usual = row.then().equals(Verdict.HOLDS.word()) ? Verdict.SHORT : Verdict.HOLDS;
        assertThat(worst(before, row.check()).verdict()).as("as written").isEqualTo(usual);

        Check after = worst(row.changed(), row.check());

        assertThat(after.verdict().word()).as(after.toString()).isEqualTo(row.then());
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

    /** The guide for contributors says which of the 61 have a row; where it does not, this prints what it should say. */
    @Test
    void developersGuide_saysWhichChecksHaveARow() throws IOException {
        Set<Integer> numbers = rows().stream()
                .map(Row::number)
                .filter(number -> number > 0)
                .collect(Collectors.toCollection(TreeSet::new));
        String words = "%d of the 61 checks: %s."
                .formatted(numbers.size(), numbers.stream().map(String::valueOf).collect(Collectors.joining(", ")));

        assertThat(Files.readString(Path.of("../DEVELOPERS.md"))).contains(words);
    }
}
