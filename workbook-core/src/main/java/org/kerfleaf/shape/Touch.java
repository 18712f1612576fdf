package org.kerfleaf.shape;

import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.locationtech.jts.geom.Polygon;

/**
 * A place where two solids lie face on face.
 *
 * @param faceOfA in the build
 * @param faceOfB in the build, facing the other way
 * @param frame of the shared plane: its origin is a corner of the smallest rectangle round the place, u runs along the longer
 *     side, v along the shorter, w out of a into b
 * @param polygon the shared place in that frame, in millimetres; one piece
 * @param along the longer side of the smallest rectangle round it: fasteners are spaced along it
 * @param across the shorter side: fasteners' edge distance is taken from it
 * @param worstGap between the two faces at the place's corners; never more than the tolerance
 */
public record Touch(
        PlacedSolid a,
        PlacedSolid b,
        Face faceOfA,
        Face faceOfB,
        Pose frame,
        Polygon polygon,
        Length along,
        Length across,
        Length worstGap) {
    public Area area() {
        return Area.ofSquareMillimetres(polygon.getArea());
    }

    /** A place of the contact in the build. @param u along, v across, in millimetres from the frame's origin */
    public Vector at(double u, double v) {
        return frame.toWorld(new Vector(u, v, 0));
    }

    /** The part of this contact that lies in line with another, square to both: what one bolt can go through; empty if there is none. */
    public Optional<Touch> inLineWith(Touch other) {
        return TouchSearch.inLine(this, other);
    }
}
