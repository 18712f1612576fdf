package org.kerfleaf.sketch;

/** What a part is cut from. */
public enum PartKind {
    /** From a sheet. */
    PANEL,
    /** From a board or moulding. */
    BOARD,
    /** From a glazing sheet. */
    PANE
}
