package org.kerfleaf.plan;

import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.saw.Reading;
import org.kerfleaf.saw.SawAngles;
import org.kerfleaf.sketch.Meets;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Trait;

/** What the edges of a part that are not square are for: along the grain or across it, and what they meet. */
final class Ends {
    private Ends() {}

    /** Whether it runs the length of a board, so that no mitre saw cuts it. */
    static boolean isLong(SizedPart part, PlannedEdge edge) {
        return part.isTurnedWhenPlaced()
                && part.said().traits(Trait.Bevelled.class).stream()
                        .filter(bevel -> edge.name().startsWith(bevel.edge().words() + ","))
                        .anyMatch(bevel -> part.standing()
                                .edge(bevel.edge())
                                .filter(e -> e.equals("LEFT") || e.equals("RIGHT"))
                                .isEmpty());
    }

    /** The edges at the ends of a board. */
    static List<PlannedEdge> of(SizedPart part, List<PlannedEdge> edges) {
        return edges.stream().filter(edge -> !isLong(part, edge)).toList();
    }

    /** Whether it meets another like it; a brace's end, or a top under a lid, meets something flat. */
    static boolean meetItsLike(Part part, PlannedEdge edge) {
        if (part.trait(Trait.Brace.class).isPresent()
                || part.trait(Trait.SlopingTop.class).isPresent()) {
            return false;
        }
        boolean mitred = part.traits(Trait.Mitred.class).stream()
                .anyMatch(m -> edge.name().startsWith(m.end().words() + " end"));
        boolean twin = part.traits(Trait.MeetsTwin.class).stream()
                .anyMatch(t -> edge.name().startsWith(t.edge().words()));
        return edge.cut() != PlannedEdge.Cut.BEVEL || mitred || twin;
    }

    /** How deep a plumb fascia is that a rake so wide meets with this end; nothing of other ends. */
    static List<Reading> fascia(Part part, PlannedEdge edge, Length width) {
        return part.traits(Trait.Mitred.class).stream()
                .filter(m -> m.meets().kind() == Meets.Kind.PLUMB_EAVE)
                .filter(m -> edge.name().startsWith(m.end().words() + " end"))
                .map(m -> new Reading(
                        "a plumb fascia that matches it, deep",
                        SawAngles.fasciaDepth(width, m.meets().one())))
                .toList();
    }
}
