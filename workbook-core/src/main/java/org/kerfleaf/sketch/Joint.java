package org.kerfleaf.sketch;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;

/**
 * What is fastened to what, and how. The fastener goes through the first parts into the others.
 *
 * @param of the placings the fastener goes through
 * @param to the placings it holds in
 * @param glue what the contact is glued with, if it is
 * @param fastener what holds, if anything is driven
 * @param every how far apart fasteners stand at most, along the contact
 * @param times how many in the whole joint, if said outright
 * @group joints
 */
public record Joint(
        Origin origin,
        List<Origin> of,
        List<Origin> to,
        Optional<Glue> glue,
        Optional<Fastener> fastener,
        Optional<Length> every,
        Optional<Integer> times)
        implements Declaration {
    public Joint {
        of = List.copyOf(of);
        to = List.copyOf(to);
    }

    /** What the first parts are fastened to. @example fasten(sidesIn).to(floorIn).screwed(screw, every("5 in")) */
    public Joint to(Placing... others) {
        return new Joint(origin, of, Arrays.stream(others).map(Placing::origin).toList(), glue, fastener, every, times);
    }

    /**
     * Each piece to its neighbours of the same placing.
     *
     * @example Part stave = panel("Stave", ply).wide("10 in").high("12 in").ringOf(6, "15 deg");
     *     var ring = place(stave).round();
     *     var ringOn = fasten(ring).toEachOther().glued(glue)
     */
    public Joint toEachOther() {
        return new Joint(origin, of, of, glue, fastener, every, times);
    }

    /** With glue over the whole contact. @example fasten(sidesIn).to(floorIn).glued(glue) */
    public Joint glued(Glue with) {
        return new Joint(origin, of, to, Optional.of(with), fastener, every, times);
    }

    /** With screws, so far apart at most along the contact. @example fasten(sidesIn).to(floorIn).screwed(screw, every("5 in")) */
    public Joint screwed(Screw with, Spacing spacing) {
        return new Joint(origin, of, to, glue, Optional.of(with), Optional.of(spacing.atMost()), times);
    }

    /** With screws; say how many with {@code times}. */
    public Joint screwed(Screw with) {
        return new Joint(origin, of, to, glue, Optional.of(with), every, times);
    }

    /** With nails, so far apart at most along the contact. @example fasten(rakesIn).to(roofs).nailed(finishNail("1 1/2 in"), every("6 in")) */
    public Joint nailed(Nail with, Spacing spacing) {
        return new Joint(origin, of, to, glue, Optional.of(with), Optional.of(spacing.atMost()), times);
    }

    /** With bolts right through; say how many with {@code times}. @example fasten(armsIn).to(postIn).bolted(carriageBolt("3/8 in")).times(4) */
    public Joint bolted(Bolt with) {
        return new Joint(origin, of, to, glue, Optional.of(with), every, times);
    }

    /** So many fasteners in the whole joint, 1 or more. @example fasten(sidesIn).to(floorIn).screwed(screw).times(8) */
    public Joint times(int many) {
        return new Joint(origin, of, to, glue, fastener, every, Optional.of(SketchRun.atLeastOne("Fasteners", many)));
    }
}
