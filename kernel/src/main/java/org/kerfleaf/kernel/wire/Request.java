package org.kerfleaf.kernel.wire;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.kerfleaf.sketch.Sketch;

/** What the child is asked: to take a workbook, then to run the one it has, as often as wanted. */
public sealed interface Request {
    /**
     * Takes a workbook in place of the one before; answers nothing.
     *
     * @param title the workbook's title
     * @param steps its build steps
     * @param classes all classes of the workbook
     * @param units what to run, in order
     * @param shared the classes that can {@linkplain SharedClass#FORGET forget}
     * @param forgetful whether nothing of a run is left in the cells' classes when these have
     * @param wordsOnly whether classes beyond {@link org.kerfleaf.kernel.reach.ReachList} are kept from the cells
     * @param mostPrinted how many characters of output are kept
     * @param mostPieces how many pieces a sketch may have
     */
    record Load(
            String title,
            List<Sketch.Step> steps,
            List<ClassCode> classes,
            List<Unit> units,
            List<String> shared,
            boolean forgetful,
            boolean wordsOnly,
            int mostPrinted,
            int mostPieces)
            implements Request {}

    /**
     * Makes one run from the top; answers with reports up to {@link Report.Done}.
     *
     * @param sizes values being tried, by label
     * @param without the indexes of units that stopped an earlier run and are left out of this one
     * @param told whether every unit that begins is reported, so that it is known which of them ended the process; else
     *     only the first is, which is faster
     */
    record Run(Map<String, String> sizes, Set<Integer> without, boolean told) implements Request {}

    /** Clears away what no run needs any more, and answers with {@link Report.Weighed}. */
    record Weigh() implements Request {}
}
