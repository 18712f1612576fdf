package org.kerfleaf.sketch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where one part goes, once or several times.
 *
 * @param part the part's name
 * @param where what was said of it, in order
 */
public record Placing(Origin origin, String part, List<Where> where) implements Declaration {
    public Placing {
        where = List.copyOf(where);
    }

    private Placing with(Where more) {
        List<Where> all = new ArrayList<>(where);
        all.add(more);
        return new Placing(origin, part, all);
    }

    public Placing leftOf(Placing other) {
        return with(new Where.Beside(Side.LEFT, other.origin));
    }

    public Placing rightOf(Placing other) {
        return with(new Where.Beside(Side.RIGHT, other.origin));
    }

    public Placing behind(Placing other) {
        return with(new Where.Beside(Side.BACK, other.origin));
    }

    public Placing inFrontOf(Placing other) {
        return with(new Where.Beside(Side.FRONT, other.origin));
    }

    public Placing onTopOf(Placing other) {
        return with(new Where.Beside(Side.TOP, other.origin));
    }

    public Placing under(Placing other) {
        return with(new Where.Beside(Side.BOTTOM, other.origin));
    }

    /** One on the left, one on the right. */
    public Placing leftAndRightOf(Placing other) {
        return with(new Where.BothSides(Side.LEFT, Side.RIGHT, other.origin));
    }

    /** One in front, one behind. */
    public Placing frontAndBackOf(Placing other) {
        return with(new Where.BothSides(Side.FRONT, Side.BACK, other.origin));
    }

    /** Over the other, with these clear gaps from its top face; one piece for each gap. */
    public Placing above(Placing other, String... gaps) {
        if (gaps.length == 0) {
            throw new SketchException(
                    "“%s” above what, how far? Say .above(floorIn, \"8 in\"), or .onTopOf(floorIn).".formatted(part));
        }
        return with(new Where.Above(
                other.origin, Arrays.stream(gaps).map(SketchRun::length).toList()));
    }

    /** Touching the other, on the side where it already is. */
    public Placing against(Placing other) {
        return with(new Where.Against(other.origin));
    }

    /** In line with that edge of the first part named. */
    public Placing flushAt(Side side) {
        return with(new Where.FlushAt(side));
    }

    /** Over an opening of the part named before. */
    public Placing over(String opening) {
        return with(new Where.Over(opening));
    }

    /** A board stands upright. */
    public Placing standing() {
        return with(new Where.Standing());
    }

    /** A board runs this way, on edge unless flat. */
    public Placing running(Way way) {
        return with(new Where.Running(way == Way.LEFT_TO_RIGHT ? Side.LEFT : Side.FRONT));
    }

    /** A board lies on its wide face. */
    public Placing flat() {
        return with(new Where.Flat());
    }

    /** In the middle of the first part named. */
    public Placing centred() {
        return with(new Where.Centred());
    }

    /** How many pieces this puts in place. */
    public int count() {
        return where.stream()
                .mapToInt(w -> w instanceof Where.BothSides
                        ? 2
                        : w instanceof Where.Above above ? above.gaps().size() : 1)
                .reduce(1, (a, b) -> a * b);
    }
}
