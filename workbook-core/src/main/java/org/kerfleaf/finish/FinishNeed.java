package org.kerfleaf.finish;

import static org.kerfleaf.reason.Given.given;

import java.util.Optional;
import org.kerfleaf.finish.FinishLine.Task;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.sketch.Bead;
import org.kerfleaf.sketch.Paint;

/** How much paint, caulk and glue a build needs, and how many packs of it. */
public final class FinishNeed {
    /** What is squeezed out and wiped off a bead beyond its volume: 15 %; common practice is 10 to 20 %, no source. */
    public static final double CAULK_WASTE = 0.15;

    /** Grams of wood glue on a square metre of contact, within the makers' 200 to 250 (from memory). */
    public static final double GLUE_GRAMS_ON_SQUARE_METRE = 220;

    /** Density of PVA glue, kg in a litre (a maker's sheet, seen in a copy). */
    public static final double GLUE_KILOGRAMS_IN_LITRE = 1.1;

    private static final String MAKERS = "the can's own coverage; arithmetic";
    private static final String BEAD = "volume of the bead (geometry); waste is common practice, no source";
    private static final String GLUE_MAKERS = "glue makers' guides: 200 to 250 g/m², 1.1 kg/L (from memory)";

    /** Room for what binary fractions leave over, so that exactly one can is one can. */
    private static final double HAIR = 1e-9;

    private FinishNeed() {}

    /**
     * Paint, primer or oil.
     *
     * @param area to coat, counted once
     * @param covers what {@code per} covers in one coat, and why
     * @param can what one can holds
     * @throws IllegalArgumentException if there is no coat, or coverage or can are not more than zero
     */
    public static FinishLine paint(
            String what, Figure<Area> area, int coats, Figure<Area> covers, Volume per, Volume can) {
        Area each = covers.value();
        if (coats < 1 || !(each.squareMillimetres() > 0)) {
            throw new IllegalArgumentException(
                    "%s: %d coats of a paint that covers %s; 1 coat or more and some coverage would be right."
                            .formatted(what, coats, each));
        }
        Figure<Volume> need = Figure.of(
                per.times(area.value().dividedBy(each) * coats),
                "area · coats / coverage",
                MAKERS,
                given("area", area.value()),
                given("coats", coats),
                given("covers", each),
                given("with", per));
        Figure<Area> goes = new Figure<>(each.times(can.dividedBy(per)), covers.reason());
        return line(what, Task.PAINT, area, coats, need, can, goes);
    }

    /**
     * What a paint covers by what is left of it when it is dry: solids / dry film; 1604 ft² a gallon of solids 1/1000 in thick.
     *
     * @param per the volume that covers it
     */
    public static Figure<Area> coverage(Paint.Film film, Volume per) {
        return Figure.of(
                Area.ofSquareMillimetres(per.cubicMillimetres()
                        * film.solids().share()
                        / film.dry().inMillimetres()),
                "volume · solids / dry film",
                "paint-trade formula (seen in a copy): 1604 ft² a gallon at 1/1000 in, all of it solids",
                given("volume", per),
                given("solids", film.solids()),
                given("dry film", film.dry()));
    }

    /**
     * Caulk in a bead.
     *
     * @param run the length of all seams
     * @param bead how it lies in them
     * @param cartridge what one cartridge holds
     */
    public static FinishLine caulk(String what, Figure<Length> run, Bead bead, Volume cartridge) {
        Figure<Volume> need = Figure.of(
                volume(run.value(), bead).times(1 + CAULK_WASTE),
                rule(bead) + " · run, and 15 % waste",
                BEAD,
                given("run", run.value()),
                given("bead", bead.across()),
                given("deep", bead.deep()),
                given("waste", Ratio.of(CAULK_WASTE)));
        return line(what, Task.CAULK, run, 1, need, cartridge, goesFor(cartridge, bead));
    }

    /** The volume of a bead: of a circle, of a rectangle, or in a corner of half of one. */
    static Volume volume(Length run, Bead bead) {
        double share = switch (bead.lies()) {
            case ROUND -> Math.PI / 4;
            case IN_JOINT -> 1;
            case IN_CORNER -> 0.5;
        };
        return bead.across().by(bead.deep()).times(share).by(run);
    }

    private static String rule(Bead bead) {
        return switch (bead.lies()) {
            case ROUND -> "π/4 · bead²";
            case IN_JOINT -> "bead · deep";
            case IN_CORNER -> "bead · deep / 2";
        };
    }

    /** How far a cartridge goes, nothing wasted. */
    public static Figure<Length> goesFor(Volume cartridge, Bead bead) {
        Volume perMillimetre = volume(Length.ofMillimetres(1), bead);
        return Figure.of(
                Length.ofMillimetres(cartridge.dividedBy(perMillimetre)),
                "volume / (%s)".formatted(rule(bead)),
                Reason.GEOMETRY,
                given("cartridge", cartridge),
                given("bead", bead.across()),
                given("deep", bead.deep()));
    }

    /**
     * How much a glue covers, as its bottle says.
     *
     * @param covers what {@code per} covers
     */
    public record GlueSpread(Area covers, Volume per) {}

    /** Wood glue on contact areas; where the bottle does not say what it covers, 220 g/m². */
    public static FinishLine glue(String what, Figure<Area> contact, Optional<GlueSpread> spread, Volume bottle) {
        Figure<Volume> need = spread.map(said -> Figure.of(
                        said.per().times(contact.value().dividedBy(said.covers())),
                        "contact / coverage",
                        "the bottle's own coverage; arithmetic",
                        given("contact", contact.value()),
                        given("covers", said.covers()),
                        given("with", said.per())))
                .orElseGet(() -> Figure.of(
                        Volume.ofLitres(
                                glueMass(contact.value(), spread).value().inKilograms() / GLUE_KILOGRAMS_IN_LITRE),
                        "contact · 220 g/m² / 1.1 kg/L",
                        GLUE_MAKERS,
                        given("contact", contact.value())));
        double grams = bottle.inLitres() * GLUE_KILOGRAMS_IN_LITRE * 1000;
        Figure<Area> goes = spread.map(said -> Figure.of(
                        said.covers().times(bottle.dividedBy(said.per())),
                        "the bottle's own coverage",
                        "the bottle's own coverage; arithmetic",
                        given("covers", said.covers()),
                        given("with", said.per())))
                .orElseGet(() -> Figure.of(
                        Area.ofSquareMillimetres(grams / GLUE_GRAMS_ON_SQUARE_METRE * 1e6),
                        "bottle · 1.1 kg/L / 220 g/m²",
                        GLUE_MAKERS,
                        given("bottle", bottle)));
        return line(what, Task.GLUE, contact, 1, need, bottle, goes);
    }

    /** The mass of wood glue on contact areas. */
    public static Figure<Mass> glueMass(Area contact, Optional<GlueSpread> spread) {
        return spread.map(said -> Figure.of(
                        Mass.ofGrams(said.per()
                                        .times(contact.dividedBy(said.covers()))
                                        .inLitres()
                                * GLUE_KILOGRAMS_IN_LITRE
                                * 1000),
                        "contact / coverage · 1.1 kg/L",
                        "the bottle's own coverage; density of PVA glue (a maker's sheet, seen in a copy)",
                        given("contact", contact),
                        given("covers", said.covers()),
                        given("with", said.per())))
                .orElseGet(() -> Figure.of(
                        Mass.ofGrams(contact.inSquareMetres() * GLUE_GRAMS_ON_SQUARE_METRE),
                        "contact · 220 g/m²",
                        GLUE_MAKERS,
                        given("contact", contact)));
    }

    private static FinishLine line(
            String what,
            Task task,
            Figure<? extends Quantity> extent,
            int coats,
            Figure<Volume> need,
            Volume pack,
            Figure<? extends Quantity> goes) {
        if (!(pack.cubicMillimetres() > 0)) {
            throw new IllegalArgumentException("%s in packs of %s: more than 0 would be right.".formatted(what, pack));
        }
        int packs = (int) Math.ceil(need.value().dividedBy(pack) - HAIR);
        Figure<Integer> bought = Figure.of(
                packs, "need / pack, rounded up", "arithmetic", given("need", need.value()), given("pack", pack));
        return new FinishLine(what, task, extent, coats, need, pack, bought, goes);
    }
}
