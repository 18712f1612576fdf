package org.kerfleaf.kernel;

/** Cells cannot be run at all, and no cell is to blame: the child process does not start, or ends before it begins. */
public final class KernelException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    KernelException(String message, Throwable cause) {
        super(message, cause);
    }
}
