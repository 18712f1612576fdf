package org.kerfleaf.workbook;

/** The bytes are no workbook file: not UTF-8, or too many. */
public final class WorkbookFileException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int byteOffset;

    WorkbookFileException(int byteOffset, String words) {
        super(words);
        this.byteOffset = byteOffset;
    }

    /** Returns the first byte that cannot be read, from 0. */
    public int byteOffset() {
        return byteOffset;
    }
}
