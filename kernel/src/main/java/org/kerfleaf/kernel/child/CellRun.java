package org.kerfleaf.kernel.child;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kerfleaf.kernel.wire.Channel;
import org.kerfleaf.kernel.wire.FrameTooLongException;
import org.kerfleaf.kernel.wire.Report;
import org.kerfleaf.kernel.wire.Request;
import org.kerfleaf.kernel.wire.Unit;
import org.kerfleaf.sketch.Live;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Problem;
import org.kerfleaf.sketch.SketchRun;
import org.kerfleaf.words.Gathering;

/** One run of a workbook from the top, on a thread of its own. A unit that fails costs only what needs it. */
final class CellRun implements Runnable {
    /** How many things may be declared for each piece that may be placed; far more than any build needs. */
    private static final int THINGS_PER_PIECE = 10;

    private static final String TOO_MUCH =
            "The cells say more than a sketch can hold. A very long text in a name would do that.";

    /** How many characters of a live value are shown; far more than a line of prose. */
    private static final int LONGEST_TEXT = 10_000;

    private final Request.Load book;
    private final Channel channel;
    private final Printed printed;
    private final PrintStream out;
    private final CellClasses classes;
    private final SketchRun run;
    private final Set<Integer> failed;
    private final Map<Integer, Object> returned = new HashMap<>();
    private final boolean everyUnit;
    private boolean told = true;
    private volatile boolean threw;

    /** @param classes those of the workbook, in which nothing has run yet or all is forgotten */
    CellRun(CellClasses classes, Request.Run request, Channel channel) {
        this.classes = classes;
        this.book = classes.book();
        this.channel = channel;
        this.printed = new Printed(book.mostPrinted());
        this.out = printed.stream();
        this.run = new SketchRun(request.sizes());
        this.failed = new HashSet<>(request.without());
        this.everyUnit = request.told();
    }

    @Override
    public void run() {
        Set<Thread> before = threads();
        Thread.currentThread().setContextClassLoader(classes.loader());
        try {
            run.doing(() -> {
                runAll();
                return null;
            });
            report(new Report.Done(printed.take(), leftThreads(before)));
        } catch (UncheckedIOException otherEndIsGone) {
            Runtime.getRuntime().halt(0);
        } catch (Throwable ourOwnSlip) {
            // Else the other end would wait out its time and blame the last cell.
            Runtime.getRuntime().halt(ChildMain.BROKEN);
        }
    }

    private static boolean leftThreads(Set<Thread> before) {
        return threads().stream().anyMatch(thread -> !before.contains(thread));
    }

    // Asking for all stack traces would say the same, at a hundred times the cost.
    private static Set<Thread> threads() {
        ThreadGroup all = Thread.currentThread().getThreadGroup();
        while (all.getParent() != null) {
            all = all.getParent();
        }
        Thread[] found = new Thread[all.activeCount() + 16];
        return new HashSet<>(Arrays.asList(found).subList(0, all.enumerate(found)));
    }

    private void runAll() {
        book.units().stream().filter(unit -> unit.value() != Unit.Value.PROSE).forEach(this::runCell);
        gather();
        book.units().stream().filter(unit -> unit.value() == Unit.Value.PROSE).forEach(this::runLive);
    }

    private void runCell(Unit unit) {
        if (canRun(unit) && unit.invoked()) {
            begin(unit);
            attempt(unit, () -> {
                Object value = classes.invoke(unit);
                if (unit.value() == Unit.Value.RETURNED) {
                    returned.put(unit.index(), value);
                }
            });
        }
    }

    private void runLive(Unit unit) {
        if (canRun(unit)) {
            begin(unit);
            attempt(unit, () -> report(new Report.Said(unit.index(), shown(classes.invoke(unit)))));
        }
    }

    private static Live shown(Object value) {
        Live live = Live.of(value);
        return live instanceof Live.OfText words && words.text().length() > LONGEST_TEXT
                ? new Live.OfText(words.text().substring(0, LONGEST_TEXT) + "…")
                : live;
    }

    private boolean canRun(Unit unit) {
        if (failed.contains(unit.index())) {
            return false;
        }
        Optional<Integer> missing =
                unit.needs().stream().filter(failed::contains).findFirst();
        missing.ifPresent(needs -> {
            failed.add(unit.index());
            report(new Report.Skipped(unit.index(), needs));
        });
        return missing.isEmpty();
    }

    private void begin(Unit unit) {
        run.at(unit.cell(), unit.line(), unit.step());
        // A cell before this one may have taken them away.
        System.setOut(out);
        System.setErr(out);
        if (told) {
            report(new Report.Began(unit.index(), printed.take()));
            told = everyUnit;
        }
    }

    private void gather() {
        Values values = new Values(book.mostPieces() * THINGS_PER_PIECE);
        for (Unit unit : book.units()) {
            boolean valued = unit.value() == Unit.Value.FIELD || unit.value() == Unit.Value.RETURNED;
            if (valued && !failed.contains(unit.index())) {
                attempt(unit, () -> {
                    Object value = unit.value() == Unit.Value.FIELD ? classes.field(unit) : returned.get(unit.index());
                    if (!Values.isPlain(value)) {
                        begin(unit);
                    }
                    values.add(value);
                });
            }
        }
        returned.clear();
        Gathering.Gathered gathered = Gathering.gather(book.title(), book.steps(), values.found());
        try {
            send(bounded(gathered));
        } catch (FrameTooLongException tooMuch) {
            report(new Report.Gathered(Optional.empty(), List.of(new Problem(Origin.NOWHERE, TOO_MUCH))));
        }
    }

    private Report bounded(Gathering.Gathered gathered) {
        long pieces = gathered.sketch().all(Placing.class).stream()
                .mapToLong(Placing::count)
                .sum();
        if (pieces <= book.mostPieces()) {
            return new Report.Gathered(Optional.of(gathered.sketch()), gathered.problems());
        }
        String words = "%d pieces are placed; a workbook holds %d at most.".formatted(pieces, book.mostPieces());
        return new Report.Gathered(Optional.empty(), List.of(new Problem(Origin.NOWHERE, words)));
    }

    private interface Work {
        void run() throws Throwable;
    }

    private void attempt(Unit unit, Work work) {
        try {
            work.run();
        } catch (UncheckedIOException otherEndIsGone) {
            if (otherEndIsGone.getCause() instanceof ReportFailed) {
                throw otherEndIsGone;
            }
            threw(unit, otherEndIsGone);
        } catch (Throwable thrown) {
            threw(unit, thrown);
        }
    }

    /** Whether anything was thrown; to be asked when the run is over. */
    boolean threw() {
        return threw;
    }

    private void threw(Unit unit, Throwable thrown) {
        threw = true;
        failed.add(unit.index());
        report(new Report.Threw(unit.index(), Throwns.of(thrown)));
    }

    /** The connection broke, which is not the cell's doing. */
    private static final class ReportFailed extends IOException {
        private static final long serialVersionUID = 1L;

        ReportFailed(IOException cause) {
            super(cause);
        }
    }

    private void report(Report report) {
        try {
            send(report);
        } catch (FrameTooLongException cannotBe) {
            throw new IllegalStateException("A report that is too long.", cannotBe);
        }
    }

    private void send(Report report) throws FrameTooLongException {
        try {
            channel.send(report);
        } catch (FrameTooLongException tooLong) {
            throw tooLong;
        } catch (IOException gone) {
            throw new UncheckedIOException(new ReportFailed(gone));
        }
    }
}
