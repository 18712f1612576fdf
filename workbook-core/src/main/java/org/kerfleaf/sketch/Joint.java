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

    /** What the first parts are fastened to. */
    public Joint to(Placing... others) {
        return new Joint(origin, of, Arrays.stream(others).map(Placing::origin).toList(), glue, fastener, every, times);
    }

    /** Each piece to its neighbours of the same placing. */
    public Joint toEachOther() {
        return new Joint(origin, of, of, glue, fastener, every, times);
    }

    public Joint glued(Glue with) {
        return new Joint(origin, of, to, Optional.of(with), fastener, every, times);
    }

    public Joint screwed(Screw with, Spacing spacing) {
        return new Joint(origin, of, to, glue, Optional.of(with), Optional.of(spacing.atMost()), times);
    }

    /** Say how many: {@code .times(4)}. */
    public Joint screwed(Screw with) {
        return new Joint(origin, of, to, glue, Optional.of(with), every, times);
    }

    public Joint nailed(Nail with, Spacing spacing) {
        return new Joint(origin, of, to, glue, Optional.of(with), Optional.of(spacing.atMost()), times);
    }

    /** Say how many: {@code .times(2)}. */
    public Joint bolted(Bolt with) {
        return new Joint(origin, of, to, glue, Optional.of(with), every, times);
    }

    /** So many in the whole joint. */
    public Joint times(int many) {
        return new Joint(origin, of, to, glue, fastener, every, Optional.of(SketchRun.atLeastOne("Fasteners", many)));
    }
}
