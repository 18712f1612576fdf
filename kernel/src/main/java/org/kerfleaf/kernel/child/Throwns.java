package org.kerfleaf.kernel.child;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.kernel.wire.SharedClass;
import org.kerfleaf.kernel.wire.Thrown;
import org.kerfleaf.measure.MeasureTextException;
import org.kerfleaf.sketch.SketchException;

/** Turns what a cell threw into plain data, so that nothing of the cell's own classes leaves the run. */
final class Throwns {
    private static final int MOST_FRAMES = 20;
    private static final int LONGEST_MESSAGE = 2_000;

    private Throwns() {}

    static Thrown of(Throwable whatever) {
        Throwable thrown = cause(whatever);
        Optional<String> quoted =
                thrown instanceof MeasureTextException text ? Optional.of(text.text()) : Optional.empty();
        int column = thrown instanceof MeasureTextException text ? text.column() : 0;
        return new Thrown(thrown.getClass().getName(), message(thrown), quoted, column, ours(thrown), frames(thrown));
    }

    // What a class threw while it was made ready is wrapped, and the wrapping says nothing.
    private static Throwable cause(Throwable thrown) {
        return thrown instanceof ExceptionInInitializerError && thrown.getCause() != null ? thrown.getCause() : thrown;
    }

    // A cell's own exception class may answer with anything, or throw. What is null in our code has a name there that
    // says
    // nothing to a maker.
    private static Optional<String> message(Throwable thrown) {
        StackTraceElement[] frames = trace(thrown);
        if (thrown instanceof NullPointerException && frames.length > 0 && !isOfCell(frames[0])) {
            return Optional.empty();
        }
        try {
            return Optional.ofNullable(thrown.getMessage())
                    .map(text -> text.length() > LONGEST_MESSAGE ? text.substring(0, LONGEST_MESSAGE) + "…" : text);
        } catch (Throwable noMessage) {
            return Optional.empty();
        }
    }

    private static boolean ours(Throwable thrown) {
        if (thrown instanceof SketchException || thrown instanceof MeasureTextException) {
            return true;
        }
        StackTraceElement[] frames = trace(thrown);
        return (thrown instanceof ArithmeticException || thrown instanceof IllegalArgumentException)
                && frames.length > 0
                && frames[0].getClassName().startsWith("org.kerfleaf.");
    }

    private static boolean isOfCell(StackTraceElement frame) {
        return frame.getClassName().startsWith("REPL.");
    }

    private static List<Thrown.Frame> frames(Throwable thrown) {
        return Arrays.stream(trace(thrown))
                .filter(frame -> isOfCell(frame) && frame.getLineNumber() > 0)
                .limit(MOST_FRAMES)
                .map(SharedClass::frame)
                .toList();
    }

    private static StackTraceElement[] trace(Throwable thrown) {
        try {
            return thrown.getStackTrace();
        } catch (Throwable noTrace) {
            return new StackTraceElement[0];
        }
    }
}
