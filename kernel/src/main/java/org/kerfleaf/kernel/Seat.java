package org.kerfleaf.kernel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.stream.Collectors;
import org.kerfleaf.kernel.wire.Report;
import org.kerfleaf.kernel.wire.Request;

/** Makes runs, one after the other, in a child of its own, which is replaced whenever a run has spent it. */
final class Seat implements AutoCloseable {
    private final Children children;
    private final KernelLimits limits;
    private CompletableFuture<Child> child;
    private volatile boolean closed;

    Seat(Children children, KernelLimits limits) {
        this.children = children;
        this.limits = limits;
        this.child = children.next();
    }

    /**
     * One of many runs, of which most come to their end: where its process ended is not told, so if it did, the run is made
     * again.
     */
    KernelOutcome runQuickly(Prepared book, Map<String, String> sizes) {
        RunLog log = runOnce(book, sizes, Set.of(), false);
        return log.isDone() ? book.outcome(log, Map.of(), limits, sizes) : run(book, sizes);
    }

    /** One run; a cell that stops it is left out of the next try, {@link Kernel#MOST_STOPS} times. */
    KernelOutcome run(Prepared book, Map<String, String> sizes) {
        Map<Integer, RunLog.Ending> stops = new LinkedHashMap<>();
        RunLog log = runOnce(book, sizes, Set.of(), true);
        while (!log.isDone()) {
            stops.put(log.current().orElseThrow(), log.ending());
            if (stops.size() > Kernel.MOST_STOPS) {
                break;
            }
            log = runOnce(book, sizes, stops.keySet(), true);
        }
        return book.outcome(log, stops, limits, sizes);
    }

    /** One run that began; a child that ends before its first unit is replaced once. */
    private RunLog runOnce(Prepared book, Map<String, String> sizes, Set<Integer> without, boolean told) {
        Request.Run request = new Request.Run(new TreeMap<>(sizes), without, told);
        List<RunLog.Ending> endings = new ArrayList<>();
        while (endings.size() < 2) {
            RunLog log = living().run(book.load(), request, limits.time());
            if (log.isSpent() && !closed) {
                replace();
            }
            if (log.isDone() || log.current().isPresent()) {
                return log;
            }
            endings.add(log.ending());
        }
        throw new KernelException(
                "The process that runs cells ends before the first cell: %s.".formatted(words(endings)), null);
    }

    private static String words(List<RunLog.Ending> endings) {
        return endings.stream()
                .map(one -> "%s, code %d".formatted(one.reason().name().toLowerCase(Locale.ROOT), one.exitCode()))
                .collect(Collectors.joining("; then "));
    }

    private Child living() {
        if (closed) {
            throw new IllegalStateException("Nothing runs here any more.");
        }
        try {
            if (!child.join().isAlive()) {
                replace();
            }
            return child.join();
        } catch (CompletionException failed) {
            // The next run may have more luck.
            child = children.next();
            throw failed.getCause() instanceof KernelException known ? known : failed;
        }
    }

    private void replace() {
        Child old = child.join();
        child = children.next();
        children.keepSpare();
        children.end(old);
    }

    boolean isClosed() {
        return closed;
    }

    /** The child that makes the next run. */
    Child child() {
        return child.join();
    }

    /** What its child holds. */
    Report.Weighed weigh() {
        return living().weigh();
    }

    /** Ends its child, in the middle of a run if there is one; that run then fails. */
    @Override
    public void close() {
        closed = true;
        child.whenComplete((started, failed) -> {
            if (started != null) {
                children.end(started);
            }
        });
    }
}
