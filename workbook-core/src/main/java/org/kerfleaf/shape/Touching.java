package org.kerfleaf.shape;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;

/**
 * How two placed solids are to each other.
 *
 * @param touches places where they lie face on face
 * @param lines edges of one on a face of the other; looked for only where there are no touches
 * @param clash the space both are in, if any
 */
public record Touching(
        PlacedSolid a, PlacedSolid b, List<Touch> touches, List<LineTouch> lines, Optional<Clash> clash) {
    /** Faces nearer than this touch: the one tolerance for contact, clash and placement. */
    public static final Length TOLERANCE = Length.ofMillimetres(0.01);

    public Touching {
        touches = List.copyOf(touches);
        lines = List.copyOf(lines);
    }

    public static Touching between(PlacedSolid a, PlacedSolid b) {
        throw new UnsupportedOperationException("not built yet");
    }

    /** Every pair that touches, touches along a line or clashes, in the order of the list. */
    public static List<Touching> all(List<PlacedSolid> solids) {
        throw new UnsupportedOperationException("not built yet");
    }

    /** How far apart they are; empty if they touch or clash. */
    public Optional<Gap> gap() {
        throw new UnsupportedOperationException("not built yet");
    }

    /** What both share, over all touches. */
    public Area area() {
        return touches.stream().map(Touch::area).reduce(Area.ZERO, Area::plus);
    }

    /** How much of the faces of that name other pieces cover: the union of their contacts. */
    public static Area hidden(PlacedSolid solid, String face, List<Touching> all) {
        throw new UnsupportedOperationException("not built yet");
    }
}
