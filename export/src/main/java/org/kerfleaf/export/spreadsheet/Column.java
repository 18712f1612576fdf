package org.kerfleaf.export.spreadsheet;

import java.util.List;

/**
 * A column of a table.
 *
 * @param key how formulas speak of it: {@code {each}}
 * @param head what stands above it
 * @param width in letters; counts only in a sheet's first table
 * @param right whether it holds numbers, so that its head stands at the right too
 */
record Column(String key, String head, int width, boolean right) {
    static final String NONE = "";

    static Column text(String key, String head, int width) {
        return new Column(key, head, width, false);
    }

    static Column number(String key, String head, int width) {
        return new Column(key, head, width, true);
    }

    /** A box to tick with a pencil. */
    static Column box() {
        return new Column("box", "", 3, false);
    }

    /** A column of the sheet that this table does not use. */
    static Column skip() {
        return skip(0);
    }

    /** A column that only the tables below the first use. */
    static Column skip(int width) {
        return new Column(NONE, "", width, false);
    }

    boolean isSkipped() {
        return key.equals(NONE);
    }

    static int firstUsed(List<Column> columns) {
        int first = 0;
        while (columns.get(first).isSkipped()) {
            first++;
        }
        return first;
    }

    static int lastUsed(List<Column> columns) {
        int last = columns.size() - 1;
        while (columns.get(last).isSkipped()) {
            last--;
        }
        return last;
    }
}
