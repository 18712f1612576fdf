package org.kerfleaf.kernel;

import java.time.Duration;

/** Says in a maker's words why a cell was stopped. */
final class StopWords {
    private StopWords() {}

    static String of(RunLog.Ending ending, KernelLimits limits) {
        return switch (ending.reason()) {
            case TIME -> "Stopped after %s. A loop that never ends would do that.".formatted(inSeconds(limits.time()));
            case MEMORY ->
                "Stopped: it needs more memory than the %d MB a workbook has. A list that never stops growing would do that."
                        .formatted(limits.heapMegabytes());
            case EXIT ->
                "This ended the process that runs the cells (code %d). A cell does not end the workbook."
                        .formatted(ending.exitCode());
            case KILLED -> "The process that runs the cells was ended from outside while this ran. Run it again.";
            case CRASH -> "The process that runs the cells broke down while this ran.";
            case UNREADABLE -> "What this gave could not be read. It may be too much.";
            case NOT_REACHED, NOT_ALLOWED -> "Not run.";
        };
    }

    private static String inSeconds(Duration time) {
        return time.toMillis() % 1000 == 0 ? time.toSeconds() + " s" : time.toMillis() / 1000.0 + " s";
    }
}
