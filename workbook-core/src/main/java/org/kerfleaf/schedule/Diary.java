package org.kerfleaf.schedule;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Puts work into the hours that are free, one stretch after the other as written, and lets nights count as waiting.
 *
 * <p>A stretch that fits into the longest free hours is not begun where it could not be finished; only a longer one is broken off
 * and gone on with ({@code common practice, no source}: nobody leaves a glue-up half done).
 */
public final class Diary {
    /** After so many days the diary ends, whatever is left. */
    public static final int MOST_DAYS = 1000;

    private final List<FreeHours> free;
    private final LocalDate first;
    private final Duration longest;

    private Diary(List<FreeHours> free, LocalDate first) {
        this.free = free;
        this.first = first;
        longest = free.stream()
                .map(hours -> Duration.between(hours.from(), hours.to()))
                .max(Comparator.naturalOrder())
                .orElse(Duration.ZERO);
    }

    /**
     * The sittings in which the work gets done.
     *
     * @param first the first day on which there may be work
     * @return in the order of time; empty if nothing is free; without what no free hour is left for within {@link #MOST_DAYS}
     */
    public static List<Sitting> of(List<Stretch> stretches, List<FreeHours> free, LocalDate first) {
        return new Diary(free, first).sittings(stretches);
    }

    private List<Sitting> sittings(List<Stretch> stretches) {
        List<Sitting> sittings = new ArrayList<>();
        List<LocalDateTime> ends = new ArrayList<>();
        LocalDateTime now = first.atStartOfDay();
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            for (Stretch.After after : stretch.after()) {
                LocalDateTime ready = ends.get(after.stretch()).plus(after.waiting());
                now = ready.isAfter(now) ? ready : now;
            }
            Duration left = stretch.work();
            while (!left.isZero()) {
                Optional<Slot> slot = slot(now, left);
                if (slot.isEmpty()) {
                    return sittings;
                }
                LocalDateTime from = slot.get().from();
                Duration room = Duration.between(from, slot.get().to());
                Duration done = room.compareTo(left) < 0 ? room : left;
                left = left.minus(done);
                now = from.plus(done);
                sittings.add(new Sitting(stretch.step(), from, now, left.isZero() && isLast(stretches, i)));
            }
            ends.add(now);
        }
        return sittings;
    }

    private static boolean isLast(List<Stretch> stretches, int i) {
        return i + 1 == stretches.size()
                || stretches.get(i + 1).step() != stretches.get(i).step();
    }

    private record Slot(LocalDateTime from, LocalDateTime to) {}

    /** The next free time not before {@code now}, long enough for the work or for all that can be free at once. */
    private Optional<Slot> slot(LocalDateTime now, Duration work) {
        Duration wanted = work.compareTo(longest) < 0 ? work : Duration.ZERO;
        for (LocalDate day = now.toLocalDate(); day.isBefore(first.plusDays(MOST_DAYS)); day = day.plusDays(1)) {
            LocalDate on = day;
            Optional<Slot> found = free.stream()
                    .filter(hours -> hours.days().contains(on.getDayOfWeek()))
                    .map(hours -> new Slot(later(on.atTime(hours.from()), now), on.atTime(hours.to())))
                    .filter(slot -> slot.from().isBefore(slot.to()))
                    .filter(slot -> Duration.between(slot.from(), slot.to()).compareTo(wanted) >= 0)
                    .min(Comparator.comparing(Slot::from));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static LocalDateTime later(LocalDateTime a, LocalDateTime b) {
        return a.isAfter(b) ? a : b;
    }
}
