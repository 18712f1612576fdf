package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.shape.Pocket;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.sketch.Part;

/**
 * A part with all its sizes known.
 *
 * @param said what was said of it
 * @param standing how it stands
 * @param across its first size: wide, or deep for a part that faces a side; a board's length
 * @param up its second size on its larger face: high, or deep for a part that lies; a board's width
 * @param thickness by caliper, or dressed
 * @param solid its shape, as one sees it standing at the back, on the right or above and looking at its INSIDE
 * @param cutouts holes and openings
 * @param edges edges that are not square
 */
record SizedPart(
        Part said,
        Standing standing,
        Figure<Length> across,
        Figure<Length> up,
        Figure<Length> thickness,
        Solid solid,
        List<Cutout> cutouts,
        List<PlannedEdge> edges) {

    /** The area of one face: the outline less holes and openings; the floor of a rabbet counts with the face it lies in. */
    Area face(SheetSide side) {
        Area area = solid.area(side.name());
        for (Pocket pocket : solid.pockets()) {
            if (pocket.side() == side) {
                area = area.plus(solid.area(pocket.name() + " FLOOR"));
            }
        }
        return area;
    }

    /** How far up its face on that side reaches. */
    Length high(SheetSide side) {
        return Length.ofMillimetres(solid.face(side.name()).bounds().high().y());
    }

    Optional<Cutout> cutout(String name) {
        return cutouts.stream().filter(c -> c.name().equals(name)).findFirst();
    }

    /** The area of its larger face. */
    Area largerFace() {
        Area outside = face(SheetSide.OUTSIDE);
        Area inside = face(SheetSide.INSIDE);
        return outside.compareTo(inside) > 0 ? outside : inside;
    }

    /** Whether it is a board whose way was not said with its sizes, but where it is placed. */
    boolean isTurnedWhenPlaced() {
        return standing == Standing.AS_PLACED;
    }
}
