package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/** How near a wood screw may stand to an edge, an end or its neighbour, in diameters of its shank. */
public enum EdgeDistance {
    /** From a side edge, either way. */
    EDGE("from the edge", 2.5, 2.5),
    /** From an end that is pulled along the grain. */
    END_PULLED("from an end under pull", 15, 10),
    /** From an end that is pressed along the grain. */
    END_PRESSED("from an end under pressure", 10, 5),
    /** Between screws in a row along the grain. */
    IN_ROW_ALONG("in a row along the grain", 15, 10),
    /** Between screws in a row across the grain. */
    IN_ROW_ACROSS("in a row across the grain", 10, 5),
    /** Between rows in line. */
    BETWEEN_ROWS("between rows", 5, 3),
    /** Between staggered rows. */
    BETWEEN_STAGGERED_ROWS("between staggered rows", 2.5, 2.5);

    /** Where the multiples are from. */
    public static final String SOURCE = "NDS commentary, recommended distances for wood screws (from memory)";

    private final String words;
    private final double plain;
    private final double drilled;

    EdgeDistance(String words, double plain, double drilled) {
        this.words = words;
        this.plain = plain;
        this.drilled = drilled;
    }

    /** The least distance for a shank of that diameter; {@code drilled} says whether a pilot hole is drilled first. */
    public Figure<Length> least(Length diameter, boolean drilled) {
        double times = drilled ? this.drilled : plain;
        return Figure.of(
                diameter.times(times),
                words + (drilled ? ", drilled first" : ", not drilled"),
                SOURCE,
                given("diameter", diameter),
                given("times", Ratio.of(times)));
    }
}
