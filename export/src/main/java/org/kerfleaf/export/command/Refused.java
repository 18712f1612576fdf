package org.kerfleaf.export.command;

/** What was asked for cannot be done; the message says what was given and what would be right, to be shown as it is. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Refused(String message) {
        super(message);
    }
}
