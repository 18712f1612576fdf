package org.kerfleaf.joint;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/**
 * How a fastener of a contact is set, and what it then does. Whatever does not apply, or is not known, is empty.
 *
 * @param in what it holds in
 * @param clearance the hole through the first part
 * @param pilot the hole for the thread in the second part
 * @param leadHole the hole the NDS asks of a wood screw that is pulled; empty if it asks none
 * @param sunk how deep the head is sunk
 * @param head how wide the countersink is
 * @param reach how far it goes into the second part
 * @param diameters the reach as a multiple of the shank's diameter
 * @param tip how much wood is left beyond the tip; negative if it comes out
 * @param thread how much thread is in the second part
 * @param gravity the specific gravity of the second part's wood
 * @param holds what one holds against a straight pull: a reference value, dry and for a load of ten years
 * @param holdsDamp the same in wood that stays damp
 * @param notHeld why {@code holds} is empty; empty if it is not
 * @param across what one holds sideways
 */
public record FastenerSetting(
        Hold in,
        Optional<Figure<Length>> clearance,
        Optional<Figure<Length>> pilot,
        Optional<Figure<Length>> leadHole,
        Optional<Figure<Length>> sunk,
        Optional<Figure<Length>> head,
        Optional<Figure<Length>> reach,
        Optional<Figure<Ratio>> diameters,
        Optional<Figure<Length>> tip,
        Optional<Figure<Length>> thread,
        Optional<Figure<Ratio>> gravity,
        Optional<Figure<Force>> holds,
        Optional<Figure<Force>> holdsDamp,
        String notHeld,
        Across across) {
    /**
     * What one holds across its own length: straight down where it lies level, the least of both ways along the grain where it
     * stands upright.
     *
     * @param holds a reference value, dry and for a load of ten years
     * @param holdsDamp the same in wood that stays damp
     * @param notHeld why they are empty; empty if they are not
     */
    public record Across(Optional<Figure<Force>> holds, Optional<Figure<Force>> holdsDamp, String notHeld) {
        /** Where it is not known what it holds. */
        public static Across notKnown(String why) {
            return new Across(Optional.empty(), Optional.empty(), why);
        }

        /** Where it is. */
        public static Across of(Figure<Force> holds) {
            return new Across(Optional.of(holds), Optional.of(Sideways.damp(holds)), "");
        }
    }

    /** The same, holding sideways what is given. */
    public FastenerSetting with(Across sideways) {
        return new FastenerSetting(
                in, clearance, pilot, leadHole, sunk, head, reach, diameters, tip, thread, gravity, holds, holdsDamp,
                notHeld, sideways);
    }

    /** Of a fastener of which nothing is looked up. */
    public static FastenerSetting unknown(Hold in, String why) {
        return new FastenerSetting(
                in,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                why,
                Across.notKnown(why));
    }
}
