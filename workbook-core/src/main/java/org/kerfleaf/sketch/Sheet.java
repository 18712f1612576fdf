package org.kerfleaf.sketch;

import java.util.Arrays;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;
import org.kerfleaf.stock.Stiffness;
import org.kerfleaf.stock.Surface;

/**
 * A sheet that can be bought.
 *
 * @param name what it is, and its identity
 * @param width the shorter side
 * @param length the longer side, along the grain
 * @param soldAs the size on its label, if said
 * @param measured its thickness by caliper, if measured
 * @param price of one sheet, if said
 * @param bond how its glue stands the weather, if said
 * @param stiffness its modulus of elasticity along the grain, if said
 * @param damp how damp it is when it is worked, as far as it was said
 * @param surface how its faces left the mill; unsanded unless said
 * @group what we buy
 */
public record Sheet(
        Origin origin,
        String name,
        Length width,
        Length length,
        Optional<Length> soldAs,
        Optional<Length> measured,
        Optional<Money> price,
        Optional<Bond> bond,
        Optional<Stiffness> stiffness,
        Damp damp,
        Surface surface)
        implements Declaration {
    /** @throws SketchException if a size is not more than nothing */
    public Sheet {
        String sheet = "“%s” with a ".formatted(name);
        SketchRun.positive(sheet + "width", width);
        SketchRun.positive(sheet + "length", length);
        soldAs.ifPresent(thick -> SketchRun.positive(sheet + "thickness", thick));
        measured.ifPresent(thick -> SketchRun.positive(sheet + "thickness", thick));
    }

    /** The thickness on its label. @example sheet("thin plywood", "48 in", "96 in").soldAs("1/4 in") */
    public Sheet soldAs(String thickness) {
        return new Sheet(
                origin,
                name,
                width,
                length,
                Optional.of(SketchRun.length(thickness)),
                measured,
                price,
                bond,
                stiffness,
                damp,
                surface);
    }

    /** What a caliper says of its thickness. @example sheet("thin plywood", "48 in", "96 in").soldAs("1/4 in").measured("0.24 in") */
    public Sheet measured(String thickness) {
        return measured(SketchRun.length(thickness));
    }

    /** What a caliper says, where that is a size the reader may change. */
    public Sheet measured(Length thickness) {
        return new Sheet(
                origin, name, width, length, soldAs, Optional.of(thickness), price, bond, stiffness, damp, surface);
    }

    /** The price of one sheet, in the workbook's currency. @example sheet("thin plywood", "48 in", "96 in").soldAs("1/4 in").costs("31.90") */
    public Sheet costs(String each) {
        return new Sheet(
                origin,
                name,
                width,
                length,
                soldAs,
                measured,
                Optional.of(SketchRun.price(each)),
                bond,
                stiffness,
                damp,
                surface);
    }

    /**
     * Its label says Exterior: it may stay out in the weather.
     *
     * @example sheet("sign plywood", "48 in", "96 in").soldAs("1/2 in").bondedForExterior()
     */
    public Sheet bondedForExterior() {
        return new Sheet(
                origin,
                name,
                width,
                length,
                soldAs,
                measured,
                price,
                Optional.of(Bond.EXTERIOR),
                stiffness,
                damp,
                surface);
    }

    /**
     * Its label says Exposure 1: it stands a building delay, not the weather.
     *
     * @example sheet("sheathing", "48 in", "96 in").soldAs("1/2 in").bondedForExposure1()
     */
    public Sheet bondedForExposure1() {
        return new Sheet(
                origin,
                name,
                width,
                length,
                soldAs,
                measured,
                price,
                Optional.of(Bond.EXPOSURE_1),
                stiffness,
                damp,
                surface);
    }

    /** Its label says Interior. @example sheet("birch plywood", "48 in", "96 in").soldAs("1/2 in").bondedForInterior() */
    public Sheet bondedForInterior() {
        return new Sheet(
                origin,
                name,
                width,
                length,
                soldAs,
                measured,
                price,
                Optional.of(Bond.INTERIOR),
                stiffness,
                damp,
                surface);
    }

    /**
     * How stiff it is along its grain, its modulus of elasticity, as its maker says: {@code 1.5 million psi}, {@code 8000 MPa}.
     *
     * @example sheet("shelf plywood", "48 in", "96 in").soldAs("3/4 in").stiffness("1.5 million psi")
     */
    public Sheet stiffness(String modulus) {
        return new Sheet(
                origin,
                name,
                width,
                length,
                soldAs,
                measured,
                price,
                bond,
                Optional.of(Stiffness.parse(modulus)),
                damp,
                surface);
    }

    /** How damp it is when it is worked, as a moisture meter shows it. @example sheet("sign plywood", "48 in", "96 in").soldAs("1/2 in").moisture("9 %") */
    public Sheet moisture(String percent) {
        return new Sheet(
                origin, name, width, length, soldAs, measured, price, bond, stiffness, damp.moisture(percent), surface);
    }

    /**
     * Sanded on both faces, as its label says; its thickness then keeps to narrower limits.
     *
     * @example sheet("birch plywood", "48 in", "96 in").soldAs("1/2 in").sanded()
     */
    public Sheet sanded() {
        return new Sheet(origin, name, width, length, soldAs, measured, price, bond, stiffness, damp, Surface.SANDED);
    }

    /** The caliper's reading, or what the label says where nobody measured. @example Length clear = depth.minus(ply.thickness(), ply.thickness()) */
    public Length thickness() {
        return measured.or(() -> soldAs)
                .orElseThrow(() -> new SketchException(
                        "“%s” has no thickness. Say .soldAs(\"3/4 in\"), and .measured(...) once a caliper has been on it."
                                .formatted(name)));
    }

    /**
     * This, or one of these instead: the plan is made with this one and tells what each of the others would come to. The reader
     * may change which is bought.
     *
     * @example sheet("half-inch ply", "48 in", "96 in").soldAs("1/2 in").orInstead(sheet("thinner ply", "48 in", "96 in").soldAs("15/32 in"))
     */
    public Sheet orInstead(Sheet... others) {
        String chosen = Instead.choose(
                new Instead.Stock(name, name),
                Arrays.stream(others).map(other -> new Instead.Stock(other.name(), other.name())));
        return Arrays.stream(others)
                .filter(other -> other.name().equals(chosen))
                .findFirst()
                .orElse(this);
    }

    /** How many of it are bought; known when planned. @group asked of the plan @example ply.bought() */
    public Asked bought() {
        return new Asked(name, Asked.Question.BOUGHT);
    }
}
