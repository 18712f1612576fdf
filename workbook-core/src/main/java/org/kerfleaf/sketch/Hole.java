package org.kerfleaf.sketch;

import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Volume;

/**
 * A hole in the ground for a post.
 *
 * @param across its diameter
 * @param deep its depth
 * @param gravel depth of the gravel at its foot
 * @param bag what one bag of gravel holds, if said
 * @param price of one bag, if said
 * @param filledWith what is tamped back, if said
 * @param frost the local frost depth, if said
 * @param post the placing that stands in it, if said
 */
public record Hole(
        Origin origin,
        Length across,
        Length deep,
        Length gravel,
        Optional<Volume> bag,
        Optional<Money> price,
        Optional<Soil> filledWith,
        Optional<Length> frost,
        Optional<Origin> post)
        implements Declaration {
    public Hole gravel(String depth) {
        return new Hole(origin, across, deep, SketchRun.length(depth), bag, price, filledWith, frost, post);
    }

    /** What one bag of gravel holds. */
    public Hole bags(String hold) {
        return new Hole(origin, across, deep, gravel, Optional.of(Volume.parse(hold)), price, filledWith, frost, post);
    }

    /** The price of one bag of gravel. */
    public Hole costs(String each) {
        return new Hole(origin, across, deep, gravel, bag, Optional.of(SketchRun.price(each)), filledWith, frost, post);
    }

    public Hole tampedBack(Soil soil) {
        return new Hole(origin, across, deep, gravel, bag, price, Optional.of(soil), frost, post);
    }

    /** How deep the ground freezes here. */
    public Hole frost(String depth) {
        return new Hole(
                origin, across, deep, gravel, bag, price, filledWith, Optional.of(SketchRun.length(depth)), post);
    }

    public Hole forPost(Placing placing) {
        return new Hole(origin, across, deep, gravel, bag, price, filledWith, frost, Optional.of(placing.origin()));
    }
}
