package org.kerfleaf.kernel;

import java.util.ArrayDeque;
import java.util.Deque;

/** Seats for many runs at once. Those that are given back stay warm: a new process needs hundreds of runs to be as fast. */
final class Seats {
    private final Children children;
    private final KernelLimits limits;
    private final Deque<Seat> idle = new ArrayDeque<>();

    Seats(Children children, KernelLimits limits) {
        this.children = children;
        this.limits = limits;
    }

    synchronized Seat take() {
        idle.removeIf(Seat::isClosed);
        return idle.isEmpty() ? new Seat(children, limits) : idle.pop();
    }

    /** A seat that was closed meanwhile is not kept. */
    synchronized void giveBack(Seat seat) {
        idle.push(seat);
    }
}
