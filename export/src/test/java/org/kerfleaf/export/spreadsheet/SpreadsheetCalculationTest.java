package org.kerfleaf.export.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kerfleaf.cost.Cost.KitComparison;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.kernel.Kernel;
import org.kerfleaf.kernel.KernelLimits;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Planner;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.workbook.Workbook;

/** The formulas, calculated by LibreOffice from a file without results. */
class SpreadsheetCalculationTest {
    private static final double A_THOUSANDTH_OF_A_CENT = 1e-5;

    @TempDir
    Path folder;

    @Test
    void formulas_calculatedElsewhere_agreeWithTheFileAndThePlan() throws IOException, InterruptedException {
        for (Plan plan : List.of(PlanFixture.inches(), PlanFixture.millimetres())) {
            Map<String, Object> ours = results(SpreadsheetTest.written(plan));
            try (XSSFWorkbook calculated = LibreOffice.calculate(SpreadsheetTest.written(plan), folder)) {
                Map<String, Object> theirs = results(calculated);
                assertThat(theirs.keySet()).isEqualTo(ours.keySet()).hasSizeGreaterThan(70);
                theirs.forEach((place, value) -> same(place, ours.get(place), value));
                agreesWithPlan(plan, calculated);
            }
        }
    }

    /** The workbooks people start from, from their cells to the last total. */
    @Test
    void formulas_ofEverySample_agreeWithThePlan() throws IOException, InterruptedException {
        try (Kernel kernel = Kernel.start(KernelLimits.DEFAULT);
                Stream<Path> files = Files.list(Path.of("..", "sample-workbooks"))) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".md")).sorted().toList()) {
                Workbook workbook = Workbook.read(Files.readAllBytes(file));
                Sketch sketch = kernel.run(WorkbookSource.of(workbook), Map.of())
                        .sketch()
                        .orElseThrow();
                Plan plan = Planner.plan(sketch, LocalDate.of(2026, 4, 12));
                try (XSSFWorkbook calculated = LibreOffice.calculate(SpreadsheetTest.written(plan), folder)) {
                    Map<String, Object> ours = results(SpreadsheetTest.written(plan));
                    Map<String, Object> theirs = results(calculated);
                    assertThat(theirs.keySet())
                            .as(file.toString())
                            .isEqualTo(ours.keySet())
                            .isNotEmpty();
                    theirs.forEach((place, value) -> same(place, ours.get(place), value));
                    if (plan.cost().notKnown().isEmpty()) {
                        agreesWithPlan(plan, calculated);
                    }
                }
            }
        }
    }

    @Test
    void price_raised_movesTheTotalsByPacksTimesTheRise() throws IOException, InterruptedException {
        try (XSSFWorkbook workbook = SpreadsheetTest.written(PlanFixture.inches())) {
            double before = total(workbook, "As bought, USD");
            Cell price = cell(workbook.getSheet("Buy"), "1x2", "Each, USD");
            price.setCellValue(price.getNumericCellValue() + 1.25);
            try (XSSFWorkbook calculated = LibreOffice.calculate(workbook, folder)) {
                assertThat(total(calculated, "As bought, USD"))
                        .isCloseTo(before + 2 * 1.25, within(A_THOUSANDTH_OF_A_CENT));
            }
        }
    }

    @Test
    void priceNotKnown_filledIn_joinsTheTotals() throws IOException, InterruptedException {
        try (XSSFWorkbook workbook = SpreadsheetTest.written(PlanFixture.inches())) {
            double before = total(workbook, "As bought, USD");
            cell(workbook.getSheet("Buy"), "exterior PVA", "Each, USD").setCellValue(5.60);
            try (XSSFWorkbook calculated = LibreOffice.calculate(workbook, folder)) {
                assertThat(total(calculated, "As bought, USD"))
                        .isCloseTo(before + 5.60, within(A_THOUSANDTH_OF_A_CENT));
                SpreadsheetTest.find(calculated.getSheet("Buy"), "exterior PVA");
            }
        }
    }

    @Test
    void noPriceKnown_oneFilledIn_isTheTotal() throws IOException, InterruptedException {
        try (XSSFWorkbook workbook = SpreadsheetTest.written(PlanFixture.withoutPrices())) {
            cell(workbook.getSheet("Buy"), "1x2", "Each, USD").setCellValue(4.10);
            try (XSSFWorkbook calculated = LibreOffice.calculate(workbook, folder)) {
                assertThat(total(calculated, "As bought, USD")).isCloseTo(2 * 4.10, within(A_THOUSANDTH_OF_A_CENT));
            }
        }
    }

    @Test
    void need_raised_buysAnotherPack() throws IOException, InterruptedException {
        String screws = "No. 8 x 1 5/8 in wood screw, stainless";
        try (XSSFWorkbook workbook = SpreadsheetTest.written(PlanFixture.inches())) {
            double before = total(workbook, "As bought, USD");
            cell(workbook.getSheet("Hardware"), screws, "Needed").setCellValue(201);
            try (XSSFWorkbook calculated = LibreOffice.calculate(workbook, folder)) {
                assertThat(cell(calculated.getSheet("Buy"), screws, "Number").getNumericCellValue())
                        .isEqualTo(3);
                assertThat(total(calculated, "As bought, USD"))
                        .isCloseTo(before + 9.40, within(A_THOUSANDTH_OF_A_CENT));
            }
        }
    }

    private static void agreesWithPlan(Plan plan, XSSFWorkbook calculated) {
        String currency = plan.currencyCode().orElseThrow();
        assertThat(total(calculated, "As bought, " + currency))
                .isCloseTo(amount(plan.cost().bought().orElseThrow().value()), within(A_THOUSANDTH_OF_A_CENT));
        assertThat(total(calculated, "As used, " + currency))
                .isCloseTo(amount(plan.cost().used().orElseThrow().value()), within(A_THOUSANDTH_OF_A_CENT));
        for (KitComparison kit : plan.cost().compare()) {
            Cell difference = cell(calculated.getSheet("Cost"), kit.name(), "Kit less build, as bought");
            assertThat(difference.getNumericCellValue())
                    .isCloseTo(amount(kit.difference().orElseThrow().value()), within(A_THOUSANDTH_OF_A_CENT));
        }
        if (!plan.boards().isEmpty()) {
            offcutsAgree(plan, calculated.getSheet("Boards"));
        }
    }

    private static void offcutsAgree(Plan plan, XSSFSheet boards) {
        Cell head =
                SpreadsheetTest.find(boards, "Left over, " + plan.style().unit().symbol());
        for (int at = 0; at < plan.boards().size(); at++) {
            BoardLayout board = plan.boards().get(at);
            // Every length on the sheet is rounded to the print step, so the sum may be off by half a step for each.
            double halfSteps = (board.placements().size() + 3)
                    * inUnit(plan.style(), plan.style().step().nanometres())
                    / 2;
            double left = boards.getRow(head.getRowIndex() + 1 + at)
                    .getCell(head.getColumnIndex())
                    .getNumericCellValue();
            assertThat(left).isCloseTo(inUnit(plan.style(), board.offcut().nanometres()), within(halfSteps));
        }
    }

    private static double inUnit(MeasureStyle style, long nanometres) {
        return (double) nanometres / style.unit().nanometres();
    }

    private static double amount(Money money) {
        return money.getAmount().doubleValue();
    }

    private static double total(XSSFWorkbook workbook, String head) {
        return cell(workbook.getSheet("Cost"), "Total", head).getNumericCellValue();
    }

    private static Cell cell(XSSFSheet sheet, String row, String head) {
        Cell named = SpreadsheetTest.all(sheet).stream()
                .filter(cell -> text(cell).equals(row))
                .findFirst()
                .orElseThrow(() -> new AssertionError("“%s” is not on %s".formatted(row, sheet.getSheetName())));
        return named.getRow().getCell(SpreadsheetTest.find(sheet, head).getColumnIndex());
    }

    private static String text(Cell cell) {
        boolean words = cell.getCellType() == CellType.STRING
                || cell.getCellType() == CellType.FORMULA && cell.getCachedFormulaResultType() == CellType.STRING;
        return words ? cell.getStringCellValue() : "";
    }

    private static Map<String, Object> results(XSSFWorkbook workbook) {
        Map<String, Object> results = new TreeMap<>();
        workbook.forEach(sheet -> SpreadsheetTest.all((XSSFSheet) sheet).stream()
                .filter(cell -> cell.getCellType() == CellType.FORMULA)
                .forEach(cell -> results.put(
                        sheet.getSheetName() + "!" + new CellReference(cell).formatAsString(), result(cell))));
        return results;
    }

    private static Object result(Cell cell) {
        return switch (cell.getCachedFormulaResultType()) {
            case NUMERIC -> cell.getNumericCellValue();
            case STRING -> cell.getStringCellValue();
            default -> "an error in " + cell.getCellFormula();
        };
    }

    private static void same(String place, Object ours, Object theirs) {
        if (ours instanceof Double number && theirs instanceof Double other) {
            assertThat(other).as(place).isCloseTo(number, within(1e-9));
        } else {
            assertThat(theirs).as(place).isEqualTo(ours);
        }
    }
}
