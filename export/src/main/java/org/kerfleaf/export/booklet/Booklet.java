package org.kerfleaf.export.booklet;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.workbook.Prose;

/**
 * The build booklet: cover, safety, shopping list, sheet and board layouts with the order of cuts, cut list and saw
 * settings, how the sizes add up, the build in views and taken apart, marking out, site and loads, sheet use, work and waiting, steps, checks, cost, and what the workbook says besides.
 * The same plan, prose and paper give the
 * same bytes.
 */
public final class Booklet {
    private Booklet() {}

    /**
     * Writes the booklet as PDF and leaves {@code out} open.
     *
     * @param plan what to print
     * @param prose the workbook's words; the steps' are found by number
     * @param paper what it is printed on
     * @throws UncheckedIOException if writing fails
     */
    public static void write(Plan plan, Prose prose, Paper paper, OutputStream out) {
        byte[] pdf = new PdfPages(plan, paper).of(leaves(Book.of(plan, prose, paper)));
        try {
            out.write(pdf);
            out.flush();
        } catch (IOException failed) {
            throw new UncheckedIOException("The booklet of “%s” could not be written.".formatted(plan.title()), failed);
        }
    }

    private static List<Leaf> leaves(Book book) {
        Flow flow = new Flow(book.paper());
        new CoverPage(book).into(flow);
        new SafetyPage(book).into(flow);
        boolean departmentsShown = new ShoppingPage(book).into(flow);
        new SheetPages(book).into(flow);
        SheetUsePage use = new SheetUsePage(book);
        boolean shown = use.fits(flow);
        new BoardPages(book).into(flow);
        if (!shown && !use.fits(flow)) {
            use.into(flow);
        }
        new CutListPages(book).into(flow);
        new MovementPage(book).into(flow);
        SizesTable sizes = new SizesTable(book);
        boolean summed = sizes.fits(flow);
        new BuildPages(book).into(flow);
        new PartPages(book).into(flow);
        new PaintPage(book).into(flow);
        new SiteAndLoadsPages(book).into(flow);
        new SchedulePages(book).into(flow);
        new StepPages(book).into(flow);
        new CheckPages(book).into(flow);
        summed = summed || sizes.fits(flow);
        new CostPages(book, !departmentsShown).into(flow);
        if (!summed && !sizes.fits(flow)) {
            sizes.into(flow);
        }
        new NotesPages(book).into(flow);
        return flow.leaves();
    }
}
