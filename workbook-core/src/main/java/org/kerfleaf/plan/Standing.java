package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.sketch.Side;

/** How a part stands, which follows from the sizes that were said. */
enum Standing {
    /** Wide and deep: its faces look up and down. */
    LIES(Axis.X, Axis.Y, Axis.Z, List.of(Side.LEFT), List.of(Side.RIGHT), List.of(Side.FRONT), List.of(Side.BACK)),
    /** Wide and high: its faces look to the front and back. */
    FACES_FRONT(
            Axis.X, Axis.Z, Axis.Y, List.of(Side.LEFT), List.of(Side.RIGHT), List.of(Side.BOTTOM), List.of(Side.TOP)),
    /** Deep and high: its faces look left and right. */
    FACES_SIDE(
            Axis.Y, Axis.Z, Axis.X, List.of(Side.FRONT), List.of(Side.BACK), List.of(Side.BOTTOM), List.of(Side.TOP)),
    /** On a slope or in a ring: not square in the frame. Its second size climbs. */
    SLOPES(
            Axis.Y,
            Axis.X,
            Axis.Z,
            List.of(Side.LEFT),
            List.of(Side.RIGHT),
            List.of(Side.BOTTOM, Side.EAVES),
            List.of(Side.TOP, Side.RIDGE)),
    /** A board: said where it is placed. Its ends and edges answer to the side on which they come to lie. */
    AS_PLACED(
            Axis.X,
            Axis.Z,
            Axis.Y,
            List.of(Side.LEFT, Side.FRONT, Side.BOTTOM),
            List.of(Side.RIGHT, Side.BACK, Side.TOP),
            List.of(),
            List.of());

    private static final List<String> EDGES = List.of("LEFT", "RIGHT", "BOTTOM", "TOP");

    private final Axis across;
    private final Axis up;
    private final Axis through;
    private final List<List<Side>> said;

    Standing(Axis across, Axis up, Axis through, List<Side> left, List<Side> right, List<Side> bottom, List<Side> top) {
        this.across = across;
        this.up = up;
        this.through = through;
        this.said = List.of(left, right, bottom, top);
    }

    /** The axis its first size runs along. */
    Axis across() {
        return across;
    }

    /** The axis its second size runs along. */
    Axis up() {
        return up;
    }

    /** The axis its thickness runs along. */
    Axis through() {
        return through;
    }

    /** The name of the outline's edge on a side; empty if it has none there. */
    Optional<String> edge(Side side) {
        for (int i = 0; i < EDGES.size(); i++) {
            if (said.get(i).contains(side)) {
                return Optional.of(EDGES.get(i));
            }
        }
        return Optional.empty();
    }

    /** The name of the edge on a side beside an end: of a board it is one of the two that run its length. */
    Optional<String> beside(Side side) {
        Optional<String> named = edge(side);
        return this == AS_PLACED ? named.map(end -> end.equals("LEFT") ? "BOTTOM" : "TOP") : named;
    }

    /** The sides on which it has edges, in words for a message. */
    List<Side> sides() {
        return said.stream().flatMap(List::stream).toList();
    }
}
