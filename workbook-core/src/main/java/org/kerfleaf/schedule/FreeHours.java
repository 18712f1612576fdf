package org.kerfleaf.schedule;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.Set;

/** Hours free for the work, on each of these days of the week: from a time of day to a later one. */
public record FreeHours(Set<DayOfWeek> days, LocalTime from, LocalTime to) {
    public FreeHours {
        days = Set.copyOf(days);
        if (!from.isBefore(to)) {
            throw new IllegalArgumentException("From %s to %s is no time.".formatted(from, to));
        }
    }
}
