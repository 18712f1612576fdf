package org.kerfleaf.export.command;

import java.util.stream.Collectors;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.reach.Reached;
import org.kerfleaf.kernel.reach.Reaching;

/** Shows where a workbook reaches for more than the words. */
final class ReachText {
    private ReachText() {}

    /** What it reaches for, then each place: cell, line, what for, what it names, and the line itself. */
    static String of(String file, Reached reached) {
        String places =
                reached.all().stream().map(ReachText::place).collect(Collectors.joining(System.lineSeparator()));
        return "%s reaches for more than the words: %s.%n%s".formatted(file, reached.inWords(), places);
    }

    /** The same, and what to say so that it runs. */
    static String notAllowed(String file, Reached reached) {
        return "%s%nNothing of it has run. If you know what these lines do, say: kerfleaf allow %s"
                .formatted(of(file, reached), typed(file));
    }

    /** A name as it is typed, in quotes if there is a blank in it. */
    static String typed(String name) {
        return name.contains(" ") ? "\"" + name + "\"" : name;
    }

    private static String place(Reaching one) {
        CellProblem at = one.place();
        String cell = at.cell() == CellProblem.PROSE ? "prose" : "cell " + (at.cell() + 1);
        return "    %s, line %d: %s (%s)%n        %s"
                .formatted(
                        cell,
                        at.line(),
                        one.reach().words(),
                        String.join(", ", one.things()),
                        at.text().strip());
    }
}
