package org.kerfleaf.schedule;

import java.time.Duration;
import java.util.List;

/**
 * Work that waiting does not interrupt: a step, or one coat of a step with several.
 *
 * @param step the number of the build step it is of
 * @param work how long it takes, 0 or more
 * @param after what must come first; only stretches further up, so that there is no ring
 * @param rest how long it then needs until it may be used, 0 or more
 */
public record Stretch(int step, Duration work, List<After> after, Duration rest) {
    public Stretch {
        after = List.copyOf(after);
    }

    /**
     * What must come first.
     *
     * @param stretch its place in the list, from 0
     * @param waiting how long to wait from its end, 0 or more: elapsed time, not work
     */
    public record After(int stretch, Duration waiting) {}
}
