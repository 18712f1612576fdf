package org.kerfleaf.export.spreadsheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.plan.Plan;

/** The spreadsheet while it is being filled. */
final class Book implements AutoCloseable {
    private final Plan plan;
    private final XSSFWorkbook workbook = new XSSFWorkbook();
    private final Looks looks = new Looks(workbook);
    private final Printed printed;

    Book(Plan plan) {
        this.plan = plan;
        this.printed = new Printed(plan.style(), plan.currency());
    }

    Plan plan() {
        return plan;
    }

    Looks looks() {
        return looks;
    }

    Printed printed() {
        return printed;
    }

    boolean inInches() {
        return plan.style().unit() == LengthUnit.INCHES;
    }

    /** A new sheet behind the others, with the columns of its first table. */
    Table sheet(String name, int frozenColumns, List<Column> columns) {
        return new Leaf(this, workbook.createSheet(name)).firstTable(titleFacts(), frozenColumns, columns);
    }

    /** The mark of a part, empty for what is no part. */
    String letterOf(String part) {
        return plan.part(part).map(found -> found.letter()).orElse("");
    }

    private String titleFacts() {
        String unit = inInches() ? "sizes in inches" : "sizes in millimetres";
        String money = plan.currencyCode().map("prices in "::concat).orElse("no prices said");
        String priced = plan.pricesOf().map(" of %s"::formatted).orElse("");
        return "Kerfleaf plan of %s · %s · %s%s".formatted(plan.day(), unit, money, priced);
    }

    void writeTo(OutputStream out) throws IOException {
        // Once here, so that viewers which do not calculate show figures; again when opened, so that none is stale.
        XSSFFormulaEvaluator.evaluateAllFormulaCells(workbook);
        workbook.setForceFormulaRecalculation(true);
        workbook.forEach(sheet -> RowHeights.set((XSSFSheet) sheet));
        workbook.setActiveSheet(0);
        workbook.setSelectedTab(0);
        signed();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        workbook.write(bytes);
        SteadyZip.rewrite(bytes.toByteArray(), out);
        out.flush();
    }

    private void signed() throws IOException {
        POIXMLProperties properties = workbook.getProperties();
        Optional<Date> day = Optional.of(Date.from(plan.day().atStartOfDay().toInstant(ZoneOffset.UTC)));
        POIXMLProperties.CoreProperties core = properties.getCoreProperties();
        core.setTitle(plan.title());
        core.setCreator("Kerfleaf");
        core.setCreated(day);
        core.setModified(day);
        properties.getExtendedProperties().getUnderlyingProperties().setApplication("Kerfleaf");
    }

    @Override
    public void close() throws IOException {
        workbook.close();
    }
}
