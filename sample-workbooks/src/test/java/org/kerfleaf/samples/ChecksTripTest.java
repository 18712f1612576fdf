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
    private static final Path TABLE = Path.of("src/test/resources/checks.md");

    private static final Map<Sample, Plan> AS_WRITTEN = new HashMap<>();

    /**
     * A row of the table.
     *
     * @param number the check's number among the trade's 61
     * @param check how its name begins
     * @param said the label of a size, or a text of the workbook in quotes of code
     * @param was what the check comes to in the workbook as it is
     * @param then what it comes to with the change
     */
    private record Row(Sample sample, int number, String check, String said, String instead, String was, String then) {
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
                sample = line.endsWith(".md") ? sample(line.substring(3)) : null;
            } else if (sample != null && line.matches("\\| \\d.*")) {
                List<String> cells = Arrays.stream(
                                line.substring(1, line.lastIndexOf('|')).split(" \\| "))
                        .map(String::strip)
                        .toList();
                rows.add(new Row(
                        sample,
                        Integer.parseInt(cells.get(0)),
                        cells.get(1),
                        cells.get(2),
                        cells.get(3),
                        cells.size() > 5 ? cells.get(4) : Verdict.HOLDS.word(),
                        cells.get(cells.size() - 1)));
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

    /** A sample that people start from, or a workbook next to the table. */
    private static Sample sample(String file) {
        return Sample.ALL.stream()
                .filter(one -> one.toString().equals(file))
                .findFirst()
                .orElseGet(() -> Sample.ofTests(file));
    }

    @TestFactory
    Stream<DynamicTest> check_withOneChange_comesToAnother() {
        return rows().stream()
                .map(row -> DynamicTest.dynamicTest(
                        "%d %s: %s, %s".formatted(row.number(), row.check(), row.said(), row.instead()),
                        () -> trips(row)));
    }

    private static void trips(Row row) {
        Check before = asWritten(row);
        assertThat(before.verdict().word()).as(before.toString()).isEqualTo(row.was());

        Check after = worst(row.changed(), row.check());

        assertThat(after.verdict().word()).as(after.toString()).isEqualTo(row.then());
        assertThat(row.then()).isNotEqualTo(row.was());
        assertThat(after.source()).isNotBlank();
        assertThat(after.advice().isBlank()).as(after.toString()).isEqualTo(after.verdict() == Verdict.HOLDS);
    }

    private static Check asWritten(Row row) {
        return worst(AS_WRITTEN.computeIfAbsent(row.sample(), Sample::plan), row.check());
    }

    /** Of every check that has rows: one where it holds, one where it falls short, and one where its data is missing or a reason why it never is. */
    @Test
    void everyCheck_holdsSomewhere_fallsShortSomewhere_andSaysWhatItDoesNotKnow() {
        Map<Integer, Set<String>> verdicts = new TreeMap<>();
        for (Row row : rows()) {
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
        return lines().stream()
                .dropWhile(line -> !line.equals("## Always known"))
                .filter(line -> line.matches("\\| \\d.*"))
                .map(line -> Integer.parseInt(line.split("\\|")[1].strip()))
                .collect(Collectors.toCollection(TreeSet::new));
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
        Set<Integer> numbers = rows().stream().map(Row::number).collect(Collectors.toCollection(TreeSet::new));
        String words = "%d of the 61 checks: %s."
                .formatted(numbers.size(), numbers.stream().map(String::valueOf).collect(Collectors.joining(", ")));

        assertThat(Files.readString(Path.of("../DEVELOPERS.md")).contains(words))
                .as("DEVELOPERS.md says: %s", words)
                .isTrue();
    }
}
