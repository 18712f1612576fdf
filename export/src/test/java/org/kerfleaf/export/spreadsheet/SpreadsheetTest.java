package org.kerfleaf.export.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.site.SitePlan;

class SpreadsheetTest {
    static byte[] bytes(Plan plan) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Spreadsheet.write(plan, out);
        return out.toByteArray();
    }

    static XSSFWorkbook written(Plan plan) throws IOException {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes(plan)));
    }

    /** The first cell that holds exactly that text. */
    static Cell find(XSSFSheet sheet, String text) {
        return all(sheet).stream()
                .filter(cell -> cell.getCellType() == CellType.STRING
                        && cell.getStringCellValue().equals(text))
                .findFirst()
                .orElseThrow(() -> new AssertionError("“%s” is not on %s".formatted(text, sheet.getSheetName())));
    }

    static List<Cell> all(XSSFSheet sheet) {
        List<Cell> cells = new ArrayList<>();
        sheet.forEach(row -> row.forEach(cells::add));
        return cells;
    }

    private static Cell under(XSSFSheet sheet, String head, int row) {
        return sheet.getRow(row).getCell(find(sheet, head).getColumnIndex());
    }

    @Test
    void write_wholePlan_hasAllSheetsInOrder() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.inches())) {
            assertThat(workbook)
                    .extracting(sheet -> sheet.getSheetName())
                    .containsExactly(
                            "Read first",
                            "Buy",
                            "Cut list",
                            "Sheet cuts",
                            "Boards",
                            "Saw settings",
                            "Hardware",
                            "Paint",
                            "Site and loads",
                            "Cost",
                            "Checks",
                            "Steps");
        }
    }

    @Test
    void site_lengthsAreNumbersUnderTheDeferringSentence() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.inches())) {
            XSSFSheet sheet = workbook.getSheet("Site and loads");
            assertThat(sheet.getRow(4).getCell(4).getStringCellValue()).isEqualTo(SitePlan.DEFERS);
            List<String> what = new ArrayList<>();
            for (int row = 5; row <= sheet.getLastRowNum(); row++) {
                what.add(sheet.getRow(row).getCell(1).getStringCellValue());
            }
            int inGround = 5 + what.indexOf("post in the ground");
            assertThat(sheet.getRow(inGround).getCell(3).getNumericCellValue()).isEqualTo(28);
            assertThat(sheet.getRow(inGround).getCell(4).getStringCellValue()).isEqualTo("a third of the post");
        }
    }

    @Test
    void write_emptyPlan_keepsReadFirst() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.bare())) {
            assertThat(workbook).extracting(sheet -> sheet.getSheetName()).containsExactly("Read first");
        }
    }

    @Test
    void write_twice_givesTheSameBytes() {
        assertThat(bytes(PlanFixture.inches())).isEqualTo(bytes(PlanFixture.inches()));
    }

    @Test
    void write_inches_areTrueNumbersWithFractions() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.inches())) {
            XSSFSheet cuts = workbook.getSheet("Cut list");
            int side = find(cuts, "Side (pair)").getRowIndex();
            Cell length = under(cuts, "Along grain, in", side);
            assertThat(length.getNumericCellValue()).isEqualTo(11 + 1 / 32.0);
            assertThat(length.getCellStyle().getDataFormatString()).isEqualTo("# ??/32");
            assertThat(under(cuts, "Read on the tape", side).getStringCellValue())
                    .isEqualTo("11 1/32 × 7 1/4 × 23/32");
        }
    }

    @Test
    void write_exactSixtyFourth_isKeptAndShown() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.inches())) {
            XSSFSheet cuts = workbook.getSheet("Cut list");
            Cell width = under(cuts, "Across, in", find(cuts, "Shelf").getRowIndex());
            assertThat(width.getNumericCellValue()).isEqualTo(5 + 23 / 64.0);
            assertThat(width.getCellStyle().getDataFormatString()).isEqualTo("# ??/64");
        }
    }

    @Test
    void write_lengthOffTheTape_isRoundedToThePrintStepAndSaysLight() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.inches())) {
            XSSFSheet cuts = workbook.getSheet("Cut list");
            int rail = find(cuts, "Rail").getRowIndex();
            assertThat(under(cuts, "Along grain, in", rail).getNumericCellValue())
                    .isEqualTo(28 + 13 / 32.0);
            assertThat(under(cuts, "Read on the tape", rail).getStringCellValue())
                    .startsWith("28 13/32 × ");
        }
    }

    @Test
    void write_millimetres_areNumbersWithOneDecimal() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.millimetres())) {
            XSSFSheet cuts = workbook.getSheet("Cut list");
            Cell length =
                    under(cuts, "Along grain, mm", find(cuts, "Side (pair)").getRowIndex());
            assertThat(length.getNumericCellValue()).isEqualTo(280.0);
            assertThat(length.getCellStyle().getDataFormatString()).isEqualTo("0.0");
        }
    }

    @Test
    void write_priceNotKnown_isSaidInWordsAndLeftOutOfTheTotal() throws IOException {
        Plan plan = PlanFixture.inches();
        try (XSSFWorkbook workbook = written(plan)) {
            XSSFSheet buy = workbook.getSheet("Buy");
            int glue = find(buy, "exterior PVA").getRowIndex();
            assertThat(under(buy, "Cost, USD", glue).getStringCellValue()).isEqualTo("not known");
            Cell total =
                    under(buy, "Cost, USD", find(buy, "All of it, as bought").getRowIndex());
            assertThat(total.getNumericCellValue())
                    .isEqualTo(plan.cost()
                            .bought()
                            .orElseThrow()
                            .value()
                            .getAmount()
                            .doubleValue());
        }
    }

    @Test
    void write_noPriceKnown_hasNoTotalsButTheWords() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.withoutPrices())) {
            XSSFSheet cost = workbook.getSheet("Cost");
            int total = find(cost, "Total").getRowIndex();
            int kit = find(cost, "Bare kit").getRowIndex();
            int shop = find(cost, "By shop").getRowIndex() + 2;
            assertThat(under(cost, "As bought, USD", total).getStringCellValue())
                    .isEqualTo("not known");
            assertThat(under(cost, "As used, USD", total).getStringCellValue()).isEqualTo("not known");
            assertThat(under(cost, "As bought, USD", shop).getStringCellValue()).isEqualTo("not known");
            assertThat(under(cost, "Kit less build, as bought", kit).getStringCellValue())
                    .isEqualTo("not known");
        }
    }

    @Test
    void write_packs_followFromNeedUnlessThePlanHasSpares() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.inches())) {
            XSSFSheet hardware = workbook.getSheet("Hardware");
            Cell screws = under(
                    hardware,
                    "Packs",
                    find(hardware, "No. 8 x 1 5/8 in wood screw, stainless").getRowIndex());
            Cell hooks = under(hardware, "Packs", find(hardware, "coat hook").getRowIndex());
            assertThat(screws.getCellFormula()).startsWith("ROUNDUP(");
            assertThat(screws.getNumericCellValue()).isEqualTo(2);
            assertThat(hooks.getCellType()).isEqualTo(CellType.NUMERIC);
            assertThat(hooks.getNumericCellValue()).isEqualTo(4);
        }
    }

    @Test
    void write_shortCheck_standsFirstAndBold() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.inches())) {
            XSSFSheet checks = workbook.getSheet("Checks");
            assertThat(checks.getRow(4).getCell(0).getStringCellValue()).isEqualTo("short");
            assertThat(workbook.getFontAt(
                                    checks.getRow(4).getCell(0).getCellStyle().getFontIndex())
                            .getBold())
                    .isTrue();
        }
    }

    @Test
    void write_problem_isTheFirstThingRead() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.withProblem())) {
            assertThat(workbook.getSheet("Read first").getRow(4).getCell(1).getStringCellValue())
                    .startsWith("Shelf and Back are in one place");
        }
    }

    @Test
    void write_everySheet_isSetUpForPaper() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.inches())) {
            assertThat(workbook).allSatisfy(any -> {
                XSSFSheet sheet = (XSSFSheet) any;
                assertThat(sheet.getPaneInformation().getHorizontalSplitPosition())
                        .as("frozen rows")
                        .isEqualTo((short) 4);
                assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
                assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) 1);
                assertThat(sheet.getRepeatingRows().formatAsString()).isEqualTo("1:4");
                assertThat(sheet.getFooter().getCenter()).isEqualTo("&A");
                assertThat(sheet.getCTWorksheet().isSetAutoFilter())
                        .as("filter on %s", sheet.getSheetName())
                        .isTrue();
            });
        }
    }

    @Test
    void write_anyFormula_hasItsResultCachedAndNoError() throws IOException {
        try (XSSFWorkbook workbook = written(PlanFixture.inches())) {
            assertThat(workbook.getForceFormulaRecalculation()).isTrue();
            assertThat(workbook)
                    .allSatisfy(sheet -> assertThat(all((XSSFSheet) sheet))
                            .filteredOn(cell -> cell.getCellType() == CellType.FORMULA)
                            .allSatisfy(cell -> assertThat(cell.getCachedFormulaResultType())
                                    .isIn(CellType.NUMERIC, CellType.STRING)));
        }
    }
}
