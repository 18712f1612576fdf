package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Touch;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.Origin;

/** Which contacts of a painted piece are glued after it was painted: glue does not hold on paint. */
final class GluedLater {
    private final List<Contact> glued = new ArrayList<>();

    /** A glued contact, looked at from one of its two pieces. */
    record Contact(PlannedJoint joint, Piece piece, Face face, Piece other, Touch place) {
        /** The wide face it is on; empty for an edge. */
        Optional<SheetSide> side() {
            return Bodies.isWide(face) ? Optional.of(SheetSide.valueOf(face.name())) : Optional.empty();
        }

        /** {@code left slope edge}. */
        String edgeWords() {
            return face.name().toLowerCase(Locale.ROOT).replace('_', ' ') + " edge";
        }
    }

    GluedLater(List<PlannedJoint> joints) {
        for (PlannedJoint joint : joints) {
            if (joint.said().glue().isPresent()) {
                for (PlannedJoint.Touch touch : joint.touches()) {
                    Touch place = touch.place();
                    glued.add(new Contact(joint, touch.through(), place.faceOfA(), touch.into(), place));
                    glued.add(new Contact(joint, touch.into(), place.faceOfB(), touch.through(), place));
                }
            }
        }
    }

    /** Those on the face that is coated. */
    List<Contact> on(Coated coated) {
        return of(coated).stream()
                .filter(c -> c.side().isPresent() && c.side().equals(coated.side()))
                .toList();
    }

    /** How much of the coated face is masked: what is not covered anyhow when it is coated. */
    Area masked(Coated coated) {
        Origin when = coated.coat().origin();
        return on(coated).stream()
                .filter(c -> !Painting.isThere(c.piece(), when) || !Painting.isThere(c.other(), when))
                .map(c -> c.place().area())
                .reduce(Area.ZERO, Area::plus);
    }

    /** Those on edges of the piece whose face is coated: a brush runs over them. */
    List<Contact> besides(Coated coated) {
        return of(coated).stream().filter(c -> c.side().isEmpty()).toList();
    }

    private List<Contact> of(Coated coated) {
        Coat coat = coated.coat();
        return glued.stream()
                .filter(c -> c.piece().part().equals(coated.part()))
                .filter(c -> coated.piece().map(c.piece()::equals).orElse(true))
                .filter(c -> c.joint().said().origin().compareTo(coat.origin()) > 0)
                .toList();
    }
}
