package org.kerfleaf.plan;

import java.util.List;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.shape.Contact;
import org.kerfleaf.sketch.Joint;

/**
 * A joint with where it touches and how many fasteners it takes.
 *
 * @param said what was said of it
 * @param touches every contact between its parts
 * @param fasteners how many in all; zero if nothing is driven
 * @param stack what a bolt goes through, one thickness after the other
 */
record PlannedJoint(Joint said, List<Touch> touches, Figure<Integer> fasteners, List<Length> stack) {
    /** One contact: the piece a fastener goes through, the piece it holds in, and how many go in here. */
    record Touch(Piece through, Piece into, Contact contact, Figure<Integer> fasteners) {}

    /** The area of all contacts. */
    Area area() {
        return touches.stream().map(t -> t.contact().area()).reduce(Area.ZERO, Area::plus);
    }

    /** {@code Back to Floor}. */
    String words() {
        List<String> from =
                touches.stream().map(t -> t.through().part()).distinct().toList();
        List<String> to = touches.stream().map(t -> t.into().part()).distinct().toList();
        return String.join(", ", from) + " to " + String.join(", ", to);
    }
}
