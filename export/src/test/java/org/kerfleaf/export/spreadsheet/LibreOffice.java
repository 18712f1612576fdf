package org.kerfleaf.export.spreadsheet;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTCell;

/** Calculates a spreadsheet with another program than the one that wrote it. */
final class LibreOffice {
    private LibreOffice() {}

    /**
     * Opens a workbook with every cached result taken out, and hands back what LibreOffice calculates. The test is
     * skipped where LibreOffice is not installed, except on a build machine (environment variable CI set to true).
     */
    static XSSFWorkbook calculate(XSSFWorkbook workbook, Path folder) throws IOException, InterruptedException {
        forgetResults(workbook);
        Path asked = folder.resolve("asked.xlsx");
        try (OutputStream out = Files.newOutputStream(asked)) {
            workbook.write(out);
        }
        Path answers = Files.createDirectories(folder.resolve("answers"));
        run(folder, asked, answers);
        try (InputStream in = Files.newInputStream(answers.resolve("asked.xlsx"))) {
            return new XSSFWorkbook(in);
        }
    }

    private static void forgetResults(XSSFWorkbook workbook) {
        workbook.forEach(sheet -> sheet.forEach(row -> row.forEach(cell -> {
            if (cell.getCellType() == CellType.FORMULA) {
                CTCell written = ((XSSFCell) cell).getCTCell();
                if (written.isSetV()) {
                    written.unsetV();
                }
            }
        })));
    }

    private static void run(Path folder, Path asked, Path answers) throws IOException, InterruptedException {
        ProcessBuilder soffice = new ProcessBuilder(
                        "soffice",
                        "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        "xlsx:Calc MS Excel 2007 XML",
                        "--outdir",
                        answers.toString(),
                        asked.toString())
                .redirectErrorStream(true);
        Process process = start(soffice);
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        process.getInputStream().transferTo(said);
        if (!process.waitFor(120, TimeUnit.SECONDS) || process.exitValue() != 0) {
            process.destroyForcibly();
            fail("LibreOffice did not calculate the spreadsheet: " + said);
        }
    }

    private static Process start(ProcessBuilder soffice) {
        try {
            return soffice.start();
        } catch (IOException missing) {
            String message =
                    "LibreOffice (soffice) is not installed, so nothing calculates the spreadsheet a second time.";
            return "true".equals(System.getenv("CI")) ? fail(message, missing) : abort(message);
        }
    }
}
