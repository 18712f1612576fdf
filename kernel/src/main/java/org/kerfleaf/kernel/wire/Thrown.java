package org.kerfleaf.kernel.wire;

import java.util.List;
import java.util.Optional;

/**
 * Something thrown by a cell, as plain data.
 *
 * @param type the full name of its class
 * @param message its message
 * @param quoted the text that was being read, if it is about a text
 * @param column the column of that text, from 1, or 0
 * @param ours whether the message is one of the vocabulary's, made for a maker to read
 * @param frames the innermost frames that lie in cells
 */
public record Thrown(
        String type, Optional<String> message, Optional<String> quoted, int column, boolean ours, List<Frame> frames) {
    /** A line of a class that was made from a cell. */
    public record Frame(String className, String method, int line) {}

    public Thrown {
        frames = List.copyOf(frames);
    }
}
