package org.kerfleaf.export.booklet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.export.SamplePlan;
import org.kerfleaf.export.SampleProse;
import org.kerfleaf.export.SampleStress;
import org.kerfleaf.export.booklet.PrintedPdf.Glyph;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.export.spreadsheet.PlanFixture;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.plan.PlannedStep;
import org.kerfleaf.plan.WayOut;
import org.kerfleaf.rules.Check;
import org.kerfleaf.shape.CabinetSolids;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

class BookletTest {
    static Stream<Arguments> everyPlanOnEveryPaper() {
        List<Arguments> all = new ArrayList<>();
        for (Paper paper : Paper.values()) {
            all.add(Arguments.of("inches", SamplePlan.inches(), paper));
            all.add(Arguments.of("millimetres", SamplePlan.millimetres(), paper));
            all.add(Arguments.of("built", PlanFixture.withPlaced(SamplePlan.inches(), pieces()), paper));
            all.add(Arguments.of("built in mm", PlanFixture.withPlaced(SamplePlan.millimetres(), pieces()), paper));
            all.add(Arguments.of("many", SampleStress.many(), paper));
            all.add(Arguments.of("long", SampleStress.longNames(), paper));
            all.add(Arguments.of("nothing", SampleStress.nothing(), paper));
        }
        return all.stream();
    }

    /** A cabinet whose pieces come off its floor, each away from it. */
    private static List<PlacedPart> pieces() {
        List<PlacedPart> pieces = new ArrayList<>();
        for (PlacedSolid solid : CabinetSolids.all()) {
            Vector away = solid.bounds()
                    .middle()
                    .minus(CabinetSolids.all().get(0).bounds().middle());
            Vector side = Math.abs(away.x()) > Math.abs(away.y())
                    ? new Vector(Math.signum(away.x()), 0, 0)
                    : new Vector(0, away.y() < 0 ? -1 : 1, 0);
            WayOut way = pieces.isEmpty() ? WayOut.STAYS : new WayOut(side, 0);
            String letter = Character.toString((char) ('A' + pieces.size()));
            pieces.add(new PlacedPart(letter, 1, 0, 0, solid.part().equals("Pane"), way, solid));
        }
        return pieces;
    }

    private static byte[] booklet(Plan plan, Paper paper) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Booklet.write(plan, SampleProse.of(plan), paper, out);
        return out.toByteArray();
    }

    private static PrintedPdf printed(Plan plan, Paper paper) {
        return new PrintedPdf(booklet(plan, paper));
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("everyPlanOnEveryPaper")
    void write_anyPlan_keepsTextWithinTheMargins(String name, Plan plan, Paper paper) throws IOException {
        byte[] bytes = booklet(plan, paper);
        Files.write(Path.of("target", "booklet-" + name + "-" + paper + ".pdf"), bytes);
        try (PrintedPdf pdf = new PrintedPdf(bytes)) {
            for (Glyph glyph : pdf.glyphs()) {
                if (!glyph.isSpace()) {
                    assertThat(glyph.x()).as("%s left", glyph).isGreaterThan(Paper.SIDE - 0.2);
                    assertThat(glyph.right()).as("%s right", glyph).isLessThan(paper.width() - Paper.SIDE + 0.2);
                    assertThat(glyph.top()).as("%s top", glyph).isGreaterThan(Paper.HEAD);
                    assertThat(glyph.baseline()).as("%s foot", glyph).isLessThan(paper.height() - Paper.FOOT);
                }
            }
        }
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("everyPlanOnEveryPaper")
    void write_anyPlan_overlapsNoTwoTexts(String name, Plan plan, Paper paper) throws IOException {
        try (PrintedPdf pdf = printed(plan, paper)) {
            List<Glyph> glyphs =
                    pdf.glyphs().stream().filter(g -> !g.isSpace() && g.level()).toList();
            for (int page = 1; page <= pdf.pages(); page++) {
                int number = page;
                assertNoOverlap(glyphs.stream().filter(g -> g.page() == number).toList());
            }
        }
    }

    private static void assertNoOverlap(List<Glyph> glyphs) {
        for (int i = 0; i < glyphs.size(); i++) {
            for (int k = i + 1; k < glyphs.size(); k++) {
                Glyph one = glyphs.get(i);
                Glyph other = glyphs.get(k);
                boolean fraction = one.text().equals("⁄") || other.text().equals("⁄");
                if (one.run() == other.run() || fraction) {
                    continue;
                }
                double across = Math.min(one.right(), other.right()) - Math.max(one.x(), other.x());
                double down = Math.min(one.baseline(), other.baseline()) - Math.max(one.top(), other.top());
                assertThat(across > 0.25 && down > 0.15)
                        .as("%s over %s", one, other)
                        .isFalse();
            }
        }
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("everyPlanOnEveryPaper")
    void write_anyPlan_setsNoLetterUnderSevenAndAHalfPoints(String name, Plan plan, Paper paper) throws IOException {
        try (PrintedPdf pdf = printed(plan, paper)) {
            for (Glyph glyph : pdf.glyphs()) {
                boolean letter = glyph.text().codePoints().anyMatch(Character::isLetter);
                // Numerators and denominators are 0.64 of the text they stand in, which itself is 7.5 or more;
                // PDF numbers have two decimals, so a size may be off by 0.4 %.
                double least = letter ? 7.5 : 0.64 * 7.5;
                assertThat(glyph.points()).as("%s", glyph).isGreaterThan(least * 0.995);
            }
        }
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("everyPlanOnEveryPaper")
    void write_anyPlan_showsTheBuildIfPiecesArePlaced(String name, Plan plan, Paper paper) throws IOException {
        try (PrintedPdf pdf = printed(plan, paper)) {
            if (plan.placed().isEmpty()) {
                assertThat(pdf.text()).doesNotContain("The build, taken apart");
            } else {
                assertThat(pdf.text())
                        .contains(
                                "The build",
                                "Front, right side and top.",
                                "Slice through the middle.",
                                "The build, taken apart");
            }
        }
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("everyPlanOnEveryPaper")
    void write_anyPlan_hasTheSafetyPageSecond(String name, Plan plan, Paper paper) throws IOException {
        try (PrintedPdf pdf = printed(plan, paper)) {
            assertThat(pdf.text(2, 2)).contains("Before the first cut", "Eye protection");
        }
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("everyPlanOnEveryPaper")
    void write_anyPlan_namesEveryPartStepAndCheck(String name, Plan plan, Paper paper) throws IOException {
        try (PrintedPdf pdf = printed(plan, paper)) {
            String text = pdf.text().replace(" ", "");
            for (PlannedPart part : plan.parts()) {
                assertThat(text).contains(part.name().replace(" ", ""));
                assertThat(text)
                        .contains(
                                part.length().value().read(plan.style()).text().replace(" ", ""));
                assertThat(text)
                        .contains(part.width().value().read(plan.style()).text().replace(" ", ""));
            }
            for (PlannedStep step : plan.steps()) {
                assertThat(text).contains(step.title().replace(" ", ""));
            }
            for (Check check : plan.checks()) {
                assertThat(text).contains(check.result().replace(" ", ""));
            }
        }
    }

    @ParameterizedTest(name = "{0} {2}")
    @MethodSource("everyPlanOnEveryPaper")
    void write_anyPlan_hasPagesOfThePapersSizeWithNumberAndBookmark(String name, Plan plan, Paper paper)
            throws IOException {
        try (PrintedPdf pdf = printed(plan, paper)) {
            int number = 0;
            for (PDPage page : pdf.document().getPages()) {
                number++;
                assertThat(page.getMediaBox().getWidth() * Style.POINT).isCloseTo(paper.width(), within(0.01));
                assertThat(page.getMediaBox().getHeight() * Style.POINT).isCloseTo(paper.height(), within(0.01));
                assertThat(pdf.text(number, number)).contains(number + " of " + pdf.pages());
            }
            int marks = 0;
            for (var mark :
                    pdf.document().getDocumentCatalog().getDocumentOutline().children()) {
                marks++;
                assertThat(mark.getTitle()).isNotBlank();
            }
            assertThat(marks).isEqualTo(pdf.pages());
        }
    }

    @Test
    void write_twice_isByteEqual() {
        assertThat(booklet(SamplePlan.inches(), Paper.A4)).isEqualTo(booklet(SamplePlan.inches(), Paper.A4));
    }

    @Test
    void write_anyOut_leavesItOpen() {
        boolean[] closed = {false};
        OutputStream out = new ByteArrayOutputStream() {
            @Override
            public void close() {
                closed[0] = true;
            }
        };
        Booklet.write(SamplePlan.inches(), SampleProse.of(SamplePlan.inches()), Paper.A4, out);
        assertThat(closed[0]).isFalse();
    }

    @Test
    void write_everyFont_isEmbedded() throws IOException {
        try (PrintedPdf pdf = printed(SamplePlan.inches(), Paper.A4)) {
            for (PDPage page : pdf.document().getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                }
                assertThat(page.getResources().getXObjectNames())
                        .as("nothing but vectors")
                        .isEmpty();
            }
        }
    }

    @Test
    void write_information_hasTitleLanguageAndDayButNoAuthor() throws IOException {
        Plan plan = SamplePlan.inches();
        try (PrintedPdf pdf = printed(plan, Paper.A4)) {
            var about = pdf.document().getDocumentInformation();
            assertThat(about.getTitle()).isEqualTo(plan.title());
            assertThat(about.getAuthor()).isNull();
            assertThat(about.getCreationDate().toInstant()).isEqualTo("2026-04-20T00:00:00Z");
            assertThat(pdf.document().getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
    }

    @Test
    void write_cabinet_saysWhatAReaderAsks() throws IOException {
        Plan plan = SamplePlan.inches();
        try (PrintedPdf pdf = printed(plan, Paper.A4)) {
            String text = pdf.text();
            assertThat(text)
                    .contains(plan.cost()
                            .bought()
                            .orElseThrow()
                            .value()
                            .getAmount()
                            .toPlainString());
            assertThat(text).contains("This is an estimate for planning.", "Not known here: Frost depth");
            assertThat(text).contains("Nobody digs before the buried lines are located");
            assertThat(text).contains("a mitre scale reads from square");
            assertThat(text).contains("Fewer is impossible");
            assertThat(text).contains("The two roof halves meet at 120°");
            assertThat(text).contains("24 13/32 heavy");
            assertThat(pdf.pages()).isGreaterThan(12);
        }
    }

    /** No line of this plan has a price: a total of nought would be read as free of charge. */
    @Test
    void write_noPriceKnown_hasNoTotalOfNought() throws IOException {
        try (PrintedPdf pdf = printed(SampleStress.longNames(), Paper.A4)) {
            assertThat(pdf.text()).contains("Together, without what is not known", "not known", "the kit, delivered");
            assertThat(pdf.text()).doesNotContain("0.00", "cheaper by", "no difference", "As bought: ");
        }
    }

    @Test
    void write_checks_shortFirstThenNotKnown() throws IOException {
        try (PrintedPdf pdf = printed(SamplePlan.inches(), Paper.A4)) {
            String text = pdf.text();
            String checks = text.substring(text.indexOf("1 short"));
            assertThat(checks.indexOf("Post in the ground: wind")).isLessThan(checks.indexOf("Frost depth"));
            assertThat(checks.indexOf("Frost depth")).isLessThan(checks.indexOf("Screw reach"));
        }
    }

    @Test
    void write_sizes_addUpDirectionByDirection() throws IOException {
        try (PrintedPdf pdf = printed(SamplePlan.inches(), Paper.A4)) {
            assertThat(pdf.text())
                    .containsOnlyOnce("Sizes, direction by direction")
                    .containsSubsequence("left to right", "Side 23/32 + Floor 22 + Side 23/32", "Width inside 22 in");
        }
        try (PrintedPdf pdf = printed(SampleStress.longNames(), Paper.A4)) {
            assertThat(pdf.text().replaceAll("\\s+", " ")).contains("— short by 23/32 in");
        }
    }

    @Test
    void write_sheetsAlike_areOnePage() throws IOException {
        try (PrintedPdf pdf = printed(SampleStress.many(), Paper.A4)) {
            assertThat(pdf.text()).contains("Sheets 1 to 2", "2 like this", "Sheets 11 to 12");
        }
    }

    @Test
    void write_bytes_haveCountedFontNames() {
        String bytes = new String(booklet(SamplePlan.inches(), Paper.A4), StandardCharsets.ISO_8859_1);
        assertThat(Arrays.stream(bytes.split("/")).filter(s -> s.startsWith("AAAAAA+Kerfleaf")))
                .isNotEmpty();
    }
}
