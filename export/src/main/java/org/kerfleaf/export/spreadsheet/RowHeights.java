package org.kerfleaf.export.spreadsheet;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Makes each row as high as its text needs. A spreadsheet program does so only for rows it changes itself, and no font
 * is at hand here to measure with, so lines are counted in letters of average width.
 */
final class RowHeights {
    private static final double LINE = 1.32;
    private static final double SPACE = 3;

    private RowHeights() {}

    static void set(XSSFSheet sheet) {
        for (Row row : sheet) {
            double highest = 0;
            for (Cell cell : row) {
                highest = Math.max(highest, height(sheet, (XSSFCell) cell));
            }
            row.setHeightInPoints((float) highest);
        }
    }

    private static double height(XSSFSheet sheet, XSSFCell cell) {
        int points = cell.getCellStyle().getFont().getFontHeightInPoints();
        int lines = 1;
        if (cell.getCellStyle().getWrapText()) {
            double lettersPerDigit = cell.getCellStyle().getFont().getBold() ? 1 : 1.15;
            double digits = sheet.getColumnWidth(cell.getColumnIndex()) / 256.0;
            lines = lines(text(cell), (int) ((digits - 1) * lettersPerDigit));
        }
        return lines * points * LINE + SPACE;
    }

    private static String text(XSSFCell cell) {
        CellType type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
        return type == CellType.STRING ? cell.getStringCellValue() : "";
    }

    /** How many lines a text takes where so many letters fit on one. */
    static int lines(String text, int fit) {
        int lines = 1;
        int used = 0;
        for (String word : text.split(" ")) {
            int length = word.length();
            if (used > 0 && used + 1 + length > fit) {
                lines++;
                used = 0;
            }
            used += (used > 0 ? 1 : 0) + length;
            while (used > fit) {
                lines++;
                used -= fit;
            }
        }
        return lines;
    }
}
