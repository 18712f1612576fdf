package org.kerfleaf.export.spreadsheet;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.kerfleaf.plan.Plan;

/** Writes a plan as a spreadsheet with live formulas. The same plan gives the same bytes. */
public final class Spreadsheet {
    static {
        // Without it the spreadsheet library says on stderr that it found no log, before anything is wrong.
        String factory = "log4j2.loggerContextFactory";
        if (System.getProperty(factory) == null) {
            System.setProperty(factory, "org.apache.logging.log4j.simple.SimpleLoggerContextFactory");
        }
    }

    private Spreadsheet() {}

    /**
     * Writes the whole plan and flushes {@code out}, which is left open. A sheet the plan has nothing for is left out;
     * {@code Read first} never is.
     *
     * @throws UncheckedIOException if writing fails
     */
    public static void write(Plan plan, OutputStream out) {
        try (Book book = new Book(plan)) {
            ReadFirstSheet.write(book);
            BuySheet bought = BuySheet.write(book);
            CutListSheet.write(book);
            SheetCutsSheet.write(book);
            BoardsSheet.write(book);
            MovementSheet.write(book);
            SawSettingsSheet.write(book);
            HardwareSheet.write(book, bought);
            PaintSheet.write(book);
            SiteAndLoadsSheet.write(book);
            CostSheet.write(book, bought);
            ChecksSheet.write(book);
            StepsSheet.write(book);
            book.writeTo(out);
        } catch (IOException failed) {
            throw new UncheckedIOException(
                    "The spreadsheet of “%s” could not be written.".formatted(plan.title()), failed);
        }
    }
}
