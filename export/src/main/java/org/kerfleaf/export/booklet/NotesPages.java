package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.workbook.Prose;

/** What the workbook says between its steps: its sections in order, those without a word left out. */
final class NotesPages {
    private static final String TITLE = "From the workbook";
    private static final Style HEAD = new Style(Face.LABEL_SEMI, 12, Ink.BLACK);
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
        Block all = Block.stack(List.of(Marks.heading(TITLE), Block.stack(blocks(sections))));
        if (all.height(flow.width()) <= flow.left()) {
            flow.add(all);
            return;
        }
        flow.page(TITLE, "Notes", "what its maker says");
        blocks(sections).forEach(flow::add);
    }

    private static List<Block> blocks(List<Prose.Section> sections) {
        List<Block> all = new ArrayList<>();
        for (Prose.Section section : sections) {
            List<Block> blocks = Marks.prose(section.blocks(), TEXT, 1.45, 2.4);
            Block head = Paragraph.of(section.title(), HEAD, 1.25, 1);
            all.add(Block.stack(List.of(head, blocks.get(0))));
            all.addAll(blocks.subList(1, blocks.size()));
            all.add(Block.space(2));
        }
        return all;
    }
}
