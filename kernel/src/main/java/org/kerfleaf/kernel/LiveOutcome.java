package org.kerfleaf.kernel;

import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.sketch.Live;

/** What became of one live value in prose. */
public sealed interface LiveOutcome {
    /** It has this value. */
    record Value(Live live) implements LiveOutcome {}

    /** It has none, for this reason. */
    record Failed(CellProblem problem) implements LiveOutcome {}
}
