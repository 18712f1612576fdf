package org.kerfleaf.kernel.wire;

import java.io.IOException;

/** A frame is longer than {@link Channel#MOST_BYTES}, or says that it is shorter than nothing. */
public final class FrameTooLongException extends IOException {
    private static final long serialVersionUID = 1L;

    FrameTooLongException(int bytes) {
        super("A frame of %d bytes; %d at most.".formatted(bytes, Channel.MOST_BYTES));
    }
}
