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
        Optional<Figure<Length>> standOff,
        Optional<Figure<Length>> knobHole,
        Optional<Figure<Length>> backset) {
    public HungDoor {
        hinges = List.copyOf(hinges);
        onCarcass = List.copyOf(onCarcass);
        catches = List.copyOf(catches);
    }
}
