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
 * @group the place
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
    /** How deep the gravel at its foot lies. @example dig(across("10 in"), deep("44 in")).gravel("4 in") */
    public Hole gravel(String depth) {
        return new Hole(origin, across, deep, SketchRun.length(depth), bag, price, filledWith, frost, post);
    }

    /** What one bag of gravel holds. @example dig(across("10 in"), deep("44 in")).gravel("4 in").bags("0.5 cu ft") */
    public Hole bags(String hold) {
        return new Hole(origin, across, deep, gravel, Optional.of(Volume.parse(hold)), price, filledWith, frost, post);
    }

    /** The price of one bag of gravel. @example dig(across("10 in"), deep("44 in")).gravel("4 in").bags("0.5 cu ft").costs("5.20") */
    public Hole costs(String each) {
        return new Hole(origin, across, deep, gravel, bag, Optional.of(SketchRun.price(each)), filledWith, frost, post);
    }

    /** What is tamped back round the post: GRAVEL, SAND or CLAY. @example dig(across("10 in"), deep("44 in")).tampedBack(SAND) */
    public Hole tampedBack(Soil soil) {
        return new Hole(origin, across, deep, gravel, bag, price, Optional.of(soil), frost, post);
    }

    /** How deep the ground freezes here. @example dig(across("10 in"), deep("44 in")).frost("36 in") */
    public Hole frost(String depth) {
        return new Hole(
                origin, across, deep, gravel, bag, price, filledWith, Optional.of(SketchRun.length(depth)), post);
    }

    /** The post that stands in it. @example dig(across("10 in"), deep("44 in")).forPost(postIn) */
    public Hole forPost(Placing placing) {
        return new Hole(origin, across, deep, gravel, bag, price, filledWith, frost, Optional.of(placing.origin()));
    }
}
