package org.kerfleaf.sketch;

/** What a part is cut from. */
public enum PartKind {
    PANEL,
    BOARD,
    PANE
}
