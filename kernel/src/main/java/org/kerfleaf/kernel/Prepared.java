package org.kerfleaf.kernel;

import java.util.Map;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.kernel.compile.CompiledWorkbook;
import org.kerfleaf.kernel.compile.Joined;
import org.kerfleaf.kernel.compile.ReachScan;
import org.kerfleaf.kernel.reach.Reached;
import org.kerfleaf.kernel.wire.Request;

/**
 * A workbook ready to run.
 *
 * @param load what a child is given of it, once
 */
record Prepared(WorkbookSource source, CompiledWorkbook compiled, Reached reached, Request.Load load) {
    static Prepared of(WorkbookSource source, CompiledWorkbook compiled, KernelLimits limits) {
        Reached reached = ReachScan.of(compiled);
        Joined joined = Joined.of(compiled);
        Request.Load load = new Request.Load(
                source.title(),
                source.steps(),
                joined.classes(),
                joined.units(),
                joined.shared(),
                joined.forgetful(),
                reached.isNothing(),
                limits.printedBytes(),
                limits.pieces());
        return new Prepared(source, compiled, reached, load);
    }

    KernelOutcome outcome(
            RunLog log, Map<Integer, RunLog.Ending> stops, KernelLimits limits, Map<String, String> sizes) {
        return new Outcomes(source, compiled, log, stops, limits).collect(sizes);
    }
}
