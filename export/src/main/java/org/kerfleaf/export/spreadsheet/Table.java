package org.kerfleaf.export.spreadsheet;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.util.CellReference;

/** Rows under one head. Formulas speak of a column by its key in braces and mean the cell in their own row. */
final class Table {
    private static final Pattern KEY = Pattern.compile("\\{(\\w+)}");

    private final Leaf leaf;
    private final List<Column> columns;
    private final int firstRow;
    private int rows;

    Table(Leaf leaf, List<Column> columns, int firstRow) {
        this.leaf = leaf;
        this.columns = columns;
        this.firstRow = firstRow;
    }

    Leaf leaf() {
        return leaf;
    }

    List<Column> columns() {
        return columns;
    }

    boolean isEmpty() {
        return rows == 0;
    }

    /** A further row of the table; columns that are not filled still get their rule. */
    Line row() {
        rows++;
        return new Line(this, leaf.newRow(), Look.Rule.ROW);
    }

    /** A row below the table with its totals; it is no row of the table, so filters and sorting leave it where it is. */
    Line totals() {
        return new Line(this, leaf.newRow(), Look.Rule.TOTAL);
    }

    /** Puts a filter on the head. */
    Table filtered() {
        leaf.filter(firstRow - 1, firstRow - 1 + rows, firstFiltered(), Column.lastUsed(columns));
        return this;
    }

    private int firstFiltered() {
        return columns.get(0).key().equals("box") ? 1 : 0;
    }

    /** All cells of a column, fixed: {@code $F$5:$F$12}. */
    String range(String key) {
        String letter = letter(key);
        return "$%s$%d:$%s$%d".formatted(letter, firstRow + 1, letter, firstRow + rows);
    }

    /** All cells of a column as another sheet names them. */
    String rangeFromElsewhere(String key) {
        return leaf.quotedName() + "!" + range(key);
    }

    /** The formula with every key in braces replaced by that column's cell in the given row, counted from 0. */
    String inRow(String formula, int row) {
        Matcher keys = KEY.matcher(formula);
        return keys.replaceAll(found -> "\\$" + letter(found.group(1)) + (row + 1));
    }

    int indexOf(String key) {
        for (int at = 0; at < columns.size(); at++) {
            if (columns.get(at).key().equals(key)) {
                return at;
            }
        }
        throw new IllegalStateException("No column “%s” among %s.".formatted(key, columns));
    }

    private String letter(String key) {
        return CellReference.convertNumToColString(indexOf(key));
    }
}
