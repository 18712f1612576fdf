package org.kerfleaf.kernel;

import java.time.Duration;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** Does something once, when a time is over; can be set to another time, and stopped, until then. */
final class Alarm {
    private static final ScheduledThreadPoolExecutor CLOCK = clock();

    private final Runnable work;
    private ScheduledFuture<?> next;
    private boolean rang;

    Alarm(Runnable work) {
        this.work = work;
    }

    private static ScheduledThreadPoolExecutor clock() {
        ScheduledThreadPoolExecutor clock = new ScheduledThreadPoolExecutor(1, ring -> {
            Thread thread = new Thread(ring, "time limits of cells");
            thread.setDaemon(true);
            return thread;
        });
        // A thousand runs a second would else leave as many alarms behind.
        clock.setRemoveOnCancelPolicy(true);
        return clock;
    }

    /** Rings so much later than now, and not when it was to ring before. */
    synchronized void set(Duration later) {
        stop();
        next = CLOCK.schedule(this::ring, later.toNanos(), TimeUnit.NANOSECONDS);
    }

    private void ring() {
        synchronized (this) {
            rang = true;
        }
        work.run();
    }

    synchronized void stop() {
        if (next != null) {
            next.cancel(false);
        }
    }

    synchronized boolean rang() {
        return rang;
    }
}
