package org.kerfleaf.export.spreadsheet;

import java.util.List;
import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** One sheet: the title block in rows 1 and 2, the first table's head in row 4, further tables below it. */
final class Leaf {
    private static final int HEAD_ROW = 3;

    /** How many units of 1/256 letter a column needs beside its letters. */
    private static final int PADDING = 182;

    private final Book book;
    private final XSSFSheet sheet;
    private int nextRow;

    Leaf(Book book, XSSFSheet sheet) {
        this.book = book;
        this.sheet = sheet;
    }

    Book book() {
        return book;
    }

    /** As a formula on another sheet names it. */
    String quotedName() {
        return "'" + sheet.getSheetName() + "'";
    }

    Table firstTable(String facts, int frozenColumns, List<Column> columns) {
        write(newRow(), 0, "%s · %s".formatted(book.plan().title(), sheet.getSheetName()), Look.TITLE);
        write(newRow(), 0, facts, Look.FACTS);
        nextRow = HEAD_ROW;
        for (int at = 0; at < columns.size(); at++) {
            Column column = columns.get(at);
            int indent = column.right() ? 256 : 0;
            sheet.setColumnWidth(at, column.width() * 256 + PADDING + indent);
        }
        sheet.createFreezePane(frozenColumns, HEAD_ROW + 1);
        setUpForPrint();
        return table(columns);
    }

    /** A further table, with a caption, in the columns of the first. */
    Table nextTable(String caption, List<Column> columns) {
        nextRow++;
        write(newRow(), 0, caption, Look.CAPTION);
        return table(columns);
    }

    private Table table(List<Column> columns) {
        XSSFRow head = newRow();
        for (int at = Column.firstUsed(columns); at <= Column.lastUsed(columns); at++) {
            Column column = columns.get(at);
            HorizontalAlignment side = column.right() ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT;
            write(head, at, column.head(), Look.HEAD.at(side));
        }
        return new Table(this, columns, nextRow);
    }

    /** A sentence on a row of its own. */
    void remark(String words) {
        write(newRow(), 0, words, Look.REMARK);
    }

    /** A sentence set off from the table above. */
    void nextRemark(String words) {
        nextRow++;
        remark(words);
    }

    void filter(int firstRow, int lastRow, int firstColumn, int lastColumn) {
        sheet.setAutoFilter(new CellRangeAddress(firstRow, lastRow, firstColumn, lastColumn));
    }

    XSSFRow newRow() {
        return sheet.createRow(nextRow++);
    }

    XSSFCell cell(XSSFRow row, int column, Look look) {
        XSSFCell cell = row.createCell(column);
        cell.setCellStyle(book.looks().style(look));
        return cell;
    }

    private void write(XSSFRow row, int column, String words, Look look) {
        cell(row, column, look).setCellValue(words);
    }

    private void setUpForPrint() {
        sheet.setRepeatingRows(new CellRangeAddress(0, HEAD_ROW, -1, -1));
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setLandscape(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
        sheet.getPrintSetup().setNoColor(true);
        sheet.getPrintSetup().setPaperSize(book.inInches() ? PaperSize.LETTER_PAPER : PaperSize.A4_PAPER);
        for (PageMargin margin : List.of(PageMargin.LEFT, PageMargin.RIGHT, PageMargin.TOP)) {
            sheet.setMargin(margin, 0.5);
        }
        sheet.setMargin(PageMargin.BOTTOM, 0.7);
        Footer footer = sheet.getFooter();
        // An ampersand begins a code in a footer; two are one in print.
        footer.setLeft(book.plan().title().replace("&", "&&"));
        footer.setCenter("&A");
        footer.setRight("Page &P of &N");
    }
}
