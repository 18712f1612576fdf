package org.kerfleaf.workbook;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.workbook.Prose.Run;
import org.kerfleaf.workbook.Prose.Style;

/** Collects stretches of text; neighbours of one style become one, but every live value stays by itself. */
final class Runs {
    private final List<Run> runs = new ArrayList<>();

    void add(String text, Style style) {
        if (text.isEmpty()) {
            return;
        }
        int last = runs.size() - 1;
        if (last >= 0 && style != Style.VALUE && runs.get(last).style() == style) {
            runs.set(last, new Run(runs.get(last).text() + text, style));
        } else {
            runs.add(new Run(text, style));
        }
    }

    void addAll(List<Run> more) {
        more.forEach(run -> add(run.text(), run.style()));
    }

    /** Sets two paragraphs apart where all stands in one. */
    void addBetween(String text) {
        if (!runs.isEmpty()) {
            add(text, Style.PLAIN);
        }
    }

    boolean isEmpty() {
        return text().isBlank();
    }

    String text() {
        var text = new StringBuilder();
        runs.forEach(run -> text.append(run.text()));
        return text.toString();
    }

    /** Takes that many chars off the beginning, and the blanks that follow. */
    void cut(int chars) {
        int left = chars;
        while (!runs.isEmpty()) {
            Run first = runs.get(0);
            int here = Math.min(left, first.text().length());
            left -= here;
            String rest = first.text().substring(here);
            rest = left == 0 ? rest.stripLeading() : rest;
            if (!rest.isEmpty()) {
                runs.set(0, new Run(rest, first.style()));
                return;
            }
            runs.remove(0);
        }
    }

    List<Run> inEmphasis() {
        var emphasised = new Runs();
        runs.forEach(run -> emphasised.add(run.text(), run.style() == Style.PLAIN ? Style.EMPHASIS : run.style()));
        return emphasised.list();
    }

    List<Run> list() {
        return List.copyOf(runs);
    }
}
