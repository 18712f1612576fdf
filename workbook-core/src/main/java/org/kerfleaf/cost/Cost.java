package org.kerfleaf.cost;

import static org.kerfleaf.reason.Given.given;

import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.reason.Figure;

/**
 * What the build costs.
 *
 * @param lines everything to buy, by department
 * @param bought the sum of packs as bought; a line without a price is left out and named in {@code notKnown}. Not known if no
 *     line has a price: a sum nothing is in would be read as free of charge
 * @param used the sum of what is used of them; not known if no line has both a price and a share
 * @param notKnown names of the lines whose price or share is not known
 * @param compare bought kits, each against one kit of this build
 * @param kits how many are made of what is bought, 1 or more
 */
public record Cost(
        List<CostLine> lines,
        Optional<Figure<Money>> bought,
        Optional<Figure<Money>> used,
        List<String> notKnown,
        List<KitComparison> compare,
        int kits) {

    /** What one kit costs of what is bought; the same as all of it where one is made. */
    public Optional<Figure<Money>> boughtEach() {
        return bought.map(all -> oneOf(all, kits));
    }

    /** What one kit costs of what is used. */
    public Optional<Figure<Money>> usedEach() {
        return used.map(all -> oneOf(all, kits));
    }

    static Figure<Money> oneOf(Figure<Money> all, int kits) {
        return kits == 1
                ? all
                : Figure.of(
                        all.value().dividedBy(kits, RoundingMode.HALF_UP),
                        "the sum / kits",
                        "arithmetic",
                        given("sum", all.value()),
                        given("kits", kits));
    }

    /**
     * A bought kit against this build.
     *
     * @param name the kit
     * @param price of the kit
     * @param freight to the door, if it has any
     * @param total price and freight
     * @param difference the kit's total less the build as bought: positive if building is cheaper; not known where that is
     * @param lacks what the kit leaves out and the build has, so the two are not yet like for like
     * @param likeForLike both with the same things; empty where the price of what the kit lacks is not known
     */
    public record KitComparison(
            String name,
            Money price,
            Optional<Money> freight,
            Figure<Money> total,
            Optional<Figure<Money>> difference,
            List<String> lacks,
            Optional<LikeForLike> likeForLike) {

        /** The same, set against this build like for like. */
        public KitComparison with(Optional<LikeForLike> both) {
            return new KitComparison(name, price, freight, total, difference, lacks, both);
        }
    }
}
