package org.kerfleaf.export.command;

/**
 * Something wrong at a place of the workbook file.
 *
 * @param line from 1, or 0 if it has no line
 * @param column from 1, or 0 if it has none
 * @param text what stands on that line, may be empty
 * @param words what is wrong and what would be right
 */
record Fault(int line, int column, String text, String words) {
    /** For people: the place, the words, then the line with a mark under the column. */
    String in(String file) {
        String place = line == 0 ? "" : column == 0 ? ", line " + line : ", line %d, column %d".formatted(line, column);
        String told = "%s%s: %s".formatted(file, place, words);
        if (text.isBlank()) {
            return told;
        }
        String mark = column == 0 || column > text.length() + 1 ? "" : "%n    %s^".formatted(before());
        return "%s%n    %s%s".formatted(told, text, mark);
    }

    /** As much room as the text before the column takes; a tab stays a tab, so that the mark stands right. */
    private String before() {
        return text.substring(0, column - 1).replaceAll("[^\t]", " ");
    }
}
