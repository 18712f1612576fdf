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
        boolean lasting)
        implements Declaration {
    public Carries {
        between = List.copyOf(between);
    }

    /** A share of another load, from 0 to 1. @group what it carries */
    public record Share(Origin of, double share) {}

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
                false);
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
                false);
    }

    /** How far it hangs free from one support to the next. @example carries(floorIn, "20 lb/ft").spans("22 in") */
    public Carries spans(String clear) {
        return spans(SketchRun.length(clear));
    }

    /** How far it hangs free from one support to the next. */
    public Carries spans(Length clear) {
        return new Carries(origin, what, load, share, Optional.of(clear), between, limit, lasting);
    }

    /** What it lies on; the widest gap between neighbours is how far it hangs free. @example carries(floorIn, "40 lb").between(sidesIn) */
    public Carries between(Placing... supports) {
        List<Origin> on = Arrays.stream(supports).map(Placing::origin).toList();
        return new Carries(origin, what, load, share, span, on, limit, lasting);
    }

    /** What its sag is held to: WOODWORK_STANDARD, VISIBLE or FIRST_LOAD. @example carries(floorIn, "40 lb").between(sidesIn).heldTo(VISIBLE) */
    public Carries heldTo(SagLimit most) {
        return new Carries(origin, what, load, share, span, between, Optional.of(most), lasting);
    }

    /** The load stays on for months and years, and wood creeps under it. @example carries(floorIn, "40 lb").between(sidesIn).heldTo(VISIBLE).staysOn() */
    public Carries staysOn() {
        return new Carries(origin, what, load, share, span, between, limit, true);
    }
}
