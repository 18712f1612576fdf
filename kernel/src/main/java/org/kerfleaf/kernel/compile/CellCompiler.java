package org.kerfleaf.kernel.compile;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.kerfleaf.kernel.cell.WorkbookSource;

/**
 * Compiles workbooks, one after the other, on a thread of its own: JShell is not safe on two, and javac needs a deep stack
 * for deeply nested text.
 *
 * <p>The compiled workbook is kept until a source with another text comes. A changed text is compiled anew in a fresh
 * session; compiling only what changed would be done here and nowhere else.
 */
public final class CellCompiler implements AutoCloseable {
    private static final long STACK_BYTES = 64L * 1024 * 1024;

    private final ExecutorService thread = Executors.newSingleThreadExecutor(work -> {
        Thread compiling = new Thread(null, work, "cell compiler", STACK_BYTES);
        compiling.setDaemon(true);
        return compiling;
    });
    private WorkbookSource source;
    private CompiledWorkbook compiled;

    /** Compiles a workbook; what is wrong with its cells is part of the answer. */
    public CompiledWorkbook compile(WorkbookSource wanted) {
        return onThread(() -> {
            if (source == null || !source.sameText(wanted)) {
                try (CompileSession session = new CompileSession()) {
                    compiled = session.compile(wanted);
                }
            }
            source = wanted;
            return compiled;
        });
    }

    /** Opens a session and drops it, so that the first workbook compiles sooner. */
    public void warmUp() {
        thread.execute(() -> new CompileSession().close());
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

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
