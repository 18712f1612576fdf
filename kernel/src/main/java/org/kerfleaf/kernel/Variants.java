package org.kerfleaf.kernel;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * Many runs of one workbook, on several seats at once.
 *
 * <p>A child process for each, and not several runs in one process: what a cell leaves in its process (properties, the
 * locale, a full heap, an endless loop) then never meets another run in the middle. Within a child one run follows the
 * other, each with a fresh loader.
 */
final class Variants implements Iterator<KernelOutcome>, AutoCloseable {
    /** More children than this would hold more memory than they save time. */
    private static final int MOST_SEATS = 4;

    /** How many outcomes may be worked out ahead of whoever takes them. */
    private static final int AHEAD = 64;

    private final Prepared book;
    private final List<Map<String, String>> sizes;
    private final List<Seat> seats = new ArrayList<>();
    private final Seats all;
    private final List<Thread> threads = new ArrayList<>();
    private final Map<Integer, KernelOutcome> ready = new HashMap<>();
    private RuntimeException failed;
    private int asked;
    private int taken;
    private boolean over;

    Variants(Prepared book, List<Map<String, String>> sizes, Seats all) {
        this.book = book;
        this.all = all;
        this.sizes = List.copyOf(sizes);
        int many = Math.min(Math.min(MOST_SEATS, Runtime.getRuntime().availableProcessors()), sizes.size());
        for (int i = 0; i < many; i++) {
            Seat seat = all.take();
            Thread thread = new Thread(() -> work(seat), "variants");
            thread.setDaemon(true);
            seats.add(seat);
            threads.add(thread);
        }
        threads.forEach(Thread::start);
    }

    Stream<KernelOutcome> stream() {
        int kind = Spliterator.ORDERED | Spliterator.NONNULL | Spliterator.IMMUTABLE;
        return StreamSupport.stream(Spliterators.spliterator(this, sizes.size(), kind), false)
                .onClose(this::close);
    }

    private void work(Seat seat) {
        try {
            int next = ask(seat);
            while (next >= 0) {
                next = answer(next, seat.runQuickly(book, sizes.get(next)), seat);
            }
        } catch (RuntimeException cannotRun) {
            fail(cannotRun);
        } finally {
            leave(seat);
        }
    }

    // From here on closing these runs does not close the seat.
    private synchronized void leave(Seat seat) {
        if (seats.remove(seat)) {
            all.giveBack(seat);
        }
    }

    private synchronized int ask(Seat seat) {
        while (!over && asked < sizes.size() && asked >= taken + AHEAD) {
            await();
        }
        if (!over && asked < sizes.size()) {
            return asked++;
        }
        leave(seat);
        return -1;
    }

    // In one with asking: whoever takes the last outcome and closes must find no seat that has nothing more to do.
    private synchronized int answer(int which, KernelOutcome outcome, Seat seat) {
        ready.put(which, outcome);
        notifyAll();
        return ask(seat);
    }

    private synchronized void fail(RuntimeException why) {
        if (!over && failed == null) {
            failed = why;
        }
        over = true;
        notifyAll();
    }

    @Override
    public synchronized boolean hasNext() {
        return taken < sizes.size();
    }

    /** The next outcome in the order asked. @throws IllegalStateException if it was closed before */
    @Override
    public synchronized KernelOutcome next() {
        if (!hasNext()) {
            throw new NoSuchElementException("All %d outcomes are taken.".formatted(sizes.size()));
        }
        while (!ready.containsKey(taken) && !over) {
            await();
        }
        KernelOutcome outcome = ready.remove(taken);
        if (outcome == null) {
            throw failed == null ? new IllegalStateException("The runs were ended after %d.".formatted(taken)) : failed;
        }
        taken++;
        notifyAll();
        return outcome;
    }

    private void await() {
        try {
            wait();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            over = true;
        }
    }

    synchronized boolean isOver() {
        return over || asked >= sizes.size();
    }

    /** Ends what is running, and waits until it has. */
    @Override
    public void close() {
        synchronized (this) {
            over = true;
            notifyAll();
            seats.forEach(Seat::close);
            seats.clear();
        }
        for (Thread thread : threads) {
            try {
                thread.join();
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
