package org.kerfleaf.kernel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.CellCompiler;
import org.kerfleaf.kernel.compile.CompiledCache;
import org.kerfleaf.kernel.compile.CompiledWorkbook;
import org.kerfleaf.kernel.help.CellHelp;
import org.kerfleaf.kernel.help.Completions;
import org.kerfleaf.kernel.help.WordHelp;
import org.kerfleaf.kernel.wire.Request;

/**
 * Runs workbooks, one at a time. It holds a compiler in this process and one child process, which is replaced whenever a
 * run ends it; the replacement starts at once. Safe on several threads: a second run waits for the first.
 */
public final class Kernel implements AutoCloseable {
    /** How often one run may be made again without the cell that stopped it. */
    public static final int MOST_STOPS = 2;

    private final KernelLimits limits;
    private final CellCompiler compiler;
    private volatile CellHelp help;
    private final List<Thread> replacing = new ArrayList<>();
    private CompletableFuture<Child> child;
    private boolean closed;

    private Kernel(KernelLimits limits, CellCompiler compiler) {
        this.limits = limits;
        this.compiler = compiler;
    }

    /** Starts a kernel; the child process and the compiler get ready while this returns. */
    public static Kernel start(KernelLimits limits) {
        Kernel kernel = new Kernel(limits, new CellCompiler());
        kernel.compiler.warmUp();
        kernel.replaceChild();
        return kernel;
    }

    /** Starts a kernel that compiles only what the cache does not have; its compiler waits until it is needed. */
    public static Kernel start(KernelLimits limits, CompiledCache cache) {
        Kernel kernel = new Kernel(limits, new CellCompiler(cache));
        kernel.replaceChild();
        return kernel;
    }

    /**
     * Runs a workbook from the top. What was compiled for the last source is used again where the text is the same.
     *
     * @param sizes values being tried, by the label of the size; a label that no size has is a problem of the outcome
     * @throws KernelException if the child process cannot be started
     * @throws IllegalStateException if the kernel is closed
     */
    public synchronized KernelOutcome run(WorkbookSource source, Map<String, String> sizes) {
        if (closed) {
            throw new IllegalStateException("The kernel is closed.");
        }
        CompiledWorkbook compiled = compiler.compile(source);
        Map<Integer, RunLog.Ending> stops = new LinkedHashMap<>();
        RunLog log = runOnce(source, sizes, compiled, Set.of());
        while (!log.isDone()) {
            stops.put(log.current().orElseThrow(), log.ending());
            if (stops.size() > MOST_STOPS) {
                break;
            }
            log = runOnce(source, sizes, compiled, stops.keySet());
        }
        return new Outcomes(source, compiled, log, stops, limits).collect(sizes);
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

    /** Made when first asked for, on the compiler's thread. */
    private CellHelp help() {
        if (help == null) {
            help = new CellHelp();
        }
        return help;
    }

    /** One run that began; a child that ends before its first unit is replaced once. */
    private RunLog runOnce(
            WorkbookSource source, Map<String, String> sizes, CompiledWorkbook compiled, Set<Integer> without) {
        Request request = new Request(
                source.title(),
                source.steps(),
                new TreeMap<>(sizes),
                compiled.classes(),
                compiled.runnable(),
                without,
                limits.printedBytes(),
                limits.pieces());
        List<RunLog.Ending> endings = new ArrayList<>();
        while (endings.size() < 2) {
            RunLog log = takeChild().run(request, limits.time());
            if (log.isSpent()) {
                replaceChild();
            }
            if (log.isDone() || log.current().isPresent()) {
                return log;
            }
            endings.add(log.ending());
        }
        throw new KernelException("The process that runs cells ends before the first cell: " + endings + ".", null);
    }

    private Child takeChild() {
        try {
            if (!child.join().isAlive()) {
                replaceChild();
            }
            return child.join();
        } catch (CompletionException failed) {
            replaceChild();
            if (failed.getCause() instanceof KernelException known) {
                throw known;
            }
            throw failed;
        }
    }

    private void replaceChild() {
        CompletableFuture<Child> old = child;
        child = new CompletableFuture<>();
        CompletableFuture<Child> next = child;
        Thread starting = new Thread(() -> start(old, next), "starting cells");
        starting.setDaemon(true);
        replacing.removeIf(thread -> !thread.isAlive());
        replacing.add(starting);
        starting.start();
    }

    private void start(CompletableFuture<Child> old, CompletableFuture<Child> next) {
        try {
            next.complete(Child.start(limits));
        } catch (RuntimeException failed) {
            next.completeExceptionally(failed);
        }
        end(old);
    }

    private static void end(CompletableFuture<Child> old) {
        if (old != null) {
            try {
                old.join().close();
            } catch (CompletionException neverStarted) {
                // Then there is nothing to end.
            }
        }
    }

    /** The compiler, for tests that compile without running. */
    CellCompiler compiler() {
        return compiler;
    }

    /** The child process that makes the next run, for tests that end it. */
    Child child() {
        return child.join();
    }

    /** Ends the child process and the compiler; when this returns, no process and no folder of the kernel is left. */
    @Override
    public synchronized void close() {
        if (!closed) {
            closed = true;
            compiler.close();
            if (help != null) {
                help.close();
            }
            end(child);
            replacing.forEach(Kernel::await);
        }
    }

    private static void await(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
