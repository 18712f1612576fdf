package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cutting.StockBound;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Buying.Choice;
import org.kerfleaf.plan.Buying.OneOf;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.sketch.Instead;
import org.kerfleaf.sketch.Sketch;

/**
 * What a build comes to with another stock. The workbook is run again for each, so that every size that follows from a thickness
 * follows; where no other stock was said nothing is run.
 */
public final class Substitutes {
    private Substitutes() {}

    /**
     * A plan with what each stock named instead would come to.
     *
     * @param again plans the same workbook with another value of some sizes; empty if it does not run with them
     */
    public static Plan compared(Plan plan, Sketch sketch, Function<Map<String, String>, Optional<Plan>> again) {
        List<OneOf> all = sketch.all(Instead.class).stream()
                .map(instead -> new OneOf(
                        instead.label(),
                        instead.stocks().stream()
                                .map(one -> one.name().equals(instead.chosen())
                                        ? choice(one, plan, plan)
                                        : again.apply(Map.of(instead.label(), one.name()))
                                                .map(other -> choice(one, other, plan))
                                                .orElseGet(() -> doesNotRun(one.name())))
                                .toList()))
                .toList();
        return all.isEmpty() ? plan : plan.withInstead(all);
    }

    private static Choice doesNotRun(String name) {
        return new Choice(
                name,
                false,
                false,
                "the workbook does not run with it",
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Choice choice(Instead.Stock one, Plan with, Plan planned) {
        String stock = one.stock();
        Optional<Loads.Carried> most = Stream.concat(
                        with.loads().carried().stream(),
                        with.loads().snow().stream().flatMap(snow -> snow.carried().stream()))
                .filter(carried -> carried.bending().isPresent())
                .filter(carried -> with.part(carried.part())
                        .map(part -> part.stock().equals(stock))
                        .orElse(false))
                .max(Comparator.comparing(
                        carried -> carried.bending().orElseThrow().sag().value()));
        return new Choice(
                one.name(),
                with == planned,
                with.problems().isEmpty(),
                fit(with, planned),
                with.bounds().stream()
                        .filter(bound -> bound.stock().equals(stock))
                        .mapToInt(StockBound::bought)
                        .sum(),
                price(stock, with),
                with.cost().notKnown().isEmpty() ? with.cost().bought().map(Figure::value) : Optional.empty(),
                most.map(Loads.Carried::part),
                most.map(carried -> carried.bending().orElseThrow().sag()),
                moves(stock, with),
                with.weight());
    }

    /** Of the part of that stock that moves most across its grain. */
    private static Optional<Figure<Length>> moves(String stock, Plan with) {
        return with.movement().stream()
                .filter(moving -> with.part(moving.part())
                        .map(part -> part.stock().equals(stock))
                        .orElse(false))
                .map(moving -> Figure.of(
                        moving.atDampest().value().minus(moving.atDriest().value()),
                        "wider when dampest - wider when driest",
                        moving.atDampest().reason().source(),
                        given("dampest", moving.atDampest().value()),
                        given("driest", moving.atDriest().value())))
                .max(Comparator.comparing(Figure::value));
    }

    private static String fit(Plan with, Plan planned) {
        if (!with.problems().isEmpty()) {
            return with.problems().get(0).words();
        }
        Set<String> before = fallen(planned);
        String fallen =
                fallen(with).stream().filter(name -> !before.contains(name)).collect(Collectors.joining("; "));
        return "every part comes out" + (fallen.isEmpty() ? "" : "; falls short: " + fallen);
    }

    private static Set<String> fallen(Plan plan) {
        return plan.checks().stream()
                .filter(check -> check.verdict() == Verdict.SHORT)
                .map(Check::name)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The price of all lines of that stock; boards of several lengths are several lines. */
    private static Optional<Money> price(String stock, Plan plan) {
        List<CostLine> lines = plan.cost().lines().stream()
                .filter(line -> line.what().equals(stock) || line.what().startsWith(stock + ", "))
                .toList();
        return lines.isEmpty() || lines.stream().anyMatch(line -> line.bought().isEmpty())
                ? Optional.empty()
                : lines.stream().map(line -> line.bought().orElseThrow()).reduce(Money::plus);
    }
}
