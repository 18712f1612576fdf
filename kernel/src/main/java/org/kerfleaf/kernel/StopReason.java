package org.kerfleaf.kernel;

/** Why the process that ran a cell ended in the middle of it. */
public enum StopReason {
    /** It took longer than {@link KernelLimits#time()}. */
    TIME,
    /** It needed more than {@link KernelLimits#heapMegabytes()}. */
    MEMORY,
    /** The cell ended the process itself. */
    EXIT,
    /** Somebody else ended the process. */
    KILLED,
    /** The process broke down. */
    CRASH,
    /** What came out of the process could not be read. */
    UNREADABLE,
    /** Nothing is known of this cell: others stopped the run too often. */
    NOT_REACHED,
    /** Nothing was run: the workbook reaches for more than the words, and its owner has not allowed it. */
    NOT_ALLOWED
}
