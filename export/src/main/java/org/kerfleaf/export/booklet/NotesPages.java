package org.kerfleaf.export.booklet;

import java.util.List;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.workbook.Prose;

/** What the workbook says between its steps: its sections in order, those without a word left out. */
final class NotesPages {
    private static final Style TEXT = new Style(Face.TEXT, 11.5, Ink.BLACK);

    private final Book book;

    NotesPages(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        List<Prose.Section> sections = book.prose().sections().stream()
                .filter(section -> !section.blocks().isEmpty())
                .toList();
        if (sections.isEmpty()) {
            return;
        }
        flow.page("From the workbook", "Notes", "what its maker says");
        for (Prose.Section section : sections) {
            List<Block> blocks = Marks.prose(section.blocks(), TEXT, 1.45, 2.4);
            flow.together(List.of(Paragraph.of(section.title(), Style.HEADING, 1.2, 1.4), blocks.get(0)));
            blocks.subList(1, blocks.size()).forEach(flow::pour);
            flow.add(Block.space(3));
        }
    }
}
