package org.kerfleaf.sketch;

import java.util.List;
import org.kerfleaf.measure.Length;

/** One thing said of where a part goes. What nothing fixes is centred on the first part named. */
public sealed interface Where {
    /** Its face touches a face of the other: it lies on that side of it. */
    record Beside(Side side, Origin other) implements Where {}

    /** One on either side of the other. */
    record BothSides(Side one, Side two, Origin other) implements Where {}

    /** Over the other's top face by these clear gaps, one piece for each. */
    record Above(Origin other, List<Length> gaps) implements Where {}

    /** Its face touches the nearest face of the other, front to back or left to right, without saying which side. */
    record Against(Origin other) implements Where {}

    /** Its edge is in line with that edge of the first part named. */
    record FlushAt(Side side) implements Where {}

    /** Over an opening of the part named before. */
    record Over(String opening) implements Where {}

    /** So many of it in the space between two others, with equal gaps. */
    record Between(Origin one, Origin other, int pieces) implements Where {}

    /** So many of it side by side, with these gaps. */
    record SideBySide(int pieces, Length gap) implements Where {}

    /** Its wide face looks to this side. */
    record Facing(Side side) implements Where {}

    /** All its pieces stand round in a ring. */
    record Round(int pieces) implements Where {}

    /** It lies in a ring, where it fits. */
    record RestsIn(Origin ring) implements Where {}

    /** It lies on the sloping edges of these, which carry it. */
    record RestsOn(List<Origin> supports, int pieces) implements Where {}

    /** It runs along an edge of every piece of a placed roof, its upper side in line with the roof's. */
    record AlongRoof(Origin roofs, int pieces) implements Where {}

    /** It covers the ridge of a placed roof. */
    record OverRidge(Origin roofs) implements Where {}

    /** A board stands upright. */
    record Standing() implements Where {}

    /** A board runs from this side to the one opposite. */
    record Running(Side from) implements Where {}

    /** A board lies on its wide face. */
    record Flat() implements Where {}

    /** In the middle of the first part named. */
    record Centred() implements Where {}
}
