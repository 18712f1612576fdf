package org.kerfleaf.sketch;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;

/**
 * The shape and place of a hole or opening in a part.
 *
 * @param kind round, rectangle, or what is left when a frame of even width stays all round
 * @param wide its width, its diameter, or the frame's width
 * @param high its height; the same as wide for a round hole or a frame
 * @param radius of its corners
 * @param from distances from edges of the part: to the centre of a round hole, to the near side of a rectangle
 * @group shapes
 */
public record Shape(Kind kind, Length wide, Length high, Length radius, List<From> from) {
    public Shape {
        from = List.copyOf(from);
    }

    /** What it is. */
    public enum Kind {
        /** Round. */
        ROUND,
        /** A rectangle. */
        RECTANGLE,
        /** What a frame of even width leaves. */
        FRAME
    }

    /** A distance from an edge of the part. @group shapes */
    public record From(Side edge, Length distance) {}

    /** A point of a part's face: so far from its left (or front) end, so far up (or back) from its lower (or front) edge. @group shapes */
    public record At(Length along, Length up) {}

    /**
     * So far from that edge.
     *
     * @example panel("Lid", ply).wide("20 in").deep("10 in").hole("cable", round("2 in").from(LEFT, "4 in").from(BACK, "3 in")).times(1)
     */
    public Shape from(Side edge, String distance) {
        return from(edge, SketchRun.length(distance));
    }

    /** So far from that edge. */
    public Shape from(Side edge, Length distance) {
        List<From> more = new ArrayList<>(from);
        more.add(new From(edge, distance));
        return new Shape(kind, wide, high, radius, more);
    }

    /**
     * So far up from the bottom edge.
     *
     * @example panel("Face", ply).wide("20 in").high("24 in").hole("entrance", round("1 1/4 in").up("6 in")).times(1)
     */
    public Shape up(String distance) {
        return from(Side.BOTTOM, distance);
    }

    /** So far up from the bottom edge. */
    public Shape up(Length distance) {
        return from(Side.BOTTOM, distance);
    }

    /**
     * In the middle, left to right; where no distance is said it is in the middle anyway.
     *
     * @example panel("Face", ply).wide("20 in").high("24 in").hole("entrance", round("1 1/4 in").centred().up("6 in")).times(1)
     */
    public Shape centred() {
        return this;
    }

    /**
     * With corners rounded to that radius.
     *
     * @example panel("Face", ply).wide("20 in").high("24 in").opening("slot", rectangle(length("8 in"),
     *     length("2 in")).rounded("1/4 in")).times(1)
     */
    public Shape rounded(String cornerRadius) {
        return new Shape(kind, wide, high, SketchRun.length(cornerRadius), from);
    }
}
