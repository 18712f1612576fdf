package org.kerfleaf.export.command;

/** What the command ends with. */
final class ExitStatus {
    static final int FINE = 0;

    /** A check falls short; only {@code check} ends with it. */
    static final int FALLS_SHORT = 1;

    /** The workbook does not run, or what was asked for cannot be done. */
    static final int DOES_NOT_RUN = 2;

    private ExitStatus() {}
}
