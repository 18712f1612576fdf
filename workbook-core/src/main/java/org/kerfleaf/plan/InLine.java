package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.shape.Touch;

/**
 * Pieces that lie on each other in line, so that one bolt goes through all of them: contacts of one stack are one.
 *
 * @param place where all of them overlap
 * @param through the piece that the bolt's head is on
 * @param into every further piece, in order
 */
record InLine(Touch place, Piece through, List<Piece> into) {
    /** The stacks of a joint. */
    static List<InLine> of(List<PlannedJoint.Touch> touches, Bodies bodies) {
        List<InLine> stacks = new ArrayList<>();
        List<PlannedJoint.Touch> left = new ArrayList<>(touches);
        while (!left.isEmpty()) {
            PlannedJoint.Touch first = left.remove(0);
            Touch place = first.place();
            List<Piece> into = new ArrayList<>(List.of(first.into()));
            for (PlannedJoint.Touch next : List.copyOf(left)) {
                boolean hangsOn = into.contains(next.into())
                        || into.contains(next.through())
                        || next.through().equals(first.through());
                Optional<Touch> both = hangsOn ? place.inLineWith(next.place()) : Optional.empty();
                if (both.isPresent()) {
                    place = both.get();
                    into.add(into.contains(next.into()) ? next.through() : next.into());
                    left.remove(next);
                }
            }
            Touch found = place;
            into.sort(Comparator.comparingDouble(
                    p -> bodies.of(p).project(found.frame().w()).least()));
            stacks.add(new InLine(place, first.through(), List.copyOf(into)));
        }
        return stacks;
    }

    /** All its pieces. */
    List<Piece> pieces() {
        List<Piece> all = new ArrayList<>(List.of(through));
        all.addAll(into);
        return all;
    }
}
