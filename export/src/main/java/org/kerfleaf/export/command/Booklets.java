package org.kerfleaf.export.command;

import java.io.OutputStream;
import org.kerfleaf.export.booklet.Booklet;
import org.kerfleaf.export.booklet.Paper;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.workbook.Prose;

/** Prints the booklet as PDF. */
final class Booklets implements BookletWriter {
    @Override
    public void write(Plan plan, Prose prose, Format format, OutputStream out) {
        Booklet.write(plan, prose, format == Format.A4 ? Paper.A4 : Paper.LETTER, out);
    }
}
