package org.kerfleaf.sketch;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.SpreadLoad;

/**
 * What lies on a placed part, and between what it hangs free.
 *
 * @param what carries it
 * @param load that lies on it, if it was said outright
 * @param share of another load, if it was said so
 * @param span how far it hangs free, if said
 * @param between the placings it lies on, if said
 * @param limit what its sag is held to, if said
 * @param lasting whether the load stays on for months and years
 * @param brackets that hold it, if any
 * @group what it carries
 */
public record Carries(
        Origin origin,
        Origin what,
        Optional<SpreadLoad> load,
        Optional<Share> share,
        Optional<Length> span,
        List<Origin> between,
        Optional<SagLimit> limit,
        boolean lasting,
        Optional<Brackets> brackets)
        implements Declaration {
    public Carries {
        between = List.copyOf(between);
    }

    /** A share of another load, from 0 to 1. @group what it carries */
    public record Share(Origin of, double share) {}

    /**
     * Brackets on a wall.
     *
     * @param count how many
     * @param out how far in front of the wall the load's middle lies, if said
     * @param screwsApart height between a bracket's upper and lower screws, if said
     */
    public record Brackets(int count, Optional<Length> out, Optional<Length> screwsApart) {}

    /** A load said outright. */
    public static Carries of(Placing what, SpreadLoad load) {
        return new Carries(
                SketchRun.current().next(),
                what.origin(),
                Optional.of(load),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    /** A share of another load. */
    public static Carries of(Placing what, Share share) {
        return new Carries(
                SketchRun.current().next(),
                what.origin(),
                Optional.empty(),
                Optional.of(share),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    /** How far it hangs free from one support to the next. @example carries(floorIn, "20 lb/ft").spans("22 in") */
    public Carries spans(String clear) {
        return spans(SketchRun.length(clear));
    }

    /** How far it hangs free from one support to the next. */
    public Carries spans(Length clear) {
        return new Carries(origin, what, load, share, Optional.of(clear), between, limit, lasting, brackets);
    }

    /** What it lies on; the widest gap between neighbours is how far it hangs free. @example carries(floorIn, "40 lb").between(sidesIn) */
    public Carries between(Placing... supports) {
        List<Origin> on = Arrays.stream(supports).map(Placing::origin).toList();
        return new Carries(origin, what, load, share, span, on, limit, lasting, brackets);
    }

    /** What its sag is held to: WOODWORK_STANDARD, VISIBLE or FIRST_LOAD. @example carries(floorIn, "40 lb").between(sidesIn).heldTo(VISIBLE) */
    public Carries heldTo(SagLimit most) {
        return new Carries(origin, what, load, share, span, between, Optional.of(most), lasting, brackets);
    }

    /** The load stays on for months and years, and wood creeps under it. @example carries(floorIn, "40 lb").between(sidesIn).heldTo(VISIBLE).staysOn() */
    public Carries staysOn() {
        return new Carries(origin, what, load, share, span, between, limit, true, brackets);
    }

    /** Held by so many brackets, so far apart. @example carries(floorIn, "20 lb/ft").onBrackets(3, "20 in") */
    public Carries onBrackets(int count, String apart) {
        Brackets held = new Brackets(SketchRun.atLeastOne("Brackets", count), Optional.empty(), Optional.empty());
        return new Carries(
                origin,
                what,
                load,
                share,
                Optional.of(SketchRun.length(apart)),
                between,
                limit,
                lasting,
                Optional.of(held));
    }

    /** How far in front of the wall the middle of the load lies. @example carries(floorIn, "20 lb/ft").onBrackets(3, "20 in").middleOut("4 in") */
    public Carries middleOut(String fromWall) {
        Brackets held = held("middleOut");
        return with(new Brackets(held.count(), Optional.of(SketchRun.length(fromWall)), held.screwsApart()));
    }

    /**
     * The height between the upper and the lower screws of a bracket.
     *
     * @example carries(floorIn, "20 lb/ft").onBrackets(3, "20 in").middleOut("4 in").screwsApart("8 in")
     */
    public Carries screwsApart(String height) {
        Brackets held = held("screwsApart");
        return with(new Brackets(held.count(), held.out(), Optional.of(SketchRun.length(height))));
    }

    private Brackets held(String word) {
        return brackets.orElseThrow(() -> new SketchException(
                "“%s” is said of brackets, and none were. Say .onBrackets(3, \"32 in\") before it.".formatted(word)));
    }

    private Carries with(Brackets after) {
        return new Carries(origin, what, load, share, span, between, limit, lasting, Optional.of(after));
    }
}
