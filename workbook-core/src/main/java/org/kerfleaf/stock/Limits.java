package org.kerfleaf.stock;

import org.kerfleaf.measure.Length;

/** The least and the most a size may be and still be what its label says. */
public record Limits(Length least, Length most) {
    /** Whether a measured size lies between the two, both allowed. */
    public boolean hold(Length measured) {
        return !measured.isShorterThan(least) && !measured.isLongerThan(most);
    }
}
