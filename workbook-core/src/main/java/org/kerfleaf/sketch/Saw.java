package org.kerfleaf.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;

/**
 * The saw that cuts the sheets: a circular saw in the hand, or a table saw.
 *
 * @param table whether it is a table saw, which has a fence and no base
 * @param kerf the width of its cut, if said
 * @param left from the left edge of its base to the near face of the blade, if said
 * @param right from the right edge of its base to the near face of the blade, if said
 * @param tilted the same, measured with the blade tilted
 * @param blade how far across its blade is, if said
 * @param cutsDeep how far its blade stands out at most, if said
 * @param trims what is trimmed off each edge of a new sheet; nothing unless said
 * @group what we buy
 */
public record Saw(
        Origin origin,
        boolean table,
        Optional<Length> kerf,
        Optional<Length> left,
        Optional<Length> right,
        List<Tilted> tilted,
        Optional<Length> blade,
        Optional<Length> cutsDeep,
        Length trims)
        implements Declaration {
    /** Wider than any blade cuts. */
    private static final Length TOO_WIDE = Length.ofInches(1L);

    /** @throws SketchException if a kerf is less than nothing or wider than any blade cuts, or a trim is less than nothing */
    public Saw {
        kerf.ifPresent(wide -> {
            SketchRun.notNegative("A kerf", wide);
            if (!wide.isShorterThan(TOO_WIDE)) {
                throw new SketchException(
                        "A kerf of %s: no blade cuts so wide. 1/8 in (3 mm) is usual.".formatted(wide));
            }
        });
        SketchRun.notNegative("A trim", trims);
        tilted = List.copyOf(tilted);
    }

    /** From the left or right edge of the base to the near face of the blade, with the blade tilted. */
    public record Tilted(Angle tilt, Side side, Length distance) {}

    /** A saw of which nothing is said yet. */
    public static Saw of(Origin origin, boolean table) {
        return new Saw(
                origin,
                table,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Length.ZERO);
    }

    /** How wide its cut is. @example circularSaw().kerf("1/8 in") */
    public Saw kerf(String wide) {
        Optional<Length> said = Optional.of(SketchRun.length(wide));
        return new Saw(origin, table, said, left, right, tilted, blade, cutsDeep, trims);
    }

    /**
     * From the LEFT or RIGHT edge of its base to the near face of the blade: how far from the line a straightedge is clamped.
     *
     * @example circularSaw().baseToBlade(LEFT, "1 1/2 in").baseToBlade(RIGHT, "5 in")
     */
    public Saw baseToBlade(Side side, String distance) {
        Optional<Length> said = Optional.of(SketchRun.length(distance));
        return onBase(side) == Side.LEFT
                ? new Saw(origin, table, kerf, said, right, tilted, blade, cutsDeep, trims)
                : new Saw(origin, table, kerf, left, said, tilted, blade, cutsDeep, trims);
    }

    /**
     * The same with the blade tilted so much, measured again at that tilt, since a blade tilts about a point of its own.
     *
     * @example circularSaw().baseToBlade(LEFT, "1 1/2 in").baseToBladeTilted("30 deg", LEFT, "1 3/4 in")
     */
    public Saw baseToBladeTilted(String tilt, Side side, String distance) {
        List<Tilted> more = new ArrayList<>(tilted);
        more.add(new Tilted(Angle.parse(tilt), onBase(side), SketchRun.length(distance)));
        return new Saw(origin, table, kerf, left, right, more, blade, cutsDeep, trims);
    }

    private Side onBase(Side side) {
        if (table) {
            throw new SketchException("A table saw has a fence and no base. Leave baseToBlade out.");
        }
        if (side != Side.LEFT && side != Side.RIGHT) {
            throw new SketchException("A saw's base has a LEFT and a RIGHT of the blade, not " + side + ".");
        }
        return side;
    }

    /** How far across its blade is; with it the plan says where a plunge cut stops. @example circularSaw().blade("7 1/4 in") */
    public Saw blade(String across) {
        Optional<Length> said = Optional.of(SketchRun.length(across));
        return new Saw(origin, table, kerf, left, right, tilted, said, cutsDeep, trims);
    }

    /** How far its blade stands out at most, along the blade. @example circularSaw().cutsDeep("2 3/8 in") */
    public Saw cutsDeep(String most) {
        Optional<Length> said = Optional.of(SketchRun.length(most));
        return new Saw(origin, table, kerf, left, right, tilted, blade, said, trims);
    }

    /** How much is trimmed off each edge of a new sheet; nothing unless said. @example circularSaw().trimsSheetBy("1/4 in") */
    public Saw trimsSheetBy(String much) {
        return new Saw(origin, table, kerf, left, right, tilted, blade, cutsDeep, SketchRun.length(much));
    }
}
