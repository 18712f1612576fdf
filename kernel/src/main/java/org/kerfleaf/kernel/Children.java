package org.kerfleaf.kernel;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;

/** Starts child processes, keeps one more started than are in use, and ends them all. */
final class Children implements AutoCloseable {
    private final KernelLimits limits;
    private final Launch launch;
    private final Set<Child> living = new LinkedHashSet<>();
    private final List<Thread> working = new ArrayList<>();
    private CompletableFuture<Child> spare;
    private boolean closed;

    Children(KernelLimits limits, Launch launch) {
        this.limits = limits;
        this.launch = launch;
    }

    /** One for whoever asks: the spare, or one that starts now. It fails with {@link KernelException} if it does not start. */
    synchronized CompletableFuture<Child> next() {
        CompletableFuture<Child> next = spare == null ? starting() : spare;
        spare = null;
        return next;
    }

    /** Sees to it that a spare is started, so that a child that is lost is not missed. */
    synchronized CompletableFuture<Child> keepSpare() {
        if (spare == null
                || spare.isCompletedExceptionally()
                || spare.isDone() && !spare.join().isAlive()) {
            spare = starting();
        }
        return spare;
    }

    private CompletableFuture<Child> starting() {
        CompletableFuture<Child> next = new CompletableFuture<>();
        inBackground("starting cells", () -> {
            try {
                next.complete(start());
            } catch (RuntimeException failed) {
                next.completeExceptionally(failed);
            }
        });
        return next;
    }

    private Child start() {
        Child child = Child.start(limits, launch);
        synchronized (this) {
            living.add(child);
            if (closed) {
                end(child);
            }
        }
        try {
            return child.connect();
        } catch (KernelException failed) {
            synchronized (this) {
                living.remove(child);
            }
            throw failed;
        }
    }

    /** Ends a child; returns at once. */
    void end(Child child) {
        inBackground("ending cells", () -> {
            child.close();
            synchronized (this) {
                living.remove(child);
            }
        });
    }

    private synchronized void inBackground(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        working.removeIf(one -> !one.isAlive());
        thread.start();
        working.add(thread);
    }

    /** Ends all, also those that are starting; when this returns, no process and no folder is left. */
    @Override
    public void close() {
        List<Child> all;
        synchronized (this) {
            closed = true;
            all = List.copyOf(living);
        }
        all.forEach(this::end);
        for (Thread one = unfinished(); one != null; one = unfinished()) {
            await(one);
        }
    }

    private synchronized Thread unfinished() {
        working.removeIf(one -> !one.isAlive());
        return working.isEmpty() ? null : working.get(0);
    }

    private static void await(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
