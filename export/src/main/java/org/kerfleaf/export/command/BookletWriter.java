package org.kerfleaf.export.command;

import java.io.OutputStream;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.workbook.Prose;

/** Prints the booklet. */
interface BookletWriter {
    /** Writes a PDF and leaves {@code out} open. */
    void write(Plan plan, Prose prose, Format format, OutputStream out);

    /** What it is printed on. */
    enum Format {
        A4,
        LETTER;

        /** What an office of that unit's countries has in its printer. */
        static Format usualFor(LengthUnit unit) {
            return unit == LengthUnit.INCHES ? LETTER : A4;
        }
    }
}
