package org.kerfleaf.cost;

import static org.kerfleaf.reason.Given.given;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyMismatchException;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.kerfleaf.cost.Cost.KitComparison;
import org.kerfleaf.reason.Figure;

/**
 * Adds up what a build costs, in one currency.
 *
 * <p>What is used is added up unrounded and rounded once, half up. A line without a price is in neither sum, a line without a
 * share is in what is bought and not in what is used; both are named.
 */
public final class CostSheet {
    private static final String ARITHMETIC = "arithmetic";

    private final CurrencyUnit currency;
    private final List<CostLine> lines = new ArrayList<>();
    private final List<Kit> bought = new ArrayList<>();
    private int kits = 1;

    private CostSheet(CurrencyUnit currency) {
        this.currency = currency;
    }

    /** An empty sheet in that currency. */
    public static CostSheet in(CurrencyUnit currency) {
        return new CostSheet(currency);
    }

    /** Everything is for so many kits, 1 or more; a bought kit is compared with one of them. */
    public CostSheet kits(int many) {
        kits = many;
        return this;
    }

    private record Kit(String name, Money price, Optional<Money> freight, List<String> lacks) {}

    /** Adds a line. @throws CurrencyMismatchException if its price is in another currency */
    public CostSheet add(CostLine line) {
        line.each().ifPresent(this::same);
        lines.add(line);
        return this;
    }

    /** Adds a bought kit to compare with. @throws CurrencyMismatchException if its price is in another currency */
    public CostSheet compare(String name, Money price, Optional<Money> freight, List<String> lacks) {
        same(price);
        freight.ifPresent(this::same);
        bought.add(new Kit(name, price, freight, List.copyOf(lacks)));
        return this;
    }

    private void same(Money money) {
        if (!money.getCurrencyUnit().equals(currency)) {
            throw new CurrencyMismatchException(currency, money.getCurrencyUnit());
        }
    }

    /** The sums. Lines come by department, and within one in the order they were added. */
    public Cost cost() {
        List<CostLine> ordered = lines.stream()
                .sorted(Comparator.comparing(CostLine::department))
                .toList();
        Optional<Figure<Money>> sum = bought(ordered);
        Optional<Money> each = sum.map(all -> Cost.oneOf(all, kits).value());
        return new Cost(
                ordered,
                sum,
                used(ordered),
                ordered.stream()
                        .filter(line -> line.each().isEmpty() || line.share().isEmpty())
                        .map(CostLine::what)
                        .distinct()
                        .toList(),
                bought.stream().map(kit -> against(kit, each)).toList(),
                kits);
    }

    private Optional<Figure<Money>> bought(List<CostLine> ordered) {
        Money sum = Money.zero(currency);
        int priced = 0;
        for (CostLine line : ordered) {
            if (line.bought().isPresent()) {
                sum = sum.plus(line.bought().get());
                priced++;
            }
        }
        return sumOf(sum, priced, "sum of packs · price", "lines with a price", ordered.size());
    }

    private Optional<Figure<Money>> used(List<CostLine> ordered) {
        BigMoney sum = BigMoney.zero(currency);
        int shared = 0;
        for (CostLine line : ordered) {
            if (line.bought().isPresent() && line.share().isPresent()) {
                BigDecimal share = BigDecimal.valueOf(line.share().get().value().value());
                sum = sum.plus(line.bought().get().toBigMoney().multipliedBy(share));
                shared++;
            }
        }
        return sumOf(
                sum.toMoney(RoundingMode.HALF_UP),
                shared,
                "sum of packs · price · share used, rounded once",
                "lines with price and share",
                ordered.size());
    }

    /** The sum of {@code known} of the lines. None of many is not known, rather than free of charge; none of none is nothing. */
    private static Optional<Figure<Money>> sumOf(Money sum, int known, String formula, String ofWhat, int lines) {
        if (known == 0 && lines > 0) {
            return Optional.empty();
        }
        return Optional.of(Figure.of(sum, formula, ARITHMETIC, given(ofWhat, known), given("lines", lines)));
    }

    private static KitComparison against(Kit kit, Optional<Money> bought) {
        Money total = kit.freight.map(kit.price::plus).orElse(kit.price);
        return new KitComparison(
                kit.name,
                kit.price,
                kit.freight,
                Figure.of(
                        total,
                        "price + freight",
                        ARITHMETIC,
                        given("price", kit.price),
                        kit.freight.map(f -> given("freight", f)).orElse(given("freight", "none said"))),
                bought.map(materials -> Figure.of(
                        total.minus(materials),
                        "kit with freight - materials as bought; more than 0: building is cheaper",
                        ARITHMETIC,
                        given("kit with freight", total),
                        given("materials", materials))),
                kit.lacks,
                Optional.empty());
    }
}
