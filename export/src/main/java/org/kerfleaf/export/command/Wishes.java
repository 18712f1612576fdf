package org.kerfleaf.export.command;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.kerfleaf.kernel.KernelLimits;
import org.kerfleaf.measure.LengthUnit;

/**
 * What is asked of a plan beyond what its workbook says.
 *
 * @param sizes values to try, as typed, by the size's label
 * @param unit the unit to print in, empty for the workbook's own
 * @param day the day the plan is made for
 * @param limits how far its cells may go
 */
record Wishes(Map<String, String> sizes, Optional<LengthUnit> unit, LocalDate day, KernelLimits limits) {
    Wishes {
        sizes = Collections.unmodifiableMap(new TreeMap<>(sizes));
    }

    /** Within the usual limits. */
    Wishes(Map<String, String> sizes, Optional<LengthUnit> unit, LocalDate day) {
        this(sizes, unit, day, KernelLimits.DEFAULT);
    }
}
