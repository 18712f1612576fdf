package org.kerfleaf.sketch;

/** A word of the vocabulary was given something that makes no sense; the message names it, its bound and what would be right. */
public final class SketchException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public SketchException(String message) {
        super(message);
    }
}
