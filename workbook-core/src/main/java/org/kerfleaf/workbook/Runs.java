package org.kerfleaf.workbook;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.workbook.Prose.Run;
import org.kerfleaf.workbook.Prose.Style;

/** Collects stretches of text; neighbours of one style become one, but every live value stays by itself. */
final class Runs {
    /** All but the last stretch; that one is still open to more text of its style. */
    private final List<Run> done = new ArrayList<>();

    private final StringBuilder openText = new StringBuilder();
    private Style openStyle = Style.PLAIN;

    void add(String text, Style style) {
        if (text.isEmpty()) {
            return;
        }
        if (style == Style.VALUE || style != openStyle) {
            close();
        }
        openText.append(text);
        openStyle = style;
    }

    private void close() {
        if (!openText.isEmpty()) {
            done.add(new Run(openText.toString(), openStyle));
            openText.setLength(0);
        }
    }

    void addAll(List<Run> more) {
        more.forEach(run -> add(run.text(), run.style()));
    }

    /** Sets two paragraphs apart where all stands in one. */
    void addBetween(String text) {
        if (!list().isEmpty()) {
            add(text, Style.PLAIN);
        }
    }

    boolean isEmpty() {
        return text().isBlank();
    }

    String text() {
        var text = new StringBuilder();
        list().forEach(run -> text.append(run.text()));
        return text.toString();
    }

    /** Takes that many chars off the beginning, and the blanks that follow. */
    void cut(int chars) {
        close();
        int left = chars;
        while (!done.isEmpty()) {
            Run first = done.get(0);
            int here = Math.min(left, first.text().length());
            left -= here;
            String rest = first.text().substring(here);
            rest = left == 0 ? rest.stripLeading() : rest;
            if (!rest.isEmpty()) {
                done.set(0, new Run(rest, first.style()));
                return;
            }
            done.remove(0);
        }
    }

    List<Run> inEmphasis() {
        var emphasised = new Runs();
        list().forEach(run -> emphasised.add(run.text(), run.style() == Style.PLAIN ? Style.EMPHASIS : run.style()));
        return emphasised.list();
    }

    List<Run> list() {
        var all = new ArrayList<>(done);
        if (!openText.isEmpty()) {
            all.add(new Run(openText.toString(), openStyle));
        }
        return List.copyOf(all);
    }
}
