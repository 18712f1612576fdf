package org.kerfleaf.sketch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;
import org.kerfleaf.stock.Rings;
import org.kerfleaf.stock.Stiffness;

/**
 * A board or moulding that can be bought.
 *
 * @param name its nominal size or name, and its identity: {@code 2x8}, {@code aluminium ridge angle}
 * @param moulding whether it is a moulding: sold by length, its section its own affair
 * @param preserved whether it is treated against rot
 * @param thickness of the section, if the name is not a nominal size of PS 20 and it was said
 * @param width of the section, likewise
 * @param trim cut off each end before measuring
 * @param species the wood it is of, if said
 * @param stiffness its modulus of elasticity as graded, if said
 * @param rings which way its growth rings lie
 * @param damp how damp it is when it is worked, as far as it was said
 * @param lengths the lengths it is sold in, with their prices
 * @group what we buy
 */
public record Lumber(
        Origin origin,
        String name,
        boolean moulding,
        boolean preserved,
        Optional<Length> thickness,
        Optional<Length> width,
        Length trim,
        Optional<String> species,
        Optional<Stiffness> stiffness,
        Rings rings,
        Damp damp,
        List<Sold> lengths)
        implements Declaration {
    /** @throws SketchException if a size is not more than nothing, or a trim is less */
    public Lumber {
        String board = "“%s” with a ".formatted(name);
        thickness.ifPresent(thick -> SketchRun.positive(board + "thickness", thick));
        width.ifPresent(wide -> SketchRun.positive(board + "width", wide));
        lengths.forEach(sold -> SketchRun.positive(board + "length", sold.length()));
        SketchRun.notNegative(board + "trim", trim);
        lengths = List.copyOf(lengths);
    }

    /** One length it is sold in. */
    public record Sold(Length length, Optional<Money> price) {}

    /** Treated against rot. @example lumber("6x6").treated().lengths("8 ft") */
    public Lumber treated() {
        return new Lumber(
                origin, name, moulding, true, thickness, width, trim, species, stiffness, rings, damp, lengths);
    }

    /** The wood it is of, as the trade calls it: {@code ponderosa pine}. @example lumber("1x4").species("ponderosa pine") */
    public Lumber species(String name) {
        return new Lumber(
                origin,
                this.name,
                moulding,
                preserved,
                thickness,
                width,
                trim,
                Optional.of(name),
                stiffness,
                rings,
                damp,
                lengths);
    }

    /**
     * How stiff its grade is, its modulus of elasticity, where that is not its species': {@code 1.2 million psi}, {@code 8000 MPa}.
     *
     * @example lumber("2x4").stiffness("1.2 million psi")
     */
    public Lumber stiffness(String modulus) {
        return new Lumber(
                origin,
                name,
                moulding,
                preserved,
                thickness,
                width,
                trim,
                species,
                Optional.of(Stiffness.parse(modulus)),
                rings,
                damp,
                lengths);
    }

    /** Flat sawn: at its end the growth rings lie along the width, and it moves most. @example lumber("1x10").species("white oak").flatSawn() */
    public Lumber flatSawn() {
        return sawn(Rings.FLAT);
    }

    /** Quarter sawn: at its end the growth rings stand through the thickness. @example lumber("1x6").species("white oak").quarterSawn() */
    public Lumber quarterSawn() {
        return sawn(Rings.QUARTER);
    }

    private Lumber sawn(Rings way) {
        return new Lumber(
                origin, name, moulding, preserved, thickness, width, trim, species, stiffness, way, damp, lengths);
    }

    /** How damp it is when it is worked, as a moisture meter shows it. @example lumber("5/4x6").species("western redcedar").moisture("19 %") */
    public Lumber moisture(String percent) {
        return with(damp.moisture(percent));
    }

    /** The air it lay in for weeks before it is worked, which gives its moisture. @example lumber("1x6").species("white oak").driedIn(air("68 F", "45 %")) */
    public Lumber driedIn(Air air) {
        return with(damp.dried(air));
    }

    /** A drop of water soaks in: treated wood that takes paint. @example lumber("6x6").treated().dropSoaksIn().lengths("8 ft") */
    public Lumber dropSoaksIn() {
        return with(damp.drinking());
    }

    private Lumber with(Damp how) {
        return new Lumber(
                origin, name, moulding, preserved, thickness, width, trim, species, stiffness, rings, how, lengths);
    }

    /** The section as measured: thickness, then width. @example lumber("plank 18 × 145").section("18 mm", "145 mm") */
    public Lumber section(String thick, String wide) {
        return new Lumber(
                origin,
                name,
                moulding,
                preserved,
                Optional.of(SketchRun.length(thick)),
                Optional.of(SketchRun.length(wide)),
                trim,
                species,
                stiffness,
                rings,
                damp,
                lengths);
    }

    /** Cuts this much off each end before measuring. @example lumber("2x4").lengths("8 ft").endsTrimmedBy("1/2 in") */
    public Lumber endsTrimmedBy(String much) {
        return new Lumber(
                origin,
                name,
                moulding,
                preserved,
                thickness,
                width,
                SketchRun.length(much),
                species,
                stiffness,
                rings,
                damp,
                lengths);
    }

    /** A length it is sold in; say its price right after. @example lumber("2x4").lengths("8 ft").costs("4.10").lengths("10 ft").costs("5.60") */
    public Lumber lengths(String length) {
        List<Sold> more = new ArrayList<>(lengths);
        more.add(new Sold(SketchRun.length(length), Optional.empty()));
        return new Lumber(
                origin, name, moulding, preserved, thickness, width, trim, species, stiffness, rings, damp, more);
    }

    /** The price of one, in the length said just before and the workbook's currency. @example lumber("2x4").lengths("8 ft").costs("4.10") */
    public Lumber costs(String each) {
        if (lengths.isEmpty()) {
            throw new SketchException(
                    "“%s” costs %s, but no length was said. Say .lengths(\"8 ft\") before .costs(\"%s\")."
                            .formatted(name, each, each));
        }
        List<Sold> more = new ArrayList<>(lengths);
        Sold last = more.remove(more.size() - 1);
        more.add(new Sold(last.length(), Optional.of(SketchRun.price(each))));
        return new Lumber(
                origin, name, moulding, preserved, thickness, width, trim, species, stiffness, rings, damp, more);
    }

    /**
     * This, or one of these instead: the plan is made with this one and tells what each of the others would come to. The reader
     * may change which is bought.
     *
     * @example lumber("1x4").lengths("8 ft").orInstead(lumber("1x6").lengths("8 ft"))
     */
    public Lumber orInstead(Lumber... others) {
        String chosen = Instead.choose(
                new Instead.Stock(withSpecies(), name),
                Arrays.stream(others).map(other -> new Instead.Stock(other.withSpecies(), other.name())));
        return Arrays.stream(others)
                .filter(other -> other.withSpecies().equals(chosen))
                .findFirst()
                .orElse(this);
    }

    private String withSpecies() {
        return name + species.map(wood -> " of " + wood).orElse("");
    }

    /** How many of it are bought; known when planned. @group asked of the plan @example strip.bought() */
    public Asked bought() {
        return new Asked(name, Asked.Question.BOUGHT);
    }
}
