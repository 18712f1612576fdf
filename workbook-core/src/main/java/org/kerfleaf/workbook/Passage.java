package org.kerfleaf.workbook;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.workbook.Prose.Block;
import org.kerfleaf.workbook.Prose.Run;
import org.kerfleaf.workbook.Prose.Style;

/** What is collected under one heading while the words are told. */
final class Passage {
    private static final String CAUTION = "Caution:";
    private static final String NOTE = "Note:";

    final Outline.Begins begins;
    final String title;
    final int level;
    final List<Block> blocks = new ArrayList<>();
    private final List<List<Run>> cautions = new ArrayList<>();
    private final List<List<Run>> notes = new ArrayList<>();

    Passage(Outline.Begins begins, String title, int level) {
        this.begins = begins;
        this.title = title;
        this.level = level;
    }

    void paragraph(List<Run> runs) {
        if (!runs.isEmpty()) {
            blocks.add(new Block.Paragraph(runs));
        }
    }

    /** A quote on its own: a caution, a note, or a paragraph in emphasis. */
    void quote(Runs said) {
        if (keepApart(said)) {
            return;
        }
        String mark = markOf(said);
        if (mark.isEmpty()) {
            paragraph(said.inEmphasis());
            return;
        }
        // Outside the steps there is no list of cautions; the word itself must not get lost.
        said.cut(leadingBlanks(said) + mark.length());
        var marked = new Runs();
        marked.add(mark, Style.STRONG);
        marked.add(" ", Style.PLAIN);
        marked.addAll(said.list());
        paragraph(marked.list());
    }

    /** Keeps a step's caution or note in its own list; false if it is neither, or this is no step. */
    boolean keepApart(Runs said) {
        String mark = markOf(said);
        if (begins != Outline.Begins.STEP || mark.isEmpty()) {
            return false;
        }
        said.cut(leadingBlanks(said) + mark.length());
        if (!said.isEmpty()) {
            (mark.equals(CAUTION) ? cautions : notes).add(said.list());
        }
        return true;
    }

    private static String markOf(Runs said) {
        String text = said.text().stripLeading();
        for (String mark : List.of(CAUTION, NOTE)) {
            if (text.regionMatches(true, 0, mark, 0, mark.length())) {
                return mark;
            }
        }
        return "";
    }

    private static int leadingBlanks(Runs said) {
        return said.text().length() - said.text().stripLeading().length();
    }

    Prose.Section asSection() {
        return new Prose.Section(title, level, List.copyOf(blocks));
    }

    Prose.Step asStep(int number) {
        return new Prose.Step(number, title, List.copyOf(blocks), List.copyOf(cautions), List.copyOf(notes));
    }
}
