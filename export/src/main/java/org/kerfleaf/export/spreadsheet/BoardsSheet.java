package org.kerfleaf.export.spreadsheet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.cutting.BoardLayout.BoardPlacement;

/** The pieces of every board in the order of cutting, and what is left of each board. */
final class BoardsSheet {
    private final Book book;
    private final Printed printed;
    private final List<BoardLayout> layouts;

    private BoardsSheet(Book book) {
        this.book = book;
        printed = book.printed();
        layouts = book.plan().boards();
    }

    static void write(Book book) {
        if (!book.plan().boards().isEmpty()) {
            new BoardsSheet(book).write();
        }
    }

    private void write() {
        Table pieces = book.sheet(
                "Boards",
                4,
                List.of(
                        Column.box(),
                        Column.number("board", "Board", 7),
                        Column.text("stock", "From", 22),
                        Column.text("letter", "Mark", 7),
                        Column.text("part", "Part", 34),
                        Column.number("at", printed.lengthHead("Starts at"), 13),
                        Column.number("length", printed.lengthHead("Long"), 13),
                        Column.text("reads", "Read on the tape", 17),
                        Column.skip(13),
                        Column.skip(13)));
        for (int at = 0; at < layouts.size(); at++) {
            for (BoardPlacement piece : layouts.get(at).placements()) {
                piece(pieces.row(), at + 1, layouts.get(at).board().stock(), piece);
            }
        }
        pieces.filtered();
        boards(pieces);
    }

    private void piece(Line line, int board, String stock, BoardPlacement piece) {
        line.count("board", board)
                .text("stock", stock)
                .text("letter", book.letterOf(piece.part()))
                .text("part", piece.part())
                .length("at", piece.at())
                .length("length", piece.length())
                .reads("reads", piece.length());
    }

    private void boards(Table pieces) {
        Table table = pieces.leaf()
                .nextTable(
                        "What is left of each board",
                        List.of(
                                Column.skip(),
                                Column.number("board", "Board", 0),
                                Column.text("stock", "From", 0),
                                Column.number("pieces", "Pieces", 0),
                                Column.text("because", "How few would do", 0),
                                Column.number("sold", printed.lengthHead("As sold"), 0),
                                Column.number("trim", printed.lengthHead("Trim, each end"), 0),
                                Column.number("kerf", printed.lengthHead("Kerf"), 0),
                                Column.number("used", printed.lengthHead("Pieces"), 0),
                                Column.number("offcut", printed.lengthHead("Left over"), 0)));
        List<String> said = new ArrayList<>();
        for (int at = 0; at < layouts.size(); at++) {
            BoardLayout layout = layouts.get(at);
            String stock = layout.board().stock();
            table.row()
                    .count("board", at + 1L)
                    .text("stock", stock)
                    .formula("pieces", "COUNTIF(%s,{board})".formatted(pieces.range("board")), "0")
                    .text("because", said.contains(stock) ? "" : SheetCutsSheet.because(book, stock))
                    .length("sold", layout.board().length())
                    .length("trim", layout.board().trim())
                    .length("kerf", layout.board().kerf())
                    .formula("used", sumOfPieces(pieces), printed.lengthFormat())
                    // The last piece may end flush with the trimmed end; then there is no kerf behind it.
                    .formula("offcut", "MAX(0,{sold}-2*{trim}-{used}-{pieces}*{kerf})", printed.lengthFormat());
            said.add(stock);
        }
        table.totals()
                .formula("pieces", "SUM(%s)".formatted(table.range("pieces")), "0")
                .formula("sold", "SUM(%s)".formatted(table.range("sold")), printed.lengthFormat())
                .formula("used", "SUM(%s)".formatted(table.range("used")), printed.lengthFormat())
                .formula("offcut", "SUM(%s)".formatted(table.range("offcut")), printed.lengthFormat());
    }

    private static String sumOfPieces(Table pieces) {
        return "SUMIF(%s,{board},%s)".formatted(pieces.range("board"), pieces.range("length"));
    }
}
