package org.kerfleaf.sketch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;

/**
 * Where one part goes, once or several times.
 *
 * @param part the part's name
 * @param together how many go into place as one: two roof halves, all sides of a ring, else one
 * @param edge the edge of a roof that the part runs along, if it does
 * @param where what was said of it, in order
 * @group placing
 */
public record Placing(Origin origin, String part, int together, Optional<EdgeOf.Edge> edge, List<Where> where)
        implements Declaration {
    public Placing {
        where = List.copyOf(where);
    }

    private Placing with(Where more) {
        List<Where> all = new ArrayList<>(where);
        all.add(more);
        return new Placing(origin, part, together, edge, all);
    }

    /** Touching the other on its left. @example place(shelf).leftOf(floorIn) */
    public Placing leftOf(Placing other) {
        return with(new Where.Beside(Side.LEFT, other.origin));
    }

    /** Touching the other on its right. @example place(shelf).rightOf(floorIn) */
    public Placing rightOf(Placing other) {
        return with(new Where.Beside(Side.RIGHT, other.origin));
    }

    /** Touching the other at its back. @example place(slat).standing().behind(floorIn) */
    public Placing behind(Placing other) {
        return with(new Where.Beside(Side.BACK, other.origin));
    }

    /** Touching the other in front. @example place(slat).standing().inFrontOf(floorIn) */
    public Placing inFrontOf(Placing other) {
        return with(new Where.Beside(Side.FRONT, other.origin));
    }

    /** Lying on the other's top. @example place(shelf).onTopOf(floorIn) */
    public Placing onTopOf(Placing other) {
        return with(new Where.Beside(Side.TOP, other.origin));
    }

    /** Touching the other from below. @example place(shelf).under(floorIn) */
    public Placing under(Placing other) {
        return with(new Where.Beside(Side.BOTTOM, other.origin));
    }

    /** One on its left, one on its right, both touching it. @example place(slat).standing().leftAndRightOf(floorIn) */
    public Placing leftAndRightOf(Placing other) {
        return with(new Where.BothSides(Side.LEFT, Side.RIGHT, other.origin));
    }

    /** One in front of it, one behind, both touching it. @example place(slat).standing().frontAndBackOf(floorIn) */
    public Placing frontAndBackOf(Placing other) {
        return with(new Where.BothSides(Side.FRONT, Side.BACK, other.origin));
    }

    /** Over the other, with these clear gaps from its top face; one piece for each gap. @example place(shelf).above(floorIn, "8 in", "15 in") */
    public Placing above(Placing other, String... gaps) {
        if (gaps.length == 0) {
            throw new SketchException(
                    "“%s” above what, how far? Say .above(floorIn, \"8 in\"), or .onTopOf(floorIn).".formatted(part));
        }
        return with(new Where.Above(
                other.origin, Arrays.stream(gaps).map(SketchRun::length).toList()));
    }

    /** Touching the other, on the side where it already is. @example place(shelf).above(floorIn, "8 in").against(backIn) */
    public Placing against(Placing other) {
        return with(new Where.Against(other.origin));
    }

    /** In line with that edge of the first part named. @example place(shelf).onTopOf(floorIn).flushAt(BACK) */
    public Placing flushAt(Side side) {
        return with(new Where.FlushAt(side));
    }

    /** Over an opening of the part named before. @example place(door).inFrontOf(frontIn).over("doorway") */
    public Placing over(String opening) {
        return with(new Where.Over(opening));
    }

    /**
     * So many of it, 1 or more, evenly in the space between two others.
     *
     * @example var left = place(slat).standing().onTopOf(floorIn).flushAt(LEFT);
     *     var right = place(slat).standing().onTopOf(floorIn).flushAt(RIGHT);
     *     var slats = place(slat).standing().onTopOf(floorIn).evenlyBetween(left, right, 3)
     */
    public Placing evenlyBetween(Placing one, Placing other, int pieces) {
        return with(new Where.Between(
                one.origin, other.origin, SketchRun.atLeastOne("“" + part + "” evenly between", pieces)));
    }

    /**
     * So many of it, 1 or more, side by side across its width, with these gaps.
     *
     * @example place(slat).flat().running(FRONT_TO_BACK).onTopOf(floorIn).sideBySide(4, "1/4 in")
     */
    public Placing sideBySide(int pieces, String gap) {
        return sideBySide(pieces, SketchRun.length(gap));
    }

    /** So many of it, 1 or more, side by side across its width, with these gaps. */
    public Placing sideBySide(int pieces, Length gap) {
        return with(new Where.SideBySide(SketchRun.atLeastOne("“" + part + "” side by side", pieces), gap));
    }

    /**
     * All sides of a ring, each mitred to the next.
     *
     * @example Part stave = panel("Stave", ply).wide("10 in").high("12 in").ringOf(6, "15 deg");
     *     var ring = place(stave).round()
     */
    public Placing round() {
        return with(new Where.Round(together));
    }

    /**
     * Lying in a ring where it fits, as its sizes say.
     *
     * @example Part stave = panel("Stave", ply).wide("10 in").high("12 in").ringOf(6, "15 deg");
     *     Part base = panel("Base", ply).fitsInRing(stave, "1 in");
     *     var ring = place(stave).round();
     *     var baseIn = place(base).restsIn(ring)
     */
    public Placing restsIn(Placing ring) {
        return with(new Where.RestsIn(ring.origin));
    }

    /** An upright board's wide face looks to this side: FRONT, unless said. @example place(slat).standing().facing(LEFT).onTopOf(floorIn) */
    public Placing facing(Side side) {
        return with(new Where.Facing(side));
    }

    /** Lying on the sloping edges of these. @example place(roof).restsOn(frontIn, backIn, sidesIn) */
    public Placing restsOn(Placing... supports) {
        return with(
                new Where.RestsOn(Arrays.stream(supports).map(Placing::origin).toList(), together));
    }

    /**
     * In the middle between the gables, front to back; where nothing else is said it is anyway.
     *
     * @example place(roof).restsOn(frontIn, backIn, sidesIn).centredFrontToBack()
     */
    public Placing centredFrontToBack() {
        return this;
    }

    /** Along the roof's edge that was said when the part was made, on every piece of the roof. @example place(rake).along(roofs) */
    public Placing along(Placing roofs) {
        int ends = edge.equals(Optional.of(EdgeOf.Edge.RAKE)) ? 2 : 1;
        return with(new Where.AlongRoof(roofs.origin, ends * roofs.count()));
    }

    /** Over the ridge of a roof. @example place(cap).over(roofs) */
    public Placing over(Placing roofs) {
        return with(new Where.OverRidge(roofs.origin));
    }

    /** A board stands upright. @example place(slat).standing().onTopOf(floorIn) */
    public Placing standing() {
        return with(new Where.Standing());
    }

    /** A board runs this way, on edge unless flat. @example place(slat).running(LEFT_TO_RIGHT).onTopOf(floorIn) */
    public Placing running(Way way) {
        return with(new Where.Running(way == Way.LEFT_TO_RIGHT ? Side.LEFT : Side.FRONT));
    }

    /** A board lies on its wide face. @example place(slat).running(LEFT_TO_RIGHT).flat().onTopOf(floorIn) */
    public Placing flat() {
        return with(new Where.Flat());
    }

    /** In the middle of the first part named. @example place(slat).running(LEFT_TO_RIGHT).flat().onTopOf(floorIn).centred() */
    public Placing centred() {
        return with(new Where.Centred());
    }

    /** How many pieces this puts in place. */
    public int count() {
        return where.stream().mapToInt(Placing::times).reduce(1, (a, b) -> a * b);
    }

    private static int times(Where where) {
        if (where instanceof Where.Above above) {
            return above.gaps().size();
        }
        if (where instanceof Where.RestsOn rests) {
            return rests.pieces();
        }
        if (where instanceof Where.AlongRoof along) {
            return along.pieces();
        }
        if (where instanceof Where.Between between) {
            return between.pieces();
        }
        if (where instanceof Where.SideBySide row) {
            return row.pieces();
        }
        if (where instanceof Where.Round round) {
            return round.pieces();
        }
        return where instanceof Where.BothSides ? 2 : 1;
    }
}
