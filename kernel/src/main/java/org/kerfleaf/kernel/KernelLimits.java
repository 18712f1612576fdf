package org.kerfleaf.kernel;

import java.time.Duration;
import org.kerfleaf.sketch.Sketch;

/**
 * How far a run may go.
 *
 * @param time how long one run takes at most; past it the process is ended, the cell that ran is
 *     {@link CellOutcome.Stopped}, and the run is made again without that cell, at most
 *     {@link Kernel#MOST_STOPS} times
 * @param heapMegabytes memory for the values of all cells; past it the cell that asked for more is stopped likewise
 * @param printedBytes how much printed text is kept (UTF-8); the rest is thrown away and a mark says so
 * @param pieces how many placed pieces a sketch has at most; past it there is no sketch but a problem that says so
 */
public record KernelLimits(Duration time, int heapMegabytes, int printedBytes, int pieces) {
    /** Ten seconds, 256 MB, 20 000 bytes of print, 2 000 pieces. */
    public static final KernelLimits DEFAULT =
            new KernelLimits(Duration.ofSeconds(10), 256, 20_000, Sketch.MOST_PIECES);

    /** @throws IllegalArgumentException if a limit leaves nothing, or the heap is below 16 MB */
    public KernelLimits {
        if (time.isNegative() || time.isZero() || heapMegabytes < 16 || printedBytes < 0 || pieces < 1) {
            throw new IllegalArgumentException(
                    "Limits of %s, %d MB, %d bytes and %d pieces; more than no time, 16 MB, 0 bytes and 1 piece are needed."
                            .formatted(time, heapMegabytes, printedBytes, pieces));
        }
    }

    public KernelLimits withTime(Duration most) {
        return new KernelLimits(most, heapMegabytes, printedBytes, pieces);
    }

    public KernelLimits withHeapMegabytes(int most) {
        return new KernelLimits(time, most, printedBytes, pieces);
    }

    public KernelLimits withPrintedBytes(int most) {
        return new KernelLimits(time, heapMegabytes, most, pieces);
    }

    public KernelLimits withPieces(int most) {
        return new KernelLimits(time, heapMegabytes, printedBytes, most);
    }
}
