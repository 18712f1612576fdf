package org.kerfleaf.measure;

/** Text that should have been a measure and is not: the text, the column, and what would have been right. */
public final class MeasureTextException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** As much of a text as a message shows. */
    private static final int SHOWN = 120;

    private final String text;
    private final int column;
    private final String wanted;

    /**
     * @param text the whole text as written
     * @param column where it stopped making sense, counted from 1
     * @param wrong what is wrong there, a sentence without its full stop
     * @param wanted what would have been accepted, with an example
     */
    public MeasureTextException(String text, int column, String wrong, String wanted) {
        super("“%s”, column %d: %s. %s".formatted(shortened(text), column, wrong, wanted));
        this.text = text;
        this.column = column;
        this.wanted = wanted;
    }

    private static String shortened(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }

    /** The text that was read. */
    public String text() {
        return text;
    }

    /** Where in it something is wrong, from 1. */
    public int column() {
        return column;
    }

    /** What would have been right. */
    public String wanted() {
        return wanted;
    }
}
