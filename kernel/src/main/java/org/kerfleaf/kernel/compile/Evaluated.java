package org.kerfleaf.kernel.compile;

import java.util.List;
import java.util.Set;
import jdk.jshell.Snippet;

/**
 * What one piece became in a session. Each evaluation is one of its own, equal to no other.
 *
 * @param piece the piece as it stood when it was evaluated; its text counts, not its place
 * @param words the names it says
 * @param seen what it was evaluated against
 * @param snippets what the session made of it, nothing if it could not be read
 * @param unread why it could not be read, empty if it could
 * @param states how each snippet came out
 */
record Evaluated(
        Piece piece, Set<Mention> words, Seen seen, List<Snippet> snippets, String unread, List<State> states) {
    /**
     * All that can matter to how a piece comes out, beside its text.
     *
     * @param imports the imports above it, as written
     * @param above for everything above it whose name it says, how that came out and what of it can be used
     * @param below for a piece that came out waiting, the text of everything below it whose name it says
     */
    record Seen(List<String> imports, List<String> above, List<String> below) {}

    /** How a snippet stands in its session. */
    record State(Snippet.Status status, String className) {}

    /** Whether it came out waiting for something that was not there yet. */
    boolean isForward() {
        return isForward(states);
    }

    static boolean isForward(List<State> states) {
        return states.stream()
                .map(State::status)
                .anyMatch(status -> status == Snippet.Status.RECOVERABLE_DEFINED
                        || status == Snippet.Status.RECOVERABLE_NOT_DEFINED);
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
