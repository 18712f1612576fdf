package org.kerfleaf.sketch;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;

/**
 * What is fastened to what, and how. The fastener goes through the first parts into the others.
 *
 * @param of the placings the fastener goes through
 * @param to the placings it holds in
 * @param studs the wood of the wall behind, if that is what it is fastened to
 * @param glue what the contact is glued with, if it is
 * @param fastener what holds, if anything is driven and it was said which
 * @param drawer the screws to choose from, if one is to be chosen
 * @param every how far apart fasteners stand at most, along the contact
 * @param times how many in the whole joint, if said outright
 * @param drilled whether holes are drilled first
 * @param pulledBy what pulls the joint straight apart, if anything was said to
 * @group joints
 */
public record Joint(
        Origin origin,
        List<Origin> of,
        List<Origin> to,
        Optional<String> studs,
        Optional<Glue> glue,
        Optional<Fastener> fastener,
        Optional<Drawer> drawer,
        Optional<Length> every,
        Optional<Integer> times,
        boolean drilled,
        Optional<Mass> pulledBy)
        implements Declaration {
    private static final int MOST = 500;

    public Joint {
        of = List.copyOf(of);
        to = List.copyOf(to);
    }

    /** A joint of which only the first parts are said yet. */
    public static Joint of(Origin origin, List<Origin> these) {
        return new Joint(
                origin,
                these,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                true,
                Optional.empty());
    }

    /** What the first parts are fastened to. @example fasten(sidesIn).to(floorIn).screwed(screw, every("5 in")) */
    public Joint to(Placing... others) {
        return to(Arrays.stream(others).map(Placing::origin).toList(), studs);
    }

    /**
     * Each piece to its neighbours of the same placing.
     *
     * @example Part stave = panel("Stave", ply).wide("10 in").high("12 in").ringOf(6, "15 deg");
     *     var ring = place(stave).round();
     *     var ringOn = fasten(ring).toEachOther().glued(glue)
     */
    public Joint toEachOther() {
        return to(of, studs);
    }

    /**
     * To the studs of the wall behind, and what wood they are of; say how many fasteners with {@code times}.
     *
     * @example fasten(armsIn).toStudsOf("spruce-pine-fir").lagged(lagScrew("1/4 in", "3 in")).times(4)
     */
    public Joint toStudsOf(String species) {
        return to(to, Optional.of(species));
    }

    private Joint to(List<Origin> others, Optional<String> behind) {
        return new Joint(origin, of, others, behind, glue, fastener, drawer, every, times, drilled, pulledBy);
    }

    /** With glue over the whole contact. @example fasten(sidesIn).to(floorIn).glued(glue) */
    public Joint glued(Glue with) {
        return new Joint(origin, of, to, studs, Optional.of(with), fastener, drawer, every, times, drilled, pulledBy);
    }

    /** With screws, so far apart at most along the contact. @example fasten(sidesIn).to(floorIn).screwed(screw, every("5 in")) */
    public Joint screwed(Screw with, Spacing spacing) {
        return driven(with, Optional.of(spacing.atMost()));
    }

    /** With screws; say how many with {@code times}. */
    public Joint screwed(Screw with) {
        return driven(with, every);
    }

    /**
     * With the screw of the drawer that suits best, so far apart at most: the longest that goes 6 of its diameters in, keeps its tip
     * inside and stands far enough from the edge.
     *
     * @example fasten(sidesIn).to(floorIn).screwedFrom(drawer(woodScrew(6, "1 1/2 in"), woodScrew(8, "2 in")), every("5 in"))
     */
    public Joint screwedFrom(Drawer choose, Spacing spacing) {
        return new Joint(
                origin,
                of,
                to,
                studs,
                glue,
                fastener,
                Optional.of(choose),
                Optional.of(spacing.atMost()),
                times,
                drilled,
                pulledBy);
    }

    /** With nails, so far apart at most along the contact. @example fasten(rakesIn).to(roofs).nailed(finishNail("1 1/2 in"), every("6 in")) */
    public Joint nailed(Nail with, Spacing spacing) {
        return driven(with, Optional.of(spacing.atMost()));
    }

    /** With bolts right through; say how many with {@code times}. @example fasten(armsIn).to(postIn).bolted(carriageBolt("3/8 in")).times(4) */
    public Joint bolted(Bolt with) {
        return driven(with, every);
    }

    /** With lag screws; say how many with {@code times}. @example fasten(armsIn).to(postIn).lagged(lagScrew("1/4 in", "3 in")).times(4) */
    public Joint lagged(Lag with) {
        return driven(with, every);
    }

    private Joint driven(Fastener with, Optional<Length> apart) {
        return new Joint(origin, of, to, studs, glue, Optional.of(with), drawer, apart, times, drilled, pulledBy);
    }

    /** So many fasteners in the whole joint, 1 to 500. @example fasten(sidesIn).to(floorIn).screwed(screw).times(8) */
    public Joint times(int many) {
        if (many > MOST) {
            throw new SketchException(
                    "%d fasteners in one joint: %d at most. Join its parts one by one.".formatted(many, MOST));
        }
        return new Joint(
                origin,
                of,
                to,
                studs,
                glue,
                fastener,
                drawer,
                every,
                Optional.of(SketchRun.atLeastOne("Fasteners", many)),
                drilled,
                pulledBy);
    }

    /** Screws go in without pilot and clearance holes. @example fasten(sidesIn).to(floorIn).screwed(screw, every("5 in")).notDrilled() */
    public Joint notDrilled() {
        return new Joint(origin, of, to, studs, glue, fastener, drawer, every, times, false, pulledBy);
    }

    /**
     * So much weight pulls the joint straight apart.
     *
     * @example fasten(sidesIn).to(floorIn).screwed(screw, every("5 in")).pulledBy("40 lb")
     */
    public Joint pulledBy(String weight) {
        return new Joint(
                origin, of, to, studs, glue, fastener, drawer, every, times, drilled, Optional.of(Mass.parse(weight)));
    }
}
