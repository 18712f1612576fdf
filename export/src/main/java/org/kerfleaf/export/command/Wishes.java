package org.kerfleaf.export.command;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.kerfleaf.measure.LengthUnit;

/**
 * What is asked of a plan beyond what its workbook says.
 *
 * @param sizes values to try, as typed, by the size's label
 * @param unit the unit to print in, empty for the workbook's own
 * @param day the day the plan is made for
 */
record Wishes(Map<String, String> sizes, Optional<LengthUnit> unit, LocalDate day) {
    Wishes {
        sizes = Collections.unmodifiableMap(new TreeMap<>(sizes));
    }
}
