package org.kerfleaf.kernel.wire;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.kerfleaf.sketch.Sketch;

/**
 * Asks the child for one run from the top.
 *
 * @param title the workbook's title
 * @param steps its build steps
 * @param sizes values being tried, by label
 * @param classes all classes of the workbook
 * @param units what to run, in order
 * @param without the indexes of units that stopped an earlier run and are left out of this one
 * @param mostPrinted how many characters of output are kept
 * @param mostPieces how many pieces a sketch may have
 */
public record Request(
        String title,
        List<Sketch.Step> steps,
        Map<String, String> sizes,
        List<ClassCode> classes,
        List<Unit> units,
        Set<Integer> without,
        int mostPrinted,
        int mostPieces) {}
