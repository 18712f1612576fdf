package org.kerfleaf.kernel.child;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.kernel.wire.Thrown;
import org.kerfleaf.measure.MeasureTextException;
import org.kerfleaf.sketch.SketchException;

/** Turns what a cell threw into plain data, so that nothing of the cell's own classes leaves the run. */
final class Throwns {
    private static final int MOST_FRAMES = 20;
    private static final int LONGEST_MESSAGE = 2_000;

    private Throwns() {}

    static Thrown of(Throwable thrown) {
        Optional<String> quoted =
                thrown instanceof MeasureTextException text ? Optional.of(text.text()) : Optional.empty();
        int column = thrown instanceof MeasureTextException text ? text.column() : 0;
        return new Thrown(thrown.getClass().getName(), message(thrown), quoted, column, ours(thrown), frames(thrown));
    }

    // A cell's own exception class may answer with anything, or throw.
    private static Optional<String> message(Throwable thrown) {
        try {
            return Optional.ofNullable(thrown.getMessage())
                    .map(text -> text.length() > LONGEST_MESSAGE ? text.substring(0, LONGEST_MESSAGE) + "…" : text);
        } catch (RuntimeException | StackOverflowError noMessage) {
            return Optional.empty();
        }
    }

    private static boolean ours(Throwable thrown) {
        if (thrown instanceof SketchException || thrown instanceof MeasureTextException) {
            return true;
        }
        StackTraceElement[] frames = thrown.getStackTrace();
        return (thrown instanceof ArithmeticException || thrown instanceof IllegalArgumentException)
                && frames.length > 0
                && frames[0].getClassName().startsWith("org.kerfleaf.");
    }

    private static List<Thrown.Frame> frames(Throwable thrown) {
        return Arrays.stream(thrown.getStackTrace())
                .filter(frame -> frame.getClassName().startsWith("REPL.") && frame.getLineNumber() > 0)
                .limit(MOST_FRAMES)
                .map(frame -> new Thrown.Frame(frame.getClassName(), frame.getMethodName(), frame.getLineNumber()))
                .toList();
    }
}
