package org.kerfleaf.workbook;

import java.util.Collections;
import java.util.List;
import java.util.function.IntFunction;
import org.commonmark.node.Heading;
import org.kerfleaf.sketch.Sketch;

/**
 * A workbook file, read. One CommonMark file (version 0.31.2): paragraphs are prose, <code>${expression}</code> in them
 * is a live value, a fence whose info string begins with {@code java} is a cell, one with {@code view} places parts of
 * the plan, and under the heading {@code Build steps} every sub-heading is a build step. Immutable.
 */
public final class Workbook {
    /** The title of a workbook without a level-1 heading, or with an empty one. */
    public static final String UNTITLED = "Untitled workbook";
    /** The largest file that is read, in bytes. */
    public static final int MOST_BYTES = 16 * 1024 * 1024;

    static final String CELL = "java";
    static final String VIEW = "view";

    private static final String BOM = "\uFEFF";

    private final boolean bom;
    private final String text;
    private final Reading reading;

    private Workbook(boolean bom, String text) {
        this.bom = bom;
        this.text = text;
        this.reading = Reading.of(text);
    }

    /**
     * Reads a workbook file. A byte order mark is cut and remembered.
     *
     * @throws WorkbookFileException if the bytes are not UTF-8, or more than {@link #MOST_BYTES}
     */
    public static Workbook read(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            throw new WorkbookFileException(
                    MOST_BYTES, "The file has %,d bytes. A workbook can have %,d.".formatted(bytes.length, MOST_BYTES));
        }
        return of(Utf8.decode(bytes));
    }

    /**
     * Reads a workbook from text, as {@link #read} does from a file's bytes.
     *
     * @throws IllegalArgumentException if half of a surrogate pair stands alone in the text
     * @throws WorkbookFileException if the text takes more than {@link #MOST_BYTES} in UTF-8
     */
    public static Workbook parse(String text) {
        return read(Utf8.encode(text));
    }

    private static Workbook of(String text) {
        boolean bom = text.startsWith(BOM);
        return new Workbook(bom, bom ? text.substring(BOM.length()) : text);
    }

    /** Returns the words of the first level-1 heading, or {@link #UNTITLED}; a live value in it as it is written. */
    public String title() {
        Heading heading = Outline.titleOf(reading.document);
        String words = heading == null ? "" : Outline.textOf(heading);
        return words.isEmpty() ? UNTITLED : words;
    }

    /** Returns the cells, in document order. */
    public List<Cell> cells() {
        return Collections.unmodifiableList(reading.cells);
    }

    /** Returns the views, in document order. */
    public List<View> views() {
        return Collections.unmodifiableList(reading.views);
    }

    /** Returns the live values of the prose, in document order. */
    public List<LiveValue> liveValues() {
        return Collections.unmodifiableList(reading.liveValues);
    }

    /**
     * Returns the build steps, numbered from 1 in document order. A step is a heading under {@code Build steps} (any
     * level, any case), up to the next heading of that level or above; a heading deeper than the step it follows is part
     * of that step.
     */
    public List<Sketch.Step> steps() {
        return Collections.unmodifiableList(reading.steps);
    }

    /** Returns what looks like a slip of the pen, from the top: live values and cells that are never closed. */
    public List<Slip> slips() {
        return Collections.unmodifiableList(reading.slips);
    }

    /** Returns the file's text without its byte order mark; every offset counts in it. */
    public String text() {
        return text;
    }

    /** Returns the file's bytes, exactly those that were read where nothing was changed. */
    public byte[] bytes() {
        return Utf8.encode(bom ? BOM + text : text);
    }

    /**
     * Returns a workbook in which one cell has a new text and every byte outside that cell's lines is the same. Lines at
     * the cell's beginning and end that stay the same keep their bytes; new lines take the cell's own line end (the
     * first one in it, in a cell without one the file's most used) and what the lists and quotes around it want before
     * them. An unchanged text changes no byte.
     *
     * <p>Two things may be more or less than asked: if a line of the new text would close the fence, the opening and the
     * closing fence grow until the opening is one longer than that line; and in a list, a line of blanks alone reads
     * back empty, as CommonMark has it.
     *
     * @param ordinal the cell's, from 0
     * @param newText its lines, with any line ends; a line end at the very end is a further, blank line
     * @throws IndexOutOfBoundsException if there is no such cell
     * @throws IllegalArgumentException if half of a surrogate pair stands alone in the text
     */
    public Workbook withCell(int ordinal, String newText) {
        Utf8.encode(newText);
        Fence fence = reading.fences.get(ordinal);
        String normalised = CellEdit.normalised(newText, fence);
        if (normalised.equals(reading.cells.get(ordinal).text())) {
            return this;
        }
        var changed = new Workbook(bom, new CellEdit(text, reading.lines, fence).apply(normalised));
        String back = changed.cells().get(ordinal).text();
        if (!back.equals(normalised)) {
            throw new IllegalStateException(
                    "Cell %d was given <%s> and reads back <%s>".formatted(ordinal, normalised, back));
        }
        return changed;
    }

    /**
     * Returns the words of the workbook, without its cells and views, ready to be printed.
     *
     * @param liveValueText the text of the live value of that ordinal; never null
     */
    public Prose tell(IntFunction<String> liveValueText) {
        return new Telling(liveValueText).tell(reading.document, title());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Workbook that && bom == that.bom && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    @Override
    public String toString() {
        return "%s (%d cells)".formatted(title(), reading.cells.size());
    }
}
