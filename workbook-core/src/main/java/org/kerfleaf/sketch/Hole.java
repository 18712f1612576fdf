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
 * @param concrete the bags it is set in, if said
 * @param leftLong how much longer than its length the post is cut until it stands, if said
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
        Optional<Origin> post,
        Optional<Bag> concrete,
        Optional<Length> leftLong)
        implements Declaration {
    /** @throws SketchException if it is not wider or deeper than nothing, or all gravel */
    public Hole {
        SketchRun.positive("A hole across", across);
        SketchRun.positive("A hole with a depth", deep);
        SketchRun.notNegative("Gravel", gravel);
        if (!gravel.isShorterThan(deep)) {
            throw new SketchException("Gravel of %s in a hole %s deep: less than the hole is deep would be right."
                    .formatted(gravel, deep));
        }
        frost.ifPresent(depth -> SketchRun.notNegative("Frost to a depth", depth));
        leftLong.ifPresent(more -> SketchRun.notNegative("A post left long by an amount", more));
    }

    /** How deep the gravel at its foot lies. @example dig(across("10 in"), deep("44 in")).gravel("4 in") */
    public Hole gravel(String depth) {
        return new Hole(
                origin, across, deep, SketchRun.length(depth), bag, price, filledWith, frost, post, concrete, leftLong);
    }

    /** What one bag of gravel holds. @example dig(across("10 in"), deep("44 in")).gravel("4 in").bags("0.5 cu ft") */
    public Hole bags(String hold) {
        return new Hole(
                origin,
                across,
                deep,
                gravel,
                Optional.of(SketchRun.positive("Bags that hold", hold, Volume.parse(hold), Volume.ZERO)),
                price,
                filledWith,
                frost,
                post,
                concrete,
                leftLong);
    }

    /** The price of one bag of gravel. @example dig(across("10 in"), deep("44 in")).gravel("4 in").bags("0.5 cu ft").costs("5.20") */
    public Hole costs(String each) {
        return new Hole(
                origin,
                across,
                deep,
                gravel,
                bag,
                Optional.of(SketchRun.price(each)),
                filledWith,
                frost,
                post,
                concrete,
                leftLong);
    }

    /** What is tamped back round the post: GRAVEL, SAND or CLAY. @example dig(across("10 in"), deep("44 in")).tampedBack(SAND) */
    public Hole tampedBack(Soil soil) {
        return new Hole(origin, across, deep, gravel, bag, price, Optional.of(soil), frost, post, concrete, leftLong);
    }

    /** How deep the ground freezes here. @example dig(across("10 in"), deep("44 in")).frost("36 in") */
    public Hole frost(String depth) {
        return new Hole(
                origin,
                across,
                deep,
                gravel,
                bag,
                price,
                filledWith,
                Optional.of(SketchRun.length(depth)),
                post,
                concrete,
                leftLong);
    }

    /** The post that stands in it. @example dig(across("10 in"), deep("44 in")).forPost(postIn) */
    public Hole forPost(Placing placing) {
        return new Hole(
                origin,
                across,
                deep,
                gravel,
                bag,
                price,
                filledWith,
                frost,
                Optional.of(placing.origin()),
                concrete,
                leftLong);
    }

    /** Concrete is poured round the post, from bags like this. @example dig(across("10 in"), deep("36 in")).setInConcrete(bag("60 lb").costs("5.80")) */
    public Hole setInConcrete(Bag from) {
        return new Hole(origin, across, deep, gravel, bag, price, filledWith, frost, post, Optional.of(from), leftLong);
    }

    /**
     * How much longer than it ends up the post is cut; it is cut at the height line once it stands.
     *
     * @example dig(across("10 in"), deep("44 in")).forPost(postIn).leftLong("3 in")
     */
    public Hole leftLong(String by) {
        return new Hole(
                origin,
                across,
                deep,
                gravel,
                bag,
                price,
                filledWith,
                frost,
                post,
                concrete,
                Optional.of(SketchRun.length(by)));
    }
}
