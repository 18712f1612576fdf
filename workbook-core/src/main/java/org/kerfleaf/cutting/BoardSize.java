package org.kerfleaf.cutting;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/**
 * A board as it can be had.
 *
 * @param stock the stock's name
 * @param length as sold
 * @param trim cut off once at each end before measuring; may be zero
 * @param kerf the width of every saw cut
 * @param price of one, if known
 */
public record BoardSize(String stock, Length length, Length trim, Length kerf, Optional<Money> price) {
    /** The length left after trimming both ends. */
    public Length usable() {
        return length.minus(trim.times(2));
    }
}
