package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.reason.Figure;

/**
 * Figures that are told together, line by line: on the terminal, on paper, in the spreadsheet.
 *
 * @param title what they are of; empty for the first of their kind
 * @param lines in the order in which they are told
 */
public record Told(String title, List<Line> lines) {
    /**
     * One line.
     *
     * @param what {@code post in the ground}
     * @param words its value for people
     * @param figure with its reason, where it is one figure
     */
    public record Line(String what, String words, Optional<Figure<?>> figure) {}

    public Told {
        lines = List.copyOf(lines);
    }

    /** Fills a group line by line. */
    static final class Filling {
        /** Stands for a figure that is asked and lacks its data. */
        static final String NOT_KNOWN = "not known";

        private final String title;
        private final MeasureStyle style;
        private final List<Line> lines = new ArrayList<>();

        Filling(String title, MeasureStyle style) {
            this.title = title;
            this.style = style;
        }

        Filling line(String what, String words) {
            lines.add(new Line(what, words, Optional.empty()));
            return this;
        }

        Filling line(String what, String words, Figure<?> figure) {
            lines.add(new Line(what, words, Optional.of(figure)));
            return this;
        }

        Filling line(String what, Figure<? extends Quantity> figure) {
            return line(what, figure.value().in(style), figure);
        }

        /** Only where there is one. */
        Filling maybe(String what, Optional<? extends Figure<? extends Quantity>> figure) {
            figure.ifPresent(known -> line(what, known));
            return this;
        }

        /** Where there is none, that is told. */
        Filling asked(String what, Optional<? extends Figure<? extends Quantity>> figure) {
            figure.ifPresentOrElse(known -> line(what, known), () -> line(what, NOT_KNOWN));
            return this;
        }

        Told done() {
            return new Told(title, lines);
        }
    }
}
