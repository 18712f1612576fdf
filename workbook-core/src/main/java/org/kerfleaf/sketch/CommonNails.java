package org.kerfleaf.sketch;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Length;

/** Common nails by their penny: length and diameter (NDS 2018 appendix L, table L4; the diameters were seen in a copy). */
final class CommonNails {
    /** Lengths in quarters of an inch, diameters in thousandths. */
    private record Row(int quarters, int mils) {}

    private static final Map<String, Row> ROWS = new LinkedHashMap<>();

    static {
        ROWS.put("6d", new Row(8, 113));
        ROWS.put("7d", new Row(9, 113));
        ROWS.put("8d", new Row(10, 131));
        ROWS.put("10d", new Row(12, 148));
        ROWS.put("12d", new Row(13, 148));
        ROWS.put("16d", new Row(14, 162));
        ROWS.put("20d", new Row(16, 192));
        ROWS.put("30d", new Row(18, 207));
        ROWS.put("40d", new Row(20, 225));
    }

    private CommonNails() {}

    /** The nail of a penny: {@code 8d}. @throws SketchException for one that is not in the table */
    static Nail of(Origin origin, String penny) {
        Row row = ROWS.get(penny.strip());
        if (row == null) {
            throw new SketchException(
                    "“%s” is no common nail. %s would be right.".formatted(penny, String.join(", ", ROWS.keySet())));
        }
        return Nail.of(
                origin,
                "common nail " + penny.strip(),
                Length.ofSixtyFourths(16L * row.quarters()),
                Optional.of(Length.ofInches(row.mils() / 1000.0)));
    }
}
