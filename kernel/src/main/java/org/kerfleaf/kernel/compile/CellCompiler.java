package org.kerfleaf.kernel.compile;

import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
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
    private CompileSession session;
    private WorkbookSource source;
    private CompiledWorkbook compiled;

    /** Compiles a workbook; what is wrong with its cells is part of the answer. */
    public CompiledWorkbook compile(WorkbookSource wanted) {
        return onThread(() -> {
            if (source == null || !source.sameText(wanted)) {
                compiled = kept(wanted).orElseGet(() -> anew(wanted));
            }
            source = wanted;
            return compiled;
        });
    }

    private Optional<CompiledWorkbook> kept(WorkbookSource wanted) {
        return Optional.ofNullable(session).flatMap(one -> one.compile(wanted));
    }

    private CompiledWorkbook anew(WorkbookSource wanted) {
        closeSession();
        session = new CompileSession();
        return session.compile(wanted).orElseThrow();
    }

    private void closeSession() {
        if (session != null) {
            session.close();
            session = null;
        }
    }

    /** Opens a session, so that the first workbook compiles sooner. */
    public void warmUp() {
        thread.execute(() -> session = new CompileSession());
    }

    private <T> T onThread(Callable<T> work) {
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
        thread.execute(this::closeSession);
        thread.shutdown();
    }
}
