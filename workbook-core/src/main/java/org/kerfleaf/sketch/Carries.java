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
 * @param things that stand on it, where they are its load
 * @param span how far it hangs free, if said
 * @param between the placings it lies on, if said
 * @param limit what its sag is held to, if said
 * @param lasting whether the load stays on for months and years
 * @param middle whether all of it stands in the middle of the span; else it is spread evenly
 * @group what it carries
 */
public record Carries(
        Origin origin,
        Origin what,
        Optional<SpreadLoad> load,
        Optional<Share> share,
        List<Origin> things,
        Optional<Length> span,
        List<Origin> between,
        Optional<SagLimit> limit,
        boolean lasting,
        boolean middle)
        implements Declaration {
    public Carries {
        things = List.copyOf(things);
        between = List.copyOf(between);
    }

    /** A share of another load, from 0 to 1. @group what it carries */
    public record Share(Origin of, double share) {}

    /** A load said outright. */
    public static Carries of(Placing what, SpreadLoad load) {
        return of(what, Optional.of(load), Optional.empty(), List.of());
    }

    /** A share of another load. */
    public static Carries of(Placing what, Share share) {
        return of(what, Optional.empty(), Optional.of(share), List.of());
    }

    /** Things that stand on it. */
    public static Carries of(Placing what, List<Contents> things) {
        if (things.isEmpty()) {
            throw new SketchException(
                    "“%s” carries nothing. Say a load, carries(shelfIn, \"20 lb/ft\"), or things: carries(shelfIn, boxes)."
                            .formatted(what.part()));
        }
        return of(
                what,
                Optional.empty(),
                Optional.empty(),
                things.stream().map(Contents::origin).toList());
    }

    private static Carries of(Placing what, Optional<SpreadLoad> load, Optional<Share> share, List<Origin> things) {
        return new Carries(
                SketchRun.current().next(),
                what.origin(),
                load,
                share,
                things,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                false,
                false);
    }

    /** How far it hangs free from one support to the next. @example carries(floorIn, "20 lb/ft").spans("22 in") */
    public Carries spans(String clear) {
        return spans(SketchRun.length(clear));
    }

    /** How far it hangs free from one support to the next. */
    public Carries spans(Length clear) {
        return new Carries(origin, what, load, share, things, Optional.of(clear), between, limit, lasting, middle);
    }

    /** What it lies on; the widest gap between neighbours is how far it hangs free. @example carries(floorIn, "40 lb").between(sidesIn) */
    public Carries between(Placing... supports) {
        List<Origin> on = Arrays.stream(supports).map(Placing::origin).toList();
        return new Carries(origin, what, load, share, things, span, on, limit, lasting, middle);
    }

    /** What its sag is held to: WOODWORK_STANDARD, VISIBLE or FIRST_LOAD. @example carries(floorIn, "40 lb").between(sidesIn).heldTo(VISIBLE) */
    public Carries heldTo(SagLimit most) {
        return new Carries(origin, what, load, share, things, span, between, Optional.of(most), lasting, middle);
    }

    /** The load stays on for months and years, and wood creeps under it. @example carries(floorIn, "40 lb").between(sidesIn).heldTo(VISIBLE).staysOn() */
    public Carries staysOn() {
        return new Carries(origin, what, load, share, things, span, between, limit, true, middle);
    }

    /** All of it stands in the middle, where a board sags most; a load is spread evenly unless this is said. @example carries(floorIn, "50 lb").between(sidesIn).inTheMiddle() */
    public Carries inTheMiddle() {
        return new Carries(origin, what, load, share, things, span, between, limit, lasting, true);
    }
}
