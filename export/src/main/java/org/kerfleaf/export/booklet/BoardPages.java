package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.cutting.BoardLayout.BoardPlacement;
import org.kerfleaf.export.drawing.BoardDrawing;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Line;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Scale;
import org.kerfleaf.export.drawing.Signs;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.measure.Length;

/** Boards and mouldings: each a bar to scale with its pieces, a tick for each piece, and why fewer would not do. */
final class BoardPages {
    private static final Style STOCK = new Style(Face.LABEL_BOLD, 12, Ink.BLACK);

    private final Book book;

    BoardPages(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        List<BoardLayout> boards = book.plan().boards();
        if (boards.isEmpty()) {
            return;
        }
        Length longest = boards.stream().map(b -> b.board().length()).reduce(Length.ZERO, Length::max);
        Scale scale = Scale.fitting(longest, Length.ZERO, flow.width(), 1);
        flow.page(
                "Boards",
                "Boards",
                Book.counted(boards.size(), "board") + " · "
                        + scale.words(book.measures().unit()));
        for (Map.Entry<String, List<BoardLayout>> stock : byStock(boards).entrySet()) {
            stock(flow, stock.getKey(), stock.getValue(), scale);
        }
        flow.add(Paragraph.of(reading(boards.get(0)), Style.LABEL, 1.4, 0));
    }

    private Rich reading(BoardLayout any) {
        return Rich.of("Cut from the left. Every dark line is one saw cut, ", Style.LABEL)
                .plus(any.board().kerf(), book.measures(), Style.LABEL)
                .plus(
                        " wide. Lengths are long point to long point. Only the length of a board is to scale.",
                        Style.LABEL);
    }

    private static Map<String, List<BoardLayout>> byStock(List<BoardLayout> boards) {
        Map<String, List<BoardLayout>> stocks = new LinkedHashMap<>();
        boards.forEach(board -> stocks.computeIfAbsent(board.board().stock(), name -> new ArrayList<>())
                .add(board));
        return stocks;
    }

    private void stock(Flow flow, String name, List<BoardLayout> boards, Scale scale) {
        Map<BoardLayout, Integer> alike = new LinkedHashMap<>();
        boards.forEach(board -> alike.merge(board, 1, Integer::sum));
        List<Block> blocks = new ArrayList<>();
        alike.forEach((board, times) -> blocks.add(board(board, times, scale)));
        Block head = Paragraph.of(name, STOCK, 1.3, 1.4);
        flow.together(List.of(head, blocks.get(0)));
        blocks.subList(1, blocks.size()).forEach(flow::add);
        book.bound(name).ifPresent(bound -> flow.add(Paragraph.of(bound.because(), Style.LABEL, 1.4, 0)));
        flow.add(Block.space(5.5));
    }

    private Block board(BoardLayout board, int times, Scale scale) {
        BoardDrawing drawing = new BoardDrawing(board, book.lettering(), scale);
        Rich length = Rich.of(board.board().length(), book.measures(), Style.CAPTION);
        String like = times > 1 ? " · " + times + " like this" : "";
        Rich caption = length.plus("\u00a0" + book.measures().unit().symbol() + " long" + like, Style.CAPTION);
        return Block.stack(List.of(
                Block.picture(BoardDrawing.BAR + 5.2, (ink, x, y, width) -> {
                    ink.text(caption.line(), x, y + 3);
                    drawing.paint(ink, x, y + 4.4);
                }),
                ticks(board, times)));
    }

    /** Boxes to tick, one for each piece in the order of cutting, as many to a line as fit. */
    private Block ticks(BoardLayout board, int times) {
        List<Rich> pieces = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            for (BoardPlacement piece : board.placements()) {
                pieces.add(Rich.of(book.lettering().title(piece.part()) + " ", Style.LABEL_SEMI)
                        .plus(piece.length().read(book.measures()), Style.LABEL));
            }
        }
        return new Block() {
            private static final double ROW = 6.4;

            @Override
            public double height(double width) {
                return set(null, 0, 0, width) + 2;
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                set(ink, x, y, width);
            }

            private double set(Ink ink, double x, double y, double width) {
                double left = 0;
                double top = 1.2;
                for (Rich piece : pieces) {
                    List<Line> lines = piece.wrap(width - Signs.TICK_BOX - 2);
                    double needed = Signs.TICK_BOX + 2 + lines.get(0).width();
                    if (left > 0 && left + needed > width) {
                        left = 0;
                        top += ROW;
                    }
                    if (ink != null) {
                        Signs.tickBox(ink, x + left, y + top + 0.6);
                    }
                    for (int i = 0; i < lines.size(); i++) {
                        if (ink != null) {
                            ink.text(lines.get(i), x + left + Signs.TICK_BOX + 1.6, y + top + 4.1 + i * 5);
                        }
                    }
                    top += (lines.size() - 1) * 5;
                    left += lines.size() > 1 ? width : needed + 6;
                }
                return top + ROW;
            }
        };
    }
}
