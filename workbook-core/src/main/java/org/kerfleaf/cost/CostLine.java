package org.kerfleaf.cost;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/**
 * One thing to buy.
 *
 * @param department where it is found
 * @param what its name: {@code exterior plywood}
 * @param detail size as sold and what it is for: {@code 48 x 96 in, sold as 3/4 in}
 * @param packs how many sheets, boards, boxes, cans or pieces to buy
 * @param share how much of what is bought the build uses, from 0 to 1, if that can be said
 * @param each price of one, empty if not known
 */
public record CostLine(
        Department department,
        String what,
        String detail,
        Figure<Integer> packs,
        Optional<Figure<Ratio>> share,
        Optional<Money> each) {

    /** Packs times price, empty if the price is not known. */
    public Optional<Money> bought() {
        return each.map(price -> price.multipliedBy(packs.value()));
    }
}
