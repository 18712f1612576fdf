package org.kerfleaf.rules;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether a door or lid has room to open. */
public final class SwingChecks {
    /** Opened less than this, a door is in the way of what goes in and out. */
    private static final Angle USEFUL = Angle.RIGHT;

    private static final Angle DEGREE = Angle.ofDegrees(1);
    private static final long FIVE_DEGREES = 5_000_000_000L;

    private SwingChecks() {}

    /**
     * What a door meets on its way.
     *
     * @param part which part
     * @param at opened so far
     * @param into how much of both would be in one place if it went on, in words; empty if nothing
     */
    public record Met(String part, Angle at, Optional<String> into) {}

    /**
     * What stops a door.
     *
     * @param fitted whether there is a stay
     * @param at where it stops, if said
     */
    public record Stop(boolean fitted, Optional<Angle> at) {}

    /**
     * Check 46: nothing is inside the sweep. Geometry of the solids: the first contact of all that turns with all that does not.
     *
     * @param upTo how far it was turned to look
     * @param met what it meets, by angle; empty if it opens freely
     */
    public static Check doorSwing(String of, Angle upTo, List<Met> met, Stop stop, MeasureStyle style) {
        Held held = new Held("Door swing", of, Reason.GEOMETRY, style);
        if (met.isEmpty()) {
            return held.holds("Opened to %s it meets nothing.".formatted(upTo.in(style)));
        }
        Met first = met.get(0);
        StringBuilder sentence = new StringBuilder(
                "Opened, it meets %s at %s.".formatted(first.part(), first.at().in(style)));
        first.into()
                .ifPresent(size -> sentence.append(
                        " Turned on to %s, %s of both would be in one place.".formatted(upTo.in(style), size)));
        met.stream()
                .filter(m -> !m.part().equals(first.part()))
                .findFirst()
                .ifPresent(next -> sentence.append(" Next comes %s, at %s."
                        .formatted(next.part(), next.at().in(style))));
        return stopped(held, sentence.toString(), first, stop, advice(first, style), style);
    }

    private static String advice(Met first, MeasureStyle style) {
        return first.at().compareTo(USEFUL) < 0
                ? "It does not open to 90°: a lower or narrower door, or less of %s, would clear it."
                        .formatted(first.part())
                : "A stay that stops it before %s would keep it off."
                        .formatted(first.at().in(style));
    }

    private static Check stopped(Held held, String sentence, Met first, Stop stop, String advice, MeasureStyle style) {
        if (stop.at().isPresent()) {
            Angle left = first.at().minus(stop.at().get());
            String much = (left.compareTo(Angle.ZERO) < 0 ? Angle.ZERO.minus(left) : left).in(style);
            return held.level(
                    sentence + " It is stopped at %s.".formatted(stop.at().get().in(style)),
                    first.at().isZero() ? -1 : left.inDegrees() / first.at().inDegrees(),
                    left.isZero() ? "nothing to spare" : much + " to spare",
                    "over by " + much,
                    advice);
        }
        return stop.fitted()
                ? held.notKnown(
                        sentence + " Where its stay stops it was not said.",
                        advice + " Say where it stops" + example(first))
                : held.falls(sentence + " Nothing stops it before.", advice);
    }

    /** Words for a stay that stops a degree or more short of the contact, at a whole five degrees. */
    private static String example(Met first) {
        long fives = first.at().minus(DEGREE).nanodegrees() / FIVE_DEGREES;
        return fives > 0 ? ": stay(\"chain\").stopsAt(\"%d deg\").".formatted(5 * fives) : ".";
    }

    /** Check 46, where hinges are fitted to nothing that is placed. */
    public static Check doorSwing(String of, String missing, MeasureStyle style) {
        return new Held("Door swing", of, Reason.GEOMETRY, style)
                .notKnown("What it meets when it opens cannot be looked at.", missing);
    }

    /**
     * What hangs lowest over a door.
     *
     * @param door its name
     * @param lowest the lowest part of the roof and its trim that the door can come under
     * @param hangs how far below the wall's top edge that hangs
     * @param top how far below the wall's top edge the door's top is
     * @param met at which angle the door meets any of the roof and its trim, if it does
     * @param stop what stops the door
     */
    public record Over(String door, String lowest, Length hangs, Length top, Optional<Angle> met, Stop stop) {}

    /**
     * Check 46: the eave drops below the wall's top edge, and what hangs there may be lower than a door's top. Measured on the
     * solids; the drop is the overhang along the slope · sin slope.
     */
    public static Check eaveDrop(String of, Length drop, Optional<Over> over, MeasureStyle style) {
        String sentence = "The eave ends %s below the wall's top edge.".formatted(Say.fine(drop, style));
        if (over.isEmpty()) {
            return new Held("Eave drop", of, Reason.GEOMETRY, style).holds(sentence);
        }
        Over door = over.get();
        Held held = new Held("Eave drop", of + " over " + door.door(), Reason.GEOMETRY, style);
        Length gap = door.top().minus(door.hangs());
        String both = sentence
                + " %s hangs to %s below it, the door's top is %s below it."
                        .formatted(door.lowest(), Say.fine(door.hangs(), style), Say.fine(door.top(), style));
        if (!gap.isNegative() || door.met().isEmpty()) {
            String much = gap.isNegative() ? "it opens past it" : Say.difference(gap, style) + " to spare";
            return held.level(both, Math.max(0, gap.dividedBy(door.top())), much, "", "");
        }
        String lower = " So the door is %s too high to open under it, and meets it at %s."
                .formatted(Say.difference(gap, style), door.met().get().in(style));
        Met met = new Met(door.lowest(), door.met().get(), Optional.empty());
        String advice =
                "A door %s lower would open under it. ".formatted(Say.difference(gap, style)) + advice(met, style);
        return stopped(held, both + lower, met, door.stop(), advice, style);
    }
}
