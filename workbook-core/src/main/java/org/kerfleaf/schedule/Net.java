package org.kerfleaf.schedule;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The earliest and latest times of stretches of work, if there are hands enough for all that may go on at once.
 *
 * <p>One pass down the list and one up, since what comes first stands further up: earliest start = the latest of (earliest end of
 * what comes first + wait); latest end = the earliest of (latest start of what comes next − wait). Slack is latest start − earliest
 * start; what has none is critical. Source: critical path method, Kelley and Walker (1959), from memory; the figures of facts 13
 * are its tests.
 */
public final class Net {
    private final List<Times> times;
    private final Duration finish;
    private final Duration ready;

    /**
     * When one stretch can be done.
     *
     * @param start the earliest
     * @param end the earliest
     * @param latest the latest start that delays nothing at the end
     * @param free how much later it may start and delay nothing at all
     */
    public record Times(Duration start, Duration end, Duration latest, Duration free) {
        /** How much later it may start without a later end of it all. */
        public Duration slack() {
            return latest.minus(start);
        }

        /** Whether a delay of it delays the end. */
        public boolean critical() {
            return slack().isZero();
        }
    }

    private Net(List<Times> times, Duration finish, Duration ready) {
        this.times = List.copyOf(times);
        this.finish = finish;
        this.ready = ready;
    }

    /** @throws IllegalArgumentException if a stretch comes after one that does not stand further up */
    public static Net of(List<Stretch> stretches) {
        int many = stretches.size();
        Duration[] start = new Duration[many];
        Duration[] end = new Duration[many];
        Duration finish = Duration.ZERO;
        Duration ready = Duration.ZERO;
        for (int i = 0; i < many; i++) {
            start[i] = Duration.ZERO;
            for (Stretch.After after : stretches.get(i).after()) {
                if (after.stretch() >= i) {
                    throw new IllegalArgumentException("Stretch %d comes after stretch %d, which is not further up."
                            .formatted(i, after.stretch()));
                }
                start[i] = later(start[i], end[after.stretch()].plus(after.waiting()));
            }
            end[i] = start[i].plus(stretches.get(i).work());
            finish = later(finish, end[i]);
            ready = later(ready, end[i].plus(stretches.get(i).rest()));
        }
        return new Net(times(stretches, start, end, finish), finish, ready);
    }

    private static List<Times> times(List<Stretch> stretches, Duration[] start, Duration[] end, Duration finish) {
        int many = stretches.size();
        Duration[] latestEnd = new Duration[many];
        Duration[] nextStart = new Duration[many];
        Arrays.fill(latestEnd, finish);
        Arrays.fill(nextStart, finish);
        List<Times> times = new ArrayList<>(many);
        for (int i = many - 1; i >= 0; i--) {
            Duration latest = latestEnd[i].minus(stretches.get(i).work());
            for (Stretch.After after : stretches.get(i).after()) {
                int first = after.stretch();
                latestEnd[first] = earlier(latestEnd[first], latest.minus(after.waiting()));
                nextStart[first] = earlier(nextStart[first], start[i].minus(after.waiting()));
            }
            times.add(0, new Times(start[i], end[i], latest, nextStart[i].minus(end[i])));
        }
        return times;
    }

    /** The times of each stretch, in the order given. */
    public List<Times> times() {
        return times;
    }

    /** When the last work is done. */
    public Duration finish() {
        return finish;
    }

    /** When everything may be used: the last work is done and nothing rests any more. */
    public Duration ready() {
        return ready;
    }

    private static Duration later(Duration a, Duration b) {
        return a.compareTo(b) >= 0 ? a : b;
    }

    private static Duration earlier(Duration a, Duration b) {
        return a.compareTo(b) <= 0 ? a : b;
    }
}
