package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cost.Department;
import org.kerfleaf.export.chart.Bars;

/** Where the money goes: a bar for each department. */
final class Departments {
    private Departments() {}

    /** The chart under its heading; nothing where no price is known. */
    static Block chart(Cost cost) {
        List<Bars.Bar> bars = new ArrayList<>();
        for (Department department : Department.values()) {
            cost.lines().stream()
                    .filter(line -> line.department() == department)
                    .map(CostLine::bought)
                    .flatMap(java.util.Optional::stream)
                    .reduce(Money::plus)
                    .ifPresent(money -> bars.add(
                            new Bars.Bar(department.title(), money.getAmount().doubleValue(), Book.amount(money))));
        }
        if (bars.isEmpty()) {
            return Block.space(0);
        }
        Bars chart = new Bars(bars, Book.amount(cost.bought()));
        return Block.stack(List.of(Marks.heading("Where the money goes"), Block.picture(chart.height(), chart::paint)));
    }
}
