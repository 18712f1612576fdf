package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.kerfleaf.export.planform.PlanForm;
import org.kerfleaf.export.spreadsheet.Spreadsheet;
import org.kerfleaf.export.terminal.TerminalText;
import org.kerfleaf.kernel.KernelOutcome;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Planner;
import org.kerfleaf.rules.Check;
import org.kerfleaf.workbook.Workbook;

/**
 * Sizes and words that cannot be, in workbooks that otherwise can ({@code hostile.md}): what is told shows the input, where it stands and
 * what would be right; the rest is planned and shown.
 */
class HostileTest {
    /** Words of programs, not of the trade. */
    static final List<String> INTERNAL =
            List.of("Exception", "org.kerfleaf", "java.", "null", "NaN", "Optional[", "Infinity");

    @TestFactory
    Stream<DynamicTest> whatCannotBe_isToldWhereItIs() {
        return ChangeTable.rows("hostile.md").stream()
                .map(row -> DynamicTest.dynamicTest(row.cell(0) + ", " + row.cell(1), () -> told(row)));
    }

    private static void told(ChangeTable.Row row) {
        Workbook workbook = row.changed(row.cell(0), row.cell(1));
        String before = workbook.text();
        KernelOutcome outcome = Sample.run(workbook, row.sizes(row.cell(0), row.cell(1)));

        List<String> told = told(outcome);

        List<String> wanted = Arrays.stream(row.cell(2).split(" … "))
                .map(part -> withNumber(part, row, before))
                .toList();
        assertThat(told)
                .as("told with “%s”", row.cell(2))
                .anyMatch(words -> wanted.stream().allMatch(words::contains));
        assertThat(String.join("\n", told)).doesNotContain(INTERNAL);
        assertThat(workbook.text()).isEqualTo(before);
        assertThat(new String(workbook.bytes(), StandardCharsets.UTF_8)).isEqualTo(before);
    }

    private static String withNumber(String part, ChangeTable.Row row, String text) {
        List<String> changed = text.lines().toList();
        if (part.equals("its line")) {
            List<String> before = row.sample().workbook().text().lines().toList();
            Predicate<Integer> here = row.cell(0).startsWith("`")
                    ? i -> !changed.get(i).equals(before.get(i))
                    : i -> changed.get(i).contains('"' + row.cell(0) + '"');
            return line(changed, here);
        }
        Matcher of = Pattern.compile("line of “(.*)”").matcher(part);
        return of.matches() ? line(changed, i -> changed.get(i).strip().startsWith(of.group(1))) : part;
    }

    private static String line(List<String> lines, Predicate<Integer> which) {
        return "line %d:"
                .formatted(1
                        + IntStream.range(0, lines.size())
                                .boxed()
                                .filter(which)
                                .findFirst()
                                .orElseThrow());
    }

    /** What stands under the cells and on the plan, each with its line; what is wrong with a plan keeps nobody from seeing the rest. */
    static List<String> told(KernelOutcome outcome) {
        Stream<String> cells = outcome.cells().stream()
                .flatMap(cell -> cell.problems().stream())
                .map(problem -> "line %d: %s".formatted(problem.line(), problem.words()));
        Stream<String> run = outcome.problems().stream()
                .map(problem -> "line %d: %s".formatted(problem.origin().line(), problem.words()));
        Stream<String> planned = outcome.sketch().stream().flatMap(sketch -> {
            Plan plan = Planner.plan(sketch, Sample.DAY);
            shown(plan);
            return Stream.concat(
                    plan.problems().stream()
                            .map(problem ->
                                    "line %d: %s".formatted(problem.origin().line(), problem.words())),
                    plan.checks().stream()
                            .filter(check -> check.verdict() != Check.Verdict.HOLDS)
                            .map(check -> "%s: %s %s".formatted(check.name(), check.result(), check.advice())));
        });
        return Stream.of(cells, run, planned).flatMap(all -> all).toList();
    }

    /** Everything but paper can show it, and no program's words stand there. */
    private static void shown(Plan plan) {
        String text = TerminalText.of(plan, 100, true);
        assertThat(text).doesNotContain(INTERNAL);
        assertThat(PlanForm.json(plan, true))
                .doesNotContain(INTERNAL.subList(0, 3))
                .doesNotContain("NaN", "Infinity");
        Spreadsheet.write(plan, new ByteArrayOutputStream());
        if (plan.style().unit() == LengthUnit.INCHES) {
            assertThat(plan.problems())
                    .as("told in the workbook's unit")
                    .noneMatch(problem -> problem.words().matches(".*\\d mm\\b(?!\\)).*"));
        }
    }

    @Test
    void emptySketch_isPlannedAsNothing() {
        KernelOutcome outcome = Sample.run(Workbook.parse("# Nothing\n\n```java\nmeasureIn(INCHES);\n```\n"), Map.of());

        assertThat(told(outcome)).isEmpty();
        assertThat(Planner.plan(outcome.sketch().orElseThrow(), Sample.DAY).parts())
                .isEmpty();
    }
}
