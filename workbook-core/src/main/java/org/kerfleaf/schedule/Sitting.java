package org.kerfleaf.schedule;

import java.time.LocalDateTime;

/**
 * Work on a step on one day.
 *
 * @param step its number
 * @param from when it begins
 * @param to when it ends, the same day
 * @param ends whether the step is done with it
 */
public record Sitting(int step, LocalDateTime from, LocalDateTime to, boolean ends) {}
