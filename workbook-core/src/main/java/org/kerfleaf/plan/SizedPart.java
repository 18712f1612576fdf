package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Side;

/**
 * A part with all its sizes known.
 *
 * @param said what was said of it
 * @param standing how it stands
 * @param across its first size: wide, or deep for a part that faces a side; a board's length
 * @param up its second size on its larger face: high, or deep for a part that lies; a board's width
 * @param thickness by caliper, or dressed
 * @param upOutside its second size on the outside face
 * @param upInside its second size on the inside face
 * @param lackingAbove what its outline lacks of the rectangle on account of a gable or sloping top
 * @param cutouts holes and openings
 * @param edges edges that are not square
 */
record SizedPart(
        Part said,
        Standing standing,
        Figure<Length> across,
        Figure<Length> up,
        Figure<Length> thickness,
        Length upOutside,
        Length upInside,
        Area lackingAbove,
        List<Cutout> cutouts,
        List<PlannedEdge> edges) {

    /** The area of one face: the outline less holes and openings. */
    Area face(Side side) {
        Length tall = side == Side.OUTSIDE ? upOutside : upInside;
        Area area = across.value().by(tall).minus(lackingAbove);
        for (Cutout cutout : cutouts) {
            area = area.minus(cutout.area());
        }
        return area;
    }

    Optional<Cutout> cutout(String name) {
        return cutouts.stream().filter(c -> c.name().equals(name)).findFirst();
    }

    /** The area of its larger face. */
    Area largerFace() {
        return upOutside.isLongerThan(upInside) ? face(Side.OUTSIDE) : face(Side.INSIDE);
    }
}
