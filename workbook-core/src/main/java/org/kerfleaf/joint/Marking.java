package org.kerfleaf.joint;

import java.util.List;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;

/**
 * What is marked on one face of a part, as one sees it lying on the bench with that face up: u to the right, v up.
 *
 * @param part the part's name
 * @param title what stands over the drawing: letter, name, and which piece if pieces differ
 * @param solid the part in its own frame
 * @param up the face that lies up; with OUTSIDE up, left and right of the part's own frame are exchanged
 * @param guides lines to draw on it
 * @param holes middles of the holes to drill from this face, in millimetres; w is zero
 * @param faceUp which face lies up and how it is turned, in words
 * @param hand which hand it is and what its twin is, in words; may be empty
 * @param drilling what to drill at the holes, in words; may be empty
 */
public record Marking(
        String part,
        String title,
        Solid solid,
        SheetSide up,
        List<GuideLine> guides,
        List<Vector> holes,
        String faceUp,
        String hand,
        String drilling) {
    public Marking {
        guides = List.copyOf(guides);
        holes = List.copyOf(holes);
    }

    /** The outline as it is seen. */
    public Outline outline() {
        return up == SheetSide.INSIDE ? solid.outline() : solid.outline().mirrored();
    }

    /** How the part lies under the eye: the seen face up, within the same rectangle. */
    public Pose lying() {
        return lying(solid, up);
    }

    /** How a part lies with that face up, within the rectangle of its outline; where the part's own frame stands. */
    public static Pose lying(Solid solid, SheetSide up) {
        if (up == SheetSide.INSIDE) {
            return Pose.HOME;
        }
        Vector both =
                solid.outline().bounds().low().plus(solid.outline().bounds().high());
        double thick = solid.thickness().inMillimetres();
        return Pose.of(new Vector(both.x(), 0, thick), Vector.X.negated(), Vector.Y);
    }
}
