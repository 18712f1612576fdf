package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Style;

/** Fills pages with blocks from top to bottom; what does not fit begins a page of the same title. */
final class Flow {
    static final Style FACT = Style.LABEL.in(Ink.GRAPHITE);

    private final Paper paper;
    private final List<Leaf> leaves = new ArrayList<>();
    private Leaf leaf;
    private String title = "";
    private String sheet = "";
    private Rich fact = Rich.NOTHING;
    private Block repeated;
    private double y;
    private boolean fresh;

    Flow(Paper paper) {
        this.paper = paper;
    }

    List<Leaf> leaves() {
        return List.copyOf(leaves);
    }

    double width() {
        return paper.measure();
    }

    /** The room left on this page. */
    double left() {
        return paper.bottom() - y;
    }

    /** The room a page of this title has. */
    double whole() {
        return paper.bottom() - leaf.top();
    }

    /** Whether nothing stands on this page yet. */
    boolean isFresh() {
        return fresh;
    }

    /** Begins a page with a title, a short name for the title block, and a fact at the right. */
    void page(String newTitle, String newSheet, String newFact) {
        page(newTitle, newSheet, Rich.of(newFact, FACT), true);
    }

    /** Begins a page that sets its own title. */
    void bare(String newTitle, String newSheet) {
        page(newTitle, newSheet, Rich.NOTHING, false);
    }

    private void page(String newTitle, String newSheet, Rich newFact, boolean headed) {
        title = newTitle;
        sheet = newSheet;
        fact = newFact;
        repeated = null;
        begin(title, headed);
    }

    /** Changes the head of a page that nothing stands on yet. */
    void retitle(String newTitle, String newSheet, String newFact) {
        leaves.remove(leaves.size() - 1);
        page(newTitle, newSheet, newFact);
    }

    /** Goes on on a page of the same title. */
    void next() {
        begin(title + ", continued", true);
        if (repeated != null) {
            set(repeated);
            fresh = true;
        }
    }

    private void begin(String heading, boolean headed) {
        leaf = new Leaf(paper, heading, sheet, fact, headed);
        leaves.add(leaf);
        y = leaf.top();
        fresh = true;
    }

    /** From here on, this stands at the head of every further page; null for nothing. */
    void repeat(Block head) {
        repeated = head;
    }

    /** Adds blocks that stay on one page if a page can hold them. */
    void together(List<? extends Block> blocks) {
        add(Block.stack(blocks));
    }

    /** Adds a block; it is broken only if it is higher than a page. */
    void add(Block block) {
        double height = block.height(width());
        if (height > left() + TOLERANCE && !fresh) {
            next();
        }
        if (height <= left() + TOLERANCE) {
            set(block);
        } else {
            breakUp(block);
        }
    }

    /** Adds a block that may be broken wherever the page ends. */
    void pour(Block block) {
        if (block.height(width()) <= left() + TOLERANCE) {
            set(block);
        } else {
            breakUp(block);
        }
    }

    private void breakUp(Block block) {
        List<Block> parts = block.broken(width());
        if (parts.size() == 1) {
            set(parts.get(0));
        } else {
            parts.forEach(this::add);
        }
    }

    private void set(Block block) {
        leaf.place(block, Paper.SIDE, y, width());
        y += block.height(width());
        fresh = false;
    }

    /** Moves down to a place that leaves only so much of the page. */
    void leave(double room) {
        y = Math.max(y, paper.bottom() - room);
    }

    private static final double TOLERANCE = 1e-6;
}
