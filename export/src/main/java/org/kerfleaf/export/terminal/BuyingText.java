package org.kerfleaf.export.terminal;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Buying;
import org.kerfleaf.plan.Buying.SheetAsSold;
import org.kerfleaf.plan.Buying.Yard;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.rules.SagChecks;
import org.kerfleaf.rules.Tolerances;

/** What to know in the shop: what a sheet may measure, how much lumber it is, and what to ask for so that it gets home. */
final class BuyingText {
    private static final String NOT_KNOWN = "not known";

    private final MeasureStyle style;
    private final Page page;

    private BuyingText(MeasureStyle style, Page page) {
        this.style = style;
        this.page = page;
    }

    static Section of(Plan plan) {
        Buying buying = plan.buying();
        boolean any = !buying.sheets().isEmpty()
                || !buying.boards().isEmpty()
                || buying.home().isPresent()
                || !buying.instead().isEmpty();
        return new Section("In the shop", "", any, page -> new BuyingText(plan.style(), page).write(buying));
    }

    private void write(Buying buying) {
        if (!buying.sheets().isEmpty()) {
            sheets(buying);
        }
        if (!buying.boards().isEmpty()) {
            page.blank();
            boards(buying);
        }
        buying.home().ifPresent(this::home);
        buying.instead().forEach(this::instead);
        page.beforeReasons();
        buying.sheets().forEach(this::why);
        buying.boards().forEach(yard -> page.why(name(yard), yard.measure()));
        buying.home()
                .ifPresent(home -> home.loads()
                        .forEach(load ->
                                load.cuts().forEach(cut -> page.why(load.stock() + ", " + cut.between(), cut.at()))));
    }

    private void sheets(Buying buying) {
        Grid grid = new Grid()
                .words("May measure")
                .number("Thick")
                .number("Wide from")
                .number("Long from")
                .number("Diagonals differ by");
        for (SheetAsSold sheet : buying.sheets()) {
            grid.row(
                    Cell.of(sheet.stock()),
                    Cell.of(Tolerances.thickness(sheet.thinnest(), sheet.thickest(), style)),
                    Cell.of(Tolerances.fine(sheet.narrowest().value(), style)),
                    Cell.of(Tolerances.fine(sheet.shortest().value(), style)),
                    Cell.of(Tolerances.fine(sheet.diagonals().value(), style)));
        }
        page.grid(grid);
    }

    private void boards(Buying buying) {
        Grid grid = new Grid().words("Lumber").number("Boards").number("Board measure");
        for (Yard yard : buying.boards()) {
            grid.row(
                    Cell.of(name(yard)),
                    Cell.of(yard.count()),
                    Cell.of(yard.measure().value().in(style)));
        }
        page.grid(grid);
    }

    private String name(Yard yard) {
        return yard.stock() + ", " + yard.length().in(style);
    }

    private void home(Buying.Home home) {
        page.blank();
        page.line("Home in the %s, inside %s wide and %s long"
                .formatted(home.vehicle(), known(home.wide()), known(home.longest())));
        for (Buying.Load load : home.loads()) {
            page.hanging(load.name() + ": ", load.words());
        }
    }

    private void instead(Buying.OneOf oneOf) {
        page.blank();
        Grid grid = new Grid()
                .words("One of these")
                .number("Buy")
                .number("Price")
                .number("All costs")
                .number("Weighs")
                .words("Sags")
                .number("Moves")
                .words("Fit");
        for (Buying.Choice choice : oneOf.choices()) {
            grid.row(
                    Cell.of(choice.stock() + (choice.planned() ? ", as planned" : "")),
                    Cell.of(choice.bought()),
                    Cell.of(choice.price().map(BuyingText::amount).orElse(NOT_KNOWN)),
                    Cell.of(choice.all().map(BuyingText::amount).orElse(NOT_KNOWN)),
                    Cell.of(choice.weight()
                            .map(weight -> weight.value().in(style))
                            .orElse(NOT_KNOWN)),
                    Cell.of(choice.sag()
                            .map(sag -> "%s %s"
                                    .formatted(choice.sags().orElse(""), SagChecks.thousandths(sag.value(), style)))
                            .orElse(NOT_KNOWN)),
                    Cell.of(choice.moves()
                            .map(moves -> SagChecks.thousandths(moves.value(), style))
                            .orElse(NOT_KNOWN)),
                    Cell.of(choice.fit()));
        }
        page.grid(grid);
    }

    private static String amount(Money money) {
        return money.getAmount().toPlainString();
    }

    private String known(Optional<Length> length) {
        return length.map(known -> known.in(style)).orElse(NOT_KNOWN);
    }

    private void why(SheetAsSold sheet) {
        page.why(sheet.stock() + ", at least thick", sheet.thinnest());
        page.why(sheet.stock() + ", at least long", sheet.shortest());
        page.why(sheet.stock() + ", diagonals", sheet.diagonals());
    }
}
