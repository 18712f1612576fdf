package org.kerfleaf.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.kerfleaf.sketch.Sketch;

/** What one pass over a workbook's text found. Not changed after {@link #of}. */
final class Reading {
    /** Blocks inside one another, a list counting two; what is nested deeper is read as text. */
    private static final int MOST_NESTED_BLOCKS = 500;
    /** Emphasis and links inside one another; what is nested deeper is read as text. */
    private static final int MOST_NESTED_MARKS = 64;

    private static final Parser PARSER = Parser.builder()
            .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
            .maxOpenBlockParsers(MOST_NESTED_BLOCKS)
            .maxInlineNesting(MOST_NESTED_MARKS)
            .customInlineContentParserFactory(new LiveValueParser())
            .build();

    final Node document;
    final Lines lines;
    final List<Cell> cells = new ArrayList<>();
    /** The fence of each cell, in the same order. */
    final List<Fence> fences = new ArrayList<>();

    final List<View> views = new ArrayList<>();
    final List<LiveValue> liveValues = new ArrayList<>();
    final List<Sketch.Step> steps = new ArrayList<>();
    final List<Slip> slips = new ArrayList<>();

    private final Outline outline;
    private String section = "";

    private Reading(String text) {
        document = PARSER.parse(text);
        lines = new Lines(text);
        outline = new Outline(document);
    }

    static Reading of(String text) {
        var reading = new Reading(text);
        for (Node block = reading.document.getFirstChild(); block != null; block = block.getNext()) {
            if (block instanceof Heading heading) {
                reading.enter(heading);
            }
            Tree.eachUnder(block, reading::see);
        }
        reading.slips.sort(Comparator.comparingInt(Slip::line).thenComparingInt(Slip::column));
        return reading;
    }

    private void enter(Heading heading) {
        section = Outline.textOf(heading);
        if (outline.enter(heading) == Outline.Begins.STEP) {
            steps.add(new Sketch.Step(outline.step(), section));
        }
    }

    private void see(Node node) {
        if (node instanceof LiveNode live) {
            see(live);
        } else if (node instanceof FencedCodeBlock block) {
            switch (Fence.kind(block)) {
                case Workbook.CELL -> addCell(Fence.of(block, lines));
                case Workbook.VIEW -> addViews(Fence.of(block, lines));
                default -> {}
            }
        }
    }

    private void see(LiveNode live) {
        TextPosition at = lines.position(live.offset);
        if (live.isStray()) {
            slips.add(new Slip(at.line(), at.column(), live.slip));
            return;
        }
        live.ordinal = liveValues.size();
        liveValues.add(new LiveValue(live.ordinal, live.expression, at.line(), at.column(), live.offset, live.length));
    }

    private void addCell(Fence fence) {
        noteIfOpen(fence, "cell");
        int line = fence.firstLine();
        boolean empty = fence.texts().isEmpty();
        List<Cell.Start> starts = empty ? List.of(new Cell.Start(1, 0)) : fence.starts();
        int column = starts.get(0).column();
        int offset = lines.start(line) + column - 1;
        int end = empty ? offset : lines.end(fence.afterLine() - 1);
        cells.add(new Cell(
                cells.size(),
                String.join("\n", fence.texts()),
                line + 1,
                column,
                offset,
                end - offset,
                outline.step(),
                section,
                starts));
        fences.add(fence);
    }

    private void addViews(Fence fence) {
        noteIfOpen(fence, "view");
        for (int i = 0; i < fence.texts().size(); i++) {
            String text = fence.texts().get(i);
            String what = text.strip();
            if (!what.isEmpty()) {
                int line = fence.firstLine() + i;
                int offset = lines.end(line) - text.length() + text.indexOf(what);
                views.add(new View(views.size(), what, line + 1, offset, what.length(), outline.step()));
            }
        }
    }

    private void noteIfOpen(Fence fence, String what) {
        if (!fence.closed()) {
            String mark = fence.block().getFenceCharacter().repeat(fence.block().getOpeningFenceLength());
            slips.add(new Slip(
                    fence.openingLine() + 1,
                    fence.openingColumn() + 1,
                    "This %s is never closed, so all that follows it here is read as part of it. Write %s on a line of its own behind it."
                            .formatted(what, mark)));
        }
    }
}
