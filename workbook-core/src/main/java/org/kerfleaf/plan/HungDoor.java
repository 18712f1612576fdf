package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;

/**
 * Where hinges, catches and knob of a door or lid go.
 *
 * @param step the build step that hangs it, 0 above the first
 * @param door its name, with its number if there are several
 * @param from the end that places along the hinges are measured from: {@code the bottom}, {@code the left}
 * @param hinges middles of the hinges, from that end of the door
 * @param carcass what it closes, if one part is named; else empty
 * @param onCarcass the same middles from that end of it
 * @param catches middles of the catches, from that end of the door
 * @param edges the gap round it, of one that stands between others, or how far it laps its opening, edge by edge
 * @param room what is left of the gap away from the hinges; empty for one that lies on what it closes
 * @param under what it swings over and by how much, if anything lies under it
 * @param standOff how far a squeezed weatherstrip holds it off; everything that hangs on it is that much further out
 * @param knobHole the hole for a knob's spindle
 * @param backset from the door's edge to the knob's middle
 */
public record HungDoor(
        int step,
        String door,
        String from,
        List<Figure<Length>> hinges,
        Optional<String> carcass,
        List<Figure<Length>> onCarcass,
        List<Figure<Length>> catches,
        List<DoorEdge> edges,
        Optional<Room> room,
        Optional<Under> under,
        Optional<Figure<Length>> standOff,
        Optional<Figure<Length>> knobHole,
        Optional<Figure<Length>> backset) {
    public HungDoor {
        hinges = List.copyOf(hinges);
        onCarcass = List.copyOf(onCarcass);
        catches = List.copyOf(catches);
        edges = List.copyOf(edges);
    }

    /**
     * One edge of a door or lid.
     *
     * @param side where it is: {@code left}, {@code top}
     * @param inset whether the size is a gap to what stands beside it; else how far it laps the opening
     */
    public record DoorEdge(String side, boolean inset, Figure<Length> size) {}

    /**
     * What is left of the gap at the edge away from the hinges.
     *
     * @param gap as cut
     * @param film what paint on both edges takes of it
     * @param swelling what its boards swell across their grain when dampest; empty if that is not known
     * @param left the gap less both; empty if the swelling is not known
     */
    public record Room(
            Figure<Length> gap,
            Figure<Length> film,
            Optional<Figure<Length>> swelling,
            Optional<Figure<Length>> left) {}

    /** What lies under an opening door, and how far below its lower edge. */
    public record Under(String part, Figure<Length> clear) {}
}
