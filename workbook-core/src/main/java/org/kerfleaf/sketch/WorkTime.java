package org.kerfleaf.sketch;

import java.time.Duration;

/** How long the step takes that this is said in. @group the work */
public record WorkTime(Origin origin, Duration work) implements Declaration {
    /** Reads {@code 3 h}, {@code 25 min}, {@code 1 h 30 min}. @throws SketchException if it is no time */
    public static WorkTime of(String text) {
        return new WorkTime(SketchRun.current().next(), Times.of(text));
    }
}
