package org.kerfleaf.export.command;

import org.kerfleaf.export.command.BookletWriter.Format;
import org.kerfleaf.measure.LengthUnit;

/** What was said behind {@code --paper}. */
final class PaperSaid {
    private PaperSaid() {}

    /** @throws Refused if it is neither of the two papers; null says nothing */
    static void check(String said) {
        if (said != null && !said.equals("a4") && !said.equals("letter")) {
            throw new Refused("--paper “%s”: a4 or letter would be right.".formatted(said));
        }
    }

    /** The paper; where nothing is said, the usual one of that unit. */
    static Format of(String said, LengthUnit unit) {
        if (said == null) {
            return Format.usualFor(unit);
        }
        return said.equals("a4") ? Format.A4 : Format.LETTER;
    }
}
