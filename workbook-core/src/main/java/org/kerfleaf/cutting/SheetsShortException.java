package org.kerfleaf.cutting;

/** A layout that needs more sheets than there are. */
public final class SheetsShortException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String stock;
    private final int available;
    private final int needed;

    SheetsShortException(SheetSize sheet, int needed, int fewest) {
        super("%s: %d needed, %d there.%s"
                .formatted(
                        sheet.stock(),
                        needed,
                        sheet.available(),
                        fewest > sheet.available()
                                ? " Fewer than %d is impossible.".formatted(fewest)
                                : " Fewer is not ruled out."));
        this.stock = sheet.stock();
        this.available = sheet.available();
        this.needed = needed;
    }

    /** The stock's name. */
    public String stock() {
        return stock;
    }

    /** How many sheets there are. */
    public int available() {
        return available;
    }

    /** How many the best layout found takes. */
    public int needed() {
        return needed;
    }
}
