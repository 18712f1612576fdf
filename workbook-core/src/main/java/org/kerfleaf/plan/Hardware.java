package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.joint.BoltLength;
import org.kerfleaf.joint.HardwareLine;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Given;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.sketch.Bolt;
import org.kerfleaf.sketch.Fastener;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Item;
import org.kerfleaf.sketch.Lag;
import org.kerfleaf.sketch.Metal;
import org.kerfleaf.sketch.Nail;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Screw;
import org.kerfleaf.sketch.Sketch;

/** Counts fasteners and fittings over all their uses in all kits, and the packs to buy. */
final class Hardware {
    private final Sketch sketch;
    private final Sizing sizing;
    private final Batch batch;
    private final MeasureStyle style;
    private final Map<Key, List<Use>> uses = new LinkedHashMap<>();

    Hardware(Sketch sketch, Sizing sizing, List<PlannedJoint> joints, Batch batch, MeasureStyle style) {
        this.sketch = sketch;
        this.sizing = sizing;
        this.batch = batch;
        this.style = style;
        for (PlannedJoint joint : joints) {
            joint.said()
                    .fastener()
                    .ifPresent(fastener ->
                            use(key(fastener, joint), joint.fasteners().value(), joint.words()));
        }
        sketch.all(Fitting.class).forEach(this::fitting);
        sketch.all(Glazing.class).forEach(this::glazing);
    }

    private record Key(String what, int packOf, Optional<Money> price, Counted counted) {}

    /** A fastener may be dropped and a spare is bought; what comes by the roll is measured over all kits before it is counted. */
    private enum Counted {
        WITH_SPARE,
        AS_NEEDED,
        BY_THE_ROLL
    }

    private record Use(int count, String words) {}

    /** A line with the price of one pack. */
    record Bought(HardwareLine line, Optional<Money> each) {}

    List<Bought> all() {
        List<Bought> bought = new ArrayList<>();
        uses.forEach((key, all) -> bought.add(new Bought(line(key, all), key.price())));
        return bought;
    }

    private HardwareLine line(Key key, List<Use> uses) {
        Figure<Integer> all = need(key, uses);
        int need = all.value();
        int packs = (need + key.packOf() - 1) / key.packOf();
        return new HardwareLine(
                key.what(),
                all,
                key.packOf(),
                Figure.of(
                        packs,
                        "need / pack, rounded up",
                        Reason.GEOMETRY,
                        given("need", need),
                        given("pack of", key.packOf())),
                uses.stream().map(u -> u.words() + ": " + u.count()).toList());
    }

    private Figure<Integer> need(Key key, List<Use> uses) {
        int sum = uses.stream().mapToInt(Use::count).sum();
        Given all = given("uses", uses.size());
        if (key.counted() == Counted.BY_THE_ROLL) {
            return Figure.of(sum, "the sum of all uses", Reason.THE_WORKBOOK, all);
        }
        List<Given> given = new ArrayList<>(List.of(all));
        String rule = "the sum of all uses";
        if (batch.isMore()) {
            rule += " · kits";
            given.add(given("in one kit", sum));
            given.add(given("kits", batch.kits()));
        }
        int together = sum * batch.kits();
        if (key.counted() == Counted.WITH_SPARE && batch.spare().value() > 0) {
            rule += ", and spare, rounded up";
            given.add(given("spare", batch.spare()));
            together = (int) Math.ceil(together * (1 + batch.spare().value()) - 1e-9);
        }
        return Figure.of(together, rule, Reason.THE_WORKBOOK, given.toArray(Given[]::new));
    }

    private void use(Key key, int count, String words) {
        uses.computeIfAbsent(key, k -> new ArrayList<>()).add(new Use(count, words));
    }

    private Key key(Fastener fastener, PlannedJoint joint) {
        return new Key(words(fastener, joint), fastener.packOf(), fastener.price(), Counted.WITH_SPARE);
    }

    /** {@code wood screw No. 6 × 1 5/8 in, stainless}. */
    String words(Screw screw) {
        return "wood screw " + new WoodScrew(screw.gauge(), screw.length()).words(style) + metal(screw);
    }

    private static String metal(Fastener fastener) {
        return fastener.metal() == Metal.NOT_SAID ? "" : ", " + fastener.metal().words();
    }

    /** The same of any fastener; a bolt's length follows from the joint. */
    String words(Fastener fastener, PlannedJoint joint) {
        String metal = metal(fastener);
        if (fastener instanceof Screw screw) {
            return words(screw);
        }
        if (fastener instanceof Nail nail) {
            return nail.sort()
                    + (nail.diameter().isPresent() ? " × " : " ")
                    + nail.length().in(style)
                    + metal;
        }
        if (fastener instanceof Lag lag) {
            return "lag screw " + lag.diameter().read(style).text() + " × "
                    + lag.length().in(style) + metal;
        }
        Bolt bolt = (Bolt) fastener;
        Length length = BoltLength.sold(joint.stack(), bolt.diameter()).value();
        return "carriage bolt " + bolt.diameter().read(style).text() + " × " + length.in(style) + metal;
    }

    private void fitting(Fitting fitting) {
        Item item = fitting.item();
        Optional<Length> run = fitting.opening().flatMap(name -> around(fitting.on(), name));
        String where = fitting.on().flatMap(sketch::placing).map(Placing::part).orElse("the build");
        if (run.isPresent()) {
            strip(item, run.get().times(batch.kits()), where);
        } else {
            use(new Key(words(item), 1, item.price(), Counted.AS_NEEDED), fitting.count(), where);
        }
    }

    /** The way round an opening of whatever the placing hangs over. */
    private Optional<Length> around(Optional<Origin> on, String opening) {
        return on.flatMap(sketch::placing)
                .flatMap(hung -> hung.where().stream()
                        .flatMap(where -> Places.others(where).stream())
                        .flatMap(key -> sketch.placing(key).stream())
                        .flatMap(under -> sizing.of(under.part()).stream())
                        .flatMap(part -> part.cutout(opening).stream())
                        .map(cutout -> cutout.wide().plus(cutout.high()).times(2))
                        .findFirst());
    }

    private void glazing(Glazing glazing) {
        Optional<Length> run = sketch.part(glazing.pane())
                .flatMap(sizing::pocketOf)
                .map(pocket -> pocket.wide().plus(pocket.high()).times(2));
        for (Optional<Item> item : List.of(glazing.bedding(), glazing.beads())) {
            if (item.isPresent() && run.isPresent()) {
                strip(item.get(), run.get().times(batch.kits()), glazing.pane());
            }
        }
    }

    /** Something that is sold by the roll, or in pieces whose length was not said: then one is counted and the need is told. */
    private void strip(Item item, Length run, String where) {
        int rolls = item.roll()
                .map(roll -> (int) (run.roundedTo(roll, RoundingMode.CEILING).nanometres() / roll.nanometres()))
                .orElse(batch.kits());
        String holds =
                item.roll().map(roll -> ", a roll of " + roll.in(style)).orElse("; how much one holds is not known");
        use(
                new Key(words(item), 1, item.price(), Counted.BY_THE_ROLL),
                rolls,
                where + ", " + run.in(style) + " in all" + holds);
    }

    private String words(Item item) {
        String size = item.wide().map(w -> " " + w.in(style) + " wide").orElse("")
                + item.thick()
                        .map(t -> (item.wide().isPresent() ? "," : "") + " " + t.in(style) + thickness(item))
                        .orElse("");
        String metal = item.metal() == Metal.NOT_SAID ? "" : ", " + item.metal().words();
        return item.name() + size + metal;
    }

    private static String thickness(Item item) {
        return item.kind() == Item.Kind.KNOB ? " spindle" : " thick";
    }
}
