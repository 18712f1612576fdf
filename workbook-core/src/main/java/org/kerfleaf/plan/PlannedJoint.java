package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.joint.ScrewChoice;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.sketch.Joint;

/**
 * A joint with where it touches and how many fasteners it takes.
 *
 * @param said what was said of it
 * @param touches every contact between its parts
 * @param fasteners how many in all; zero if nothing is driven
 * @param stack what a bolt goes through, one thickness after the other
 * @param behind the wall it is fastened to, if it is
 * @param choice how its screw was chosen, if it was; then {@code said} holds that screw
 */
record PlannedJoint(
        Joint said,
        List<Touch> touches,
        Figure<Integer> fasteners,
        List<Length> stack,
        Optional<Behind> behind,
        Optional<ScrewChoice> choice) {
    /**
     * The wall it is fastened to.
     *
     * @param part what the fasteners go through
     * @param thickness of it along them
     * @param studs the wood behind
     */
    record Behind(String part, Length thickness, String studs) {}

    /**
     * One contact.
     *
     * @param through the piece a fastener goes through
     * @param into the piece it holds in
     * @param place where they lie face on face
     * @param thickness of the first along the fastener
     * @param depth of the second along the fastener
     * @param fasteners how many go in here
     */
    record Touch(
            Piece through,
            Piece into,
            org.kerfleaf.shape.Touch place,
            Length thickness,
            Length depth,
            Figure<Integer> fasteners) {}

    /** The area of all contacts. */
    Area area() {
        return touches.stream().map(t -> t.place().area()).reduce(Area.ZERO, Area::plus);
    }

    /** {@code Back to Floor}. */
    static String words(List<Touch> touches) {
        List<String> from =
                touches.stream().map(t -> t.through().part()).distinct().toList();
        List<String> to = touches.stream().map(t -> t.into().part()).distinct().toList();
        return String.join(", ", from) + " to " + String.join(", ", to);
    }

    /** The same of the joint; of a wall only its studs are named. */
    String words() {
        if (behind.isPresent()) {
            return behind.get().part() + " to studs";
        }
        return words(touches);
    }
}
