package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.export.booklet.Booklet;
import org.kerfleaf.export.booklet.Paper;
import org.kerfleaf.export.planform.PlanForm;
import org.kerfleaf.export.spreadsheet.Spreadsheet;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.plan.Fastened;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.plan.Planner;

/** Every sample, from its file to paper. */
class EndToEndTest {
    static Stream<Sample> samples() {
        return Stream.concat(Sample.ALL.stream(), Stream.of(Sample.CANOPY));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void plan_ofEverySample_hasNoProblems(Sample sample) {
        Plan plan = sample.plan();
        assertThat(plan.problems()).isEmpty();
        assertThat(plan.parts()).isNotEmpty();
        assertThat(plan.sheets().size() + plan.boards().size()).isPositive();
        assertThat(plan.cautions()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void booklet_ofEverySample_namesEveryPartOnBothPapers(Sample sample) throws IOException {
        Plan plan = sample.plan();
        for (Paper paper : Paper.values()) {
            try (PDDocument pdf = Loader.loadPDF(booklet(sample, plan, paper))) {
                String text = new PDFTextStripper().getText(pdf);
                assertThat(text).contains("Before the first cut");
                assertThat(text)
                        .contains("Front, right side and top.", "Slice through the middle.", "The build, taken apart");
                for (PlannedPart part : plan.parts()) {
                    assertThat(text).contains(part.name());
                }
                for (var step : plan.steps()) {
                    assertThat(text).contains(step.title());
                }
                assertThat(belowTheLeaf(pdf))
                        .as("text in or below the title block")
                        .isEmpty();
                String oneLine = text.replaceAll("\\s+", " ");
                for (Marking marking : plan.markings()) {
                    assertThat(oneLine).contains(marking.title(), marking.faceUp());
                }
            }
        }
    }

    /** Letters that stand lower than a leaf's content may, the title block's own two lines left out: its foot is 10 mm up, it is 11 high. */
    private static List<String> belowTheLeaf(PDDocument pdf) throws IOException {
        List<String> low = new ArrayList<>();
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                double up = letter.getTextMatrix().getTranslateY() * 25.4 / 72;
                boolean head = Math.abs(up - (10 + 11 - 3.9)) < 0.3;
                // Its values may hold a fraction, half a line up and down.
                boolean value = Math.abs(up - (10 + 11 - 8.5)) < 1.3;
                if (up < 10 + 11 && !head && !value) {
                    low.add("page %d: %s".formatted(getCurrentPageNo(), letter.getUnicode()));
                }
            }
        }.getText(pdf);
        return low;
    }

    /** The same workbook in the other unit drives every fastener at the same place. */
    @ParameterizedTest
    @MethodSource("samples")
    void fastened_inTheOtherUnit_standsAtTheSamePlaces(Sample sample) {
        List<List<DrivenFastener>> inches =
                sample.plan().fastened().stream().map(Fastened::driven).toList();
        Plan millimetres = Planner.plan(sample.sketch(), Sample.DAY, LengthUnit.MILLIMETRES);
        // The planter is glued only.
        assertThat(inches.isEmpty()).isEqualTo(sample == Sample.PLANTER);
        assertThat(millimetres.fastened()).extracting(Fastened::driven).isEqualTo(inches);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void spreadsheet_ofEverySample_hasItsSheetsInOrder(Sample sample) throws IOException {
        Plan plan = sample.plan();
        try (Workbook book = new XSSFWorkbook(new ByteArrayInputStream(spreadsheet(plan)))) {
            List<String> names = new ArrayList<>();
            book.sheetIterator().forEachRemaining(sheet -> names.add(sheet.getSheetName()));
            assertThat(names)
                    .startsWith("Read first", "Buy", "Cut list", plan.sheets().isEmpty() ? "Boards" : "Sheet cuts")
                    .contains("Cost", "Checks");
        }
    }

    /** The same to the last byte: made twice, and made by two threads at once. */
    @ParameterizedTest
    @MethodSource("samples")
    void everything_madeTwiceAndOnTwoThreads_isTheSameToTheLastByte(Sample sample) throws Exception {
        var sketch = sample.sketch();
        Set<String> plans = new HashSet<>();
        Set<Integer> papers = new HashSet<>();
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            List<Future<Plan>> made = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                made.add(two.submit(() -> Planner.plan(sketch, Sample.DAY)));
            }
            for (Future<Plan> plan : made) {
                plans.add(PlanForm.json(plan.get(), true));
                papers.add(Arrays.hashCode(booklet(sample, plan.get(), Paper.A4)));
                papers.add(31 + Arrays.hashCode(spreadsheet(plan.get())));
            }
        } finally {
            two.shutdownNow();
        }
        plans.add(PlanForm.json(sample.plan(), true));
        assertThat(plans).hasSize(1);
        assertThat(papers).hasSize(2);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void plan_inTheOtherUnit_hasTheSameParts(Sample sample) {
        Plan inches = sample.plan();
        Plan millimetres = Planner.plan(sample.sketch(), Sample.DAY, LengthUnit.MILLIMETRES);
        assertThat(millimetres.style().unit()).isEqualTo(LengthUnit.MILLIMETRES);
        assertThat(millimetres.problems()).isEmpty();
        for (PlannedPart part : inches.parts()) {
            PlannedPart other = millimetres.part(part.name()).orElseThrow();
            assertThat(other.count()).isEqualTo(part.count());
            if (!part.name().contains("ane")) {
                // A pane is rounded down to a tape's step, which is another in the other unit.
                assertThat(other.length().value()).isEqualTo(part.length().value());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("samples")
    void sizes_atBothEndsOfTheirRange_stillPlan(Sample sample) {
        for (Plan.PlannedSize size : sample.plan().sizes()) {
            for (var end : Stream.of(size.least(), size.most())
                    .flatMap(e -> e.stream())
                    .toList()) {
                Plan plan = sample.plan(Map.of(size.label(), end.toString()));
                assertThat(plan.parts()).as("%s at %s", size.label(), end).isNotEmpty();
            }
        }
    }

    private static byte[] booklet(Sample sample, Plan plan, Paper paper) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Booklet.write(plan, sample.prose(), paper, out);
        return out.toByteArray();
    }

    private static byte[] spreadsheet(Plan plan) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Spreadsheet.write(plan, out);
        return out.toByteArray();
    }
}
