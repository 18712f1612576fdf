package org.kerfleaf.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.CellCompiler;
import org.kerfleaf.kernel.compile.CompiledCache;
import org.kerfleaf.kernel.help.CellHelp;
import org.kerfleaf.kernel.help.Completions;
import org.kerfleaf.kernel.help.WordHelp;
import org.kerfleaf.kernel.reach.Reached;
import org.kerfleaf.kernel.reach.Trust;

/**
 * Runs workbooks, one at a time, or one workbook with many sizes at once. It holds a compiler in this process and one child
 * process, which is replaced whenever a run ends it; from the first run on a spare one stands ready. Safe on several
 * threads: a second run waits for the first, many runs go on beside it.
 */
public final class Kernel implements AutoCloseable {
    /** How often one run may be made again without the cell that stopped it. */
    public static final int MOST_STOPS = 2;

    private final KernelLimits limits;
    private final Trust trust;
    private final CellCompiler compiler;
    private final Children children;
    private final Seat seat;
    private final Seats seats;
    private final List<Variants> variants = new ArrayList<>();
    private boolean lasting;
    private volatile CellHelp help;
    private Prepared prepared;
    private boolean closed;

    private Kernel(KernelLimits limits, Trust trust, Launch launch, CellCompiler compiler, boolean lasting) {
        this.limits = limits;
        this.trust = trust;
        this.compiler = compiler;
        this.lasting = lasting;
        this.children = new Children(limits, launch);
        this.seat = new Seat(children, limits);
        this.seats = new Seats(children, limits);
    }

    /** Starts a kernel that runs nothing that reaches for more than the words. */
    public static Kernel start(KernelLimits limits) {
        return start(limits, Trust.WORDS_ONLY);
    }

    /**
     * Starts a kernel; the child process and the compiler get ready while this returns.
     *
     * @param trust asked before a workbook runs that reaches for more than the words
     */
    public static Kernel start(KernelLimits limits, Trust trust) {
        return start(limits, trust, Launch.USUAL);
    }

    static Kernel start(KernelLimits limits, Trust trust, Launch launch) {
        Kernel kernel = new Kernel(limits, trust, launch, new CellCompiler(), true);
        kernel.compiler.warmUp();
        return kernel;
    }

    /**
     * Starts a kernel for a short while, as a command has: it compiles only what the cache does not have, its compiler waits
     * until it is needed, and no spare child process is started for the next run unless one is lost. {@link #stays} makes it one
     * that stays.
     */
    public static Kernel start(KernelLimits limits, Trust trust, CompiledCache cache) {
        return new Kernel(limits, trust, Launch.USUAL, new CellCompiler(cache), false);
    }

    /**
     * Says that more runs and edits will follow: a workbook that came from the cache is compiled beside what else happens, so that
     * its first edit costs no more than a later one, and a spare child process stands ready. Returns at once.
     */
    public synchronized void stays() {
        lasting = true;
        compiler.expectEdits();
        children.keepSpare();
    }

    /**
     * Says what a workbook reaches for beyond the words. It is compiled, and nothing of it runs.
     *
     * @throws IllegalStateException if the kernel is closed
     */
    public synchronized Reached reached(WorkbookSource source) {
        return prepare(source).reached();
    }

    /**
     * Runs a workbook from the top. What was compiled for the last source is used again where the text is the same.
     *
     * @param sizes values being tried, by the label of the size; a label that no size has is a problem of the outcome
     * @return the outcome; where the workbook reaches for more than it may, {@linkplain KernelOutcome#withheld nothing} ran
     * @throws KernelException if the child process cannot be started
     * @throws IllegalStateException if the kernel is closed
     */
    public synchronized KernelOutcome run(WorkbookSource source, Map<String, String> sizes) {
        Prepared book = prepare(source);
        if (!mayRun(book)) {
            return Withheld.outcome(book);
        }
        KernelOutcome outcome = seat.run(book, sizes);
        if (lasting) {
            children.keepSpare();
        }
        return outcome;
    }

    /**
     * Runs a workbook from the top with each of many choices of sizes, several at once, each in a run of its own that knows
     * nothing of the others. The outcomes come in the order asked, while later runs are still going on; there are never
     * more than a few waiting to be taken. A run that fails is an outcome like any other.
     *
     * <p>Close the stream to end what is still running; read to its end it closes itself. It is to be read on one thread,
     * and fails with {@link KernelException} if no child process can be started.
     *
     * @param sizes for each run the values being tried, by the label of the size
     * @throws IllegalStateException if the kernel is closed
     */
    public synchronized Stream<KernelOutcome> variants(WorkbookSource source, List<Map<String, String>> sizes) {
        Prepared book = prepare(source);
        if (!mayRun(book)) {
            return sizes.stream().map(each -> Withheld.outcome(book));
        }
        variants.removeIf(Variants::isOver);
        Variants many = new Variants(book, sizes, seats);
        variants.add(many);
        return many.stream();
    }

    /**
     * What can stand at a place of a cell, as {@link CellHelp#complete} says. It answers while cells run: only compiling makes it
     * wait.
     */
    public Completions complete(WorkbookSource source, int cell, int offset) {
        return compiler.onThread(() -> help().complete(source, cell, offset));
    }

    /** What the word at a place of a cell takes and means, as {@link CellHelp#explain} says. It answers while cells run. */
    public Optional<WordHelp> explain(WorkbookSource source, int cell, int offset) {
        return compiler.onThread(() -> help().explain(source, cell, offset));
    }

    /** What can stand at a place of a live value in prose, as {@link CellHelp#completeLive} says. */
    public Completions completeLive(WorkbookSource source, int live, int offset) {
        return compiler.onThread(() -> help().completeLive(source, live, offset));
    }

    /** What the word at a place of a live value takes and means, as {@link CellHelp#explainLive} says. */
    public Optional<WordHelp> explainLive(WorkbookSource source, int live, int offset) {
        return compiler.onThread(() -> help().explainLive(source, live, offset));
    }

    /** Made when first asked for, on the compiler's thread. */
    private CellHelp help() {
        if (help == null) {
            help = new CellHelp();
        }
        return help;
    }

    private Prepared prepare(WorkbookSource source) {
        if (closed) {
            throw new IllegalStateException("The kernel is closed.");
        }
        if (prepared == null || !prepared.source().equals(source)) {
            prepared = Prepared.of(source, compiler.compile(source), limits);
        }
        return prepared;
    }

    private boolean mayRun(Prepared book) {
        return book.reached().isNothing() || trust.allows(book.reached());
    }

    /** The compiler, for tests that look at what it keeps. */
    CellCompiler compiler() {
        return compiler;
    }

    /** The child process that makes the next run, for tests that end it. */
    Child child() {
        return seat.child();
    }

    /** The child process that would take its place. */
    CompletableFuture<Child> spare() {
        return children.keepSpare();
    }

    /** Ends the child processes and the compiler; when this returns, no process and no folder of the kernel is left. */
    @Override
    public synchronized void close() {
        if (!closed) {
            closed = true;
            compiler.close();
            if (help != null) {
                help.close();
            }
            variants.forEach(Variants::close);
            seat.close();
            children.close();
        }
    }
}
