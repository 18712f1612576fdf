package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.kerfleaf.measure.Angle;

/**
 * The first contact of something that turns with a piece that stands still. Touching is no contact: it begins where one would
 * go into the other.
 *
 * @param line what it turns about
 * @param turned which of the turning pieces gets there first
 * @param met what it meets
 * @param at after which angle; zero if both are in one place from the start
 */
public record Sweep(HingeLine line, PlacedSolid turned, PlacedSolid met, Angle at) {
    /**
     * Turns pieces that hang together about a line and finds the first contact with each of the others.
     *
     * @param upTo how far, from zero to one whole turn
     * @return one for each of the others that is met, by angle, then in the order of the list
     * @throws IllegalArgumentException if the angle is less than zero or more than a whole turn
     */
    public static List<Sweep> of(List<PlacedSolid> turned, HingeLine line, Angle upTo, List<PlacedSolid> others) {
        if (upTo.compareTo(Angle.ZERO) < 0 || upTo.compareTo(Angle.RIGHT.times(4)) > 0) {
            throw new IllegalArgumentException("Turned by %s: 0 to 360 deg would be right.".formatted(upTo));
        }
        Pose frame = line.frame();
        List<SweepBody> moving =
                turned.stream().map(solid -> new SweepBody(solid, frame)).toList();
        List<Sweep> found = new ArrayList<>();
        for (PlacedSolid other : others) {
            SweepBody still = new SweepBody(other, frame);
            double first = upTo.inRadians();
            PlacedSolid with = null;
            for (SweepBody body : moving) {
                OptionalDouble at = SweepSearch.meets(body, still, first);
                if (at.isPresent()) {
                    first = at.getAsDouble();
                    with = body.solid();
                }
            }
            if (with != null) {
                found.add(new Sweep(line, with, other, Angle.ofDegrees(StrictMath.toDegrees(first))));
            }
        }
        found.sort(Comparator.comparing(Sweep::at));
        return found;
    }

    /** How far it would be in what it meets if it were turned on to this angle. */
    public Optional<Clash> into(Angle angle) {
        return ClashSearch.between(line.turned(turned, angle), met);
    }
}
