package org.kerfleaf.cost;

import static org.kerfleaf.reason.Given.given;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.cost.Cost.KitComparison;
import org.kerfleaf.reason.Figure;

/**
 * A bought kit and this build holding the same things, and what the difference pays for.
 *
 * @param lacked what buying the things costs that the kit leaves out, at this build's prices, in whole packs
 * @param total kit, freight and those things
 * @param asBought that total less this build's packs as bought; more than 0: building is cheaper
 * @param asUsed the same against what is used of the packs; not known where that is
 * @param tools what the difference as bought pays for
 */
public record LikeForLike(
        Figure<Money> lacked,
        Figure<Money> total,
        Figure<Money> asBought,
        Optional<Figure<Money>> asUsed,
        List<ToolPaid> tools) {
    private static final String ARITHMETIC = "arithmetic";

    public LikeForLike {
        tools = List.copyOf(tools);
    }

    /**
     * A tool against the difference.
     *
     * @param builds how many must be built instead of bought until it is paid for; empty if building saves nothing
     */
    public record ToolPaid(String name, Money price, Optional<Figure<Integer>> builds) {}

    /** A tool and its price. */
    public record Tool(String name, Money price) {}

    /** The comparison; empty where the build has no sum. */
    public static Optional<LikeForLike> of(KitComparison kit, Cost cost, Money lacked, List<Tool> tools) {
        return cost.boughtEach().map(Figure::value).map(bought -> {
            Money total = kit.total().value().plus(lacked);
            Figure<Money> asBought = difference(total, bought, "materials as bought");
            return new LikeForLike(
                    Figure.of(
                            lacked,
                            "this build's packs of what the kit leaves out",
                            ARITHMETIC,
                            given("left out", kit.lacks().isEmpty() ? "nothing" : String.join(", ", kit.lacks()))),
                    Figure.of(
                            total,
                            "kit with freight + what it leaves out",
                            ARITHMETIC,
                            given("kit with freight", kit.total().value()),
                            given("left out", lacked)),
                    asBought,
                    cost.usedEach().map(used -> difference(total, used.value(), "materials as used")),
                    tools.stream().map(tool -> paid(tool, asBought.value())).toList());
        });
    }

    private static Figure<Money> difference(Money total, Money materials, String which) {
        return Figure.of(
                total.minus(materials),
                "kit, freight and what it leaves out - " + which,
                ARITHMETIC,
                given("kit in all", total),
                given(which, materials));
    }

    private static ToolPaid paid(Tool tool, Money saved) {
        if (!saved.isPositive()) {
            return new ToolPaid(tool.name(), tool.price(), Optional.empty());
        }
        BigDecimal builds = tool.price().getAmount().divide(saved.getAmount(), 0, RoundingMode.CEILING);
        return new ToolPaid(
                tool.name(),
                tool.price(),
                Optional.of(Figure.of(
                        builds.intValueExact(),
                        "tool / difference, rounded up",
                        ARITHMETIC,
                        given("tool", tool.price()),
                        given("difference", saved))));
    }
}
