package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.export.planform.PlanForm;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.plan.Planner;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.workbook.Workbook;

/** A workbook in inches and its twin, in which every length is said in millimetres exactly, have the same plan. */
class MetricTwinTest {
    /** A length in quotes, or two that are a range: not a slope {@code 1 in 60}, an area or a volume. */
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]* (?:in|ft))\"");

    private static final Pattern LENGTH = Pattern.compile("[-0-9./ ]+ (?:in|ft)");

    /** What of a part's size a step of either tape can be. */
    private static final Length STEP = Length.ofMillimetres(1);

    static Stream<Sample> inches() {
        return Stream.of(Sample.CABINET, Sample.COLD_FRAME, Sample.BENCH, Sample.SHELF);
    }

    private static Workbook twin(Sample sample) {
        String text = sample.workbook().text();
        String metric = QUOTED.matcher(text).replaceAll(match -> "\"" + millimetres(match.group(1)) + "\"");
        assertThat(metric).isNotEqualTo(text).contains(" mm\"");
        return Workbook.parse(metric.replace("measureIn(INCHES)", "measureIn(MILLIMETRES)"));
    }

    private static String millimetres(String said) {
        String[] ends = said.split(" to ");
        boolean lengths =
                Arrays.stream(ends).allMatch(end -> LENGTH.matcher(end).matches());
        return lengths
                ? Arrays.stream(ends)
                        .map(end -> Length.parse(end).exactMillimetres().toPlainString() + " mm")
                        .collect(Collectors.joining(" to "))
                : said;
    }

    private static Sketch sketch(Workbook workbook) {
        return Sample.run(workbook, Map.of()).sketch().orElseThrow();
    }

    /** Planned in one unit, either twin's plan is the other's to the last figure and letter. */
    @ParameterizedTest
    @MethodSource("inches")
    void twin_inTheSameUnit_isTheSamePlan(Sample sample) {
        Sketch inch = sample.sketch();
        Sketch metric = sketch(twin(sample));

        for (LengthUnit unit : LengthUnit.values()) {
            assertThat(PlanForm.json(Planner.plan(metric, Sample.DAY, unit), true))
                    .as("in %s", unit)
                    .isEqualTo(PlanForm.json(Planner.plan(inch, Sample.DAY, unit), true));
        }
    }

    /** Each in its own unit, cuts, sheets and screws agree within the rounding that either prints. */
    @ParameterizedTest
    @MethodSource("inches")
    void twin_inItsOwnUnit_agreesWithinTheRounding(Sample sample) {
        Plan inch = sample.plan();
        Plan metric = Planner.plan(sketch(twin(sample)), Sample.DAY);

        assertThat(metric.style().unit()).isEqualTo(LengthUnit.MILLIMETRES);
        assertThat(metric.problems()).isEmpty();
        assertThat(metric.parts()).hasSameSizeAs(inch.parts());
        for (PlannedPart part : inch.parts()) {
            PlannedPart other = metric.part(part.name()).orElseThrow();
            assertThat(other.count()).as(part.name()).isEqualTo(part.count());
            assertThat(other.length().value().isWithin(part.length().value(), STEP))
                    .as(part.name())
                    .isTrue();
            assertThat(other.width().value().isWithin(part.width().value(), STEP))
                    .as(part.name())
                    .isTrue();
            assertThat(other.edges()).as(part.name()).hasSameSizeAs(part.edges());
        }
        assertThat(metric.sheets()).hasSameSizeAs(inch.sheets());
        assertThat(metric.boards()).hasSameSizeAs(inch.boards());
        assertThat(metric.hardware())
                .extracting(line -> line.need().value())
                .isEqualTo(inch.hardware().stream()
                        .map(line -> line.need().value())
                        .toList());
        assertThat(metric.cost().bought()).isEqualTo(inch.cost().bought());
        assertThat(metric.checks()).hasSameSizeAs(inch.checks());
        assertThat(metric.steps()).hasSameSizeAs(inch.steps());
    }
}
