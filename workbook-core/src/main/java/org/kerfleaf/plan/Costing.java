package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cost.CostSheet;
import org.kerfleaf.cost.Department;
import org.kerfleaf.cost.LikeForLike;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.cutting.BoardSize;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.joint.HardwareLine;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.site.Concrete;
import org.kerfleaf.sketch.BoughtKit;
import org.kerfleaf.sketch.Hole;
import org.kerfleaf.sketch.Paint;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Supply;
import org.kerfleaf.sketch.Tool;
import org.kerfleaf.stock.BoardMeasure;

/** Lists everything to buy with its price, and how much of it the build uses. */
final class Costing {
    private final Sketch sketch;
    private final Stocking stocking;
    private final List<PlannedPart> parts;
    private final Hardware hardware;
    private final Finishing finishing;
    private final Siting siting;
    private final Batch batch;
    private final CurrencyUnit currency;
    private final MeasureStyle style;

    Costing(
            Sketch sketch,
            Stocking stocking,
            List<PlannedPart> parts,
            Hardware hardware,
            Finishing finishing,
            Siting siting,
            Batch batch,
            CurrencyUnit currency,
            MeasureStyle style) {
        this.sketch = sketch;
        this.stocking = stocking;
        this.parts = parts;
        this.hardware = hardware;
        this.finishing = finishing;
        this.siting = siting;
        this.batch = batch;
        this.currency = currency;
        this.style = style;
    }

    Cost cost() {
        CostSheet costs = CostSheet.in(currency).kits(batch.kits());
        sheets().forEach(costs::add);
        boards().forEach(costs::add);
        hardware.all().forEach(bought -> costs.add(hardware(bought)));
        finishing.all().forEach(bought -> costs.add(finish(bought)));
        finishing.unmeasured().forEach(supply -> costs.add(unmeasured(supply)));
        siting.hole().filter(hole -> hole.gravel().isPositive()).ifPresent(hole -> costs.add(gravel(hole)));
        siting.hole().flatMap(this::concrete).ifPresent(costs::add);
        for (BoughtKit kit : sketch.all(BoughtKit.class)) {
            known(kit.price()).ifPresent(price -> costs.compare(kit.name(), price, known(kit.freight()), kit.lacks()));
        }
        Cost cost = costs.cost();
        return new Cost(
                cost.lines(),
                cost.bought(),
                cost.used(),
                cost.notKnown(),
                cost.compare().stream()
                        .map(kit ->
                                kit.with(lacked(kit, cost).flatMap(money -> LikeForLike.of(kit, cost, money, tools()))))
                        .toList(),
                batch.kits());
    }

    private List<LikeForLike.Tool> tools() {
        return sketch.all(Tool.class).stream()
                .flatMap(tool -> known(tool.price()).map(price -> new LikeForLike.Tool(tool.name(), price)).stream())
                .toList();
    }

    /** What this build pays for everything a kit leaves out; empty where one of them has no line here or no price. */
    private Optional<Money> lacked(Cost.KitComparison kit, Cost cost) {
        Set<CostLine> left = new LinkedHashSet<>();
        for (String thing : kit.lacks()) {
            List<CostLine> lines = cost.lines().stream()
                    .filter(line -> isFor(line, thing.toLowerCase(Locale.ROOT)))
                    .toList();
            if (lines.isEmpty() || lines.stream().anyMatch(line -> line.bought().isEmpty())) {
                return Optional.empty();
            }
            left.addAll(lines);
        }
        return Optional.of(left.stream()
                .map(line -> line.bought().orElseThrow())
                .reduce(Money.zero(currency), Money::plus)
                .dividedBy(batch.kits(), RoundingMode.HALF_UP));
    }

    /** A thing is a line of the list by its own name, a part cut from it, or what is painted with: {@code paint}. */
    private boolean isFor(CostLine line, String thing) {
        String what = line.what().toLowerCase(Locale.ROOT);
        boolean cutFrom = parts.stream()
                .filter(p -> p.name().toLowerCase(Locale.ROOT).equals(thing))
                .anyMatch(p ->
                        line.department() == Department.TIMBER && line.what().startsWith(p.stock()));
        boolean painted = thing.equals("paint")
                && sketch.all(Paint.class).stream().anyMatch(p -> p.name().equals(line.what()));
        return what.matches(".*\\b" + Pattern.quote(thing) + "\\b.*") || cutFrom || painted;
    }

    private List<CostLine> sheets() {
        Map<String, List<SheetLayout>> byStock = new LinkedHashMap<>();
        stocking.sheets()
                .forEach(s -> byStock.computeIfAbsent(s.sheet().stock(), k -> new ArrayList<>())
                        .add(s));
        List<CostLine> lines = new ArrayList<>();
        byStock.forEach((stock, layouts) -> sketch.sheet(stock).ifPresent(sheet -> lines.add(sheet(sheet, layouts))));
        return lines;
    }

    private CostLine sheet(Sheet sheet, List<SheetLayout> layouts) {
        boolean glazing =
                parts.stream().filter(p -> p.stock().equals(sheet.name())).allMatch(p -> p.kind() == PartKind.PANE);
        Area used = layouts.stream()
                .flatMap(layout -> layout.placements().stream())
                .map(placed -> placed.length().by(placed.width()))
                .reduce(Area.ZERO, Area::plus);
        Area whole = sheet.length().by(sheet.width()).times(layouts.size());
        String size = sheet.width().read(style).text() + " × " + sheet.length().in(style);
        return new CostLine(
                glazing ? Department.GLAZING : Department.TIMBER,
                sheet.name(),
                size
                        + sheet.soldAs()
                                .map(label -> ", sold as " + label.in(style))
                                .orElse("")
                        + sheet.measured().map(t -> ", measures " + t.in(style)).orElse(""),
                count(layouts.size(), "sheets in the layouts"),
                Optional.of(share(used.dividedBy(whole), "area of parts / area of sheets")),
                known(sheet.price()));
    }

    private List<CostLine> boards() {
        List<CostLine> lines = new ArrayList<>();
        stocking.boardsBought().forEach((board, bought) -> lines.add(board(board, bought.intValue())));
        return lines;
    }

    private CostLine board(BoardSize board, int bought) {
        Length used = Length.ZERO;
        for (BoardLayout layout : stocking.boards()) {
            if (layout.board().equals(board)) {
                for (BoardLayout.BoardPlacement placed : layout.placements()) {
                    used = used.plus(placed.length());
                }
            }
        }
        boolean treated = sketch.lumber(board.stock()).map(l -> l.preserved()).orElse(false);
        return new CostLine(
                Department.TIMBER,
                board.stock() + (treated ? ", treated" : ""),
                Stocking.sold(board.length(), style) + " long"
                        + BoardMeasure.of(board.stock(), board.length(), bought)
                                .map(measure -> ", " + measure.value().in(style) + (bought > 1 ? " in all" : ""))
                                .orElse(""),
                count(bought, "boards in the layouts"),
                Optional.of(share(used.dividedBy(board.length().times(bought)), "length of parts / length of boards")),
                known(board.price()));
    }

    private CostLine hardware(Hardware.Bought bought) {
        HardwareLine line = bought.line();
        int whole = line.packs().value() * line.packOf();
        String pack = line.packOf() > 1 ? "box of " + line.packOf() + "; " : "";
        return new CostLine(
                Department.IRONMONGER,
                line.what(),
                pack + line.need().value() + " needed",
                line.packs(),
                Optional.of(share((double) line.need().value() / whole, "needed / bought")),
                known(bought.each()));
    }

    private CostLine finish(Finishing.Bought bought) {
        return new CostLine(
                Department.FINISH,
                bought.line().what(),
                bought.line().pack().in(style) + "; "
                        + bought.line().need().value().in(style) + " needed",
                bought.line().packs(),
                Optional.of(bought.share()),
                known(bought.each()));
    }

    private CostLine unmeasured(Supply supply) {
        return new CostLine(
                Department.FINISH,
                supply.name(),
                "how much is not known: its pack or its coverage was not said",
                count(1, "one at least, since how much is not known"),
                Optional.empty(),
                known(supply.price()));
    }

    private CostLine gravel(Hole hole) {
        Figure<Volume> need = batch.all(siting.gravel(hole), Volume::times);
        if (hole.bag().isEmpty()) {
            return new CostLine(
                    Department.GROUND,
                    "gravel",
                    need.value().bulk(style) + " needed; what a bag holds is not known",
                    count(1, "one at least, since what a bag holds is not known"),
                    Optional.empty(),
                    known(hole.price()));
        }
        int bags = (int) Math.ceil(need.value().dividedBy(hole.bag().get()) - 1e-9);
        return new CostLine(
                Department.GROUND,
                "gravel",
                "bag of " + hole.bag().get().bulk(style) + "; " + need.value().bulk(style) + " needed",
                Figure.of(
                        bags,
                        "need / bag, rounded up",
                        Reason.GEOMETRY,
                        given("need", need.value()),
                        given("bag", hole.bag().get())),
                Optional.of(share(need.value().dividedBy(hole.bag().get()) / bags, "needed / bought")),
                known(hole.price()));
    }

    private Optional<CostLine> concrete(Hole hole) {
        return hole.concrete()
                .flatMap(bag -> siting.filling(hole)
                        .flatMap(filling -> filling.bags().map(bags -> {
                            Volume need = filling.volume().value();
                            double each = Concrete.makes(bag.holds()).value().inLitres() * bags.value();
                            return new CostLine(
                                    Department.GROUND,
                                    "dry concrete mix",
                                    "bag of " + bag.holds().in(style) + "; "
                                            + need.times(batch.kits()).bulk(style) + " needed",
                                    batch.count(bags),
                                    Optional.of(share(need.inLitres() / each, "needed / bought")),
                                    known(bag.price()));
                        })));
    }

    /** A price in another currency than the workbook's is no price here. */
    private Optional<Money> known(Optional<Money> price) {
        return price.filter(money -> money.getCurrencyUnit().equals(currency));
    }

    private static Figure<Integer> count(int number, String rule) {
        return Figure.of(number, rule, Reason.GEOMETRY);
    }

    private static Figure<Ratio> share(double value, String rule) {
        return Figure.of(Ratio.of(value), rule, Reason.GEOMETRY);
    }
}
