package org.kerfleaf.kernel.compile;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.kerfleaf.kernel.cell.WorkbookSource;

/**
 * Compiles workbooks, one after the other, on a thread of its own: JShell is not safe on two, and javac needs a deep stack
 * for deeply nested text.
 *
 * <p>The compiled workbook is kept until a source with another text comes. Of a changed text only that is compiled which
 * changed, and what its names touch; where that cannot be told apart, all of it in a new session.
 */
public final class CellCompiler implements AutoCloseable {
    private static final long STACK_BYTES = 64L * 1024 * 1024;

    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread compiling = new Thread(null, work, "cell compiler", STACK_BYTES);
        compiling.setDaemon(true);
        return compiling;
    });
    private final Optional<CompiledCache> cache;
    private volatile CompileSession session;
    private WorkbookSource source;
    private CompiledWorkbook compiled;
    private boolean kept = true;

    /** Compiles everything itself. */
    public CellCompiler() {
        this.cache = Optional.empty();
    }

    /** Looks first whether a workbook was compiled before. */
    public CellCompiler(CompiledCache cache) {
        this.cache = Optional.of(cache);
    }

    /** Compiles a workbook; what is wrong with its cells is part of the answer. */
    public CompiledWorkbook compile(WorkbookSource wanted) {
        return onThread(() -> {
            if (source == null || !source.sameText(wanted)) {
                compiled = compiled(wanted);
            }
            source = wanted;
            return compiled;
        });
    }

    private CompiledWorkbook compiled(WorkbookSource wanted) {
        try {
            return session == null ? opened(wanted) : edited(wanted);
        } catch (RuntimeException failed) {
            // What is half done is no base for the next edit.
            closeSession();
            throw failed;
        }
    }

    private CompiledWorkbook opened(WorkbookSource wanted) {
        Optional<CompiledWorkbook> found = cache.flatMap(known -> known.find(wanted));
        if (found.isPresent()) {
            return found.get();
        }
        thread.execute(this::keep);
        return anew(wanted);
    }

    private CompiledWorkbook edited(WorkbookSource wanted) {
        kept = false;
        return session.compile(wanted).orElseGet(() -> anew(wanted));
    }

    private CompiledWorkbook anew(WorkbookSource wanted) {
        kept = false;
        closeSession();
        session = new CompileSession();
        return session.compile(wanted).orElseThrow();
    }

    // Not after every edit, but after the first compilation and at the end.
    private void keep() {
        if (!kept) {
            kept = true;
            cache.ifPresent(known -> known.keep(source, compiled));
        }
    }

    private void closeSession() {
        if (session != null) {
            session.close();
            session = null;
        }
    }

    /** Whether there is a session, for tests that look whether one was needed. */
    boolean isStarted() {
        return session != null;
    }

    /** How many pieces the session has evaluated, for tests that look how much an edit costs. */
    int evaluations() {
        return session.evaluations();
    }

    /** Opens a session, so that the first workbook compiles sooner. */
    public void warmUp() {
        thread.execute(() -> session = new CompileSession());
    }

    /**
     * Compiles what came from the cache, beside whatever else happens. What is run stays what came from the cache until the text
     * changes.
     */
    public void expectEdits() {
        thread.execute(() -> {
            if (session == null) {
                session = new CompileSession();
                if (source != null) {
                    session.compile(source);
                }
            }
        });
    }

    /** Does other work on this thread, between two compilations. */
    public <T> T onThread(Callable<T> work) {
        try {
            return thread.submit(work).get();
        } catch (ExecutionException failed) {
            throw new IllegalStateException("The compiler of cells failed.", failed.getCause());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("Interrupted while cells were compiled.", interrupted);
        }
    }

    /** Ends the compiler; what it compiled last is kept first. */
    @Override
    public void close() {
        thread.execute(this::keep);
        thread.execute(this::closeSession);
        thread.shutdown();
        try {
            if (!thread.awaitTermination(5, TimeUnit.SECONDS)) {
                thread.shutdownNow();
            }
        } catch (InterruptedException interrupted) {
            thread.shutdownNow();
            Thread.currentThread().interrupt();
        }
    }
}
