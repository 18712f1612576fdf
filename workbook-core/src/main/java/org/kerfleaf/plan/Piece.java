package org.kerfleaf.plan;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Origin;

/**
 * One piece of a part, in its place.
 *
 * @param part the part's name
 * @param placing where it was said
 * @param index which of the placing's pieces, from 0
 * @param box the smallest square box round it, exact for a piece that stands square in the frame
 * @param sloping its solid, for a piece that does not
 */
record Piece(String part, Origin placing, int index, Box box, Optional<PlacedSolid> sloping) {
    Piece(String part, Origin placing, int index, Box box) {
        this(part, placing, index, box, Optional.empty());
    }

    /** A piece that lies on a slope. */
    static Piece sloping(Origin placing, int index, PlacedSolid solid) {
        Vector low = solid.bounds().low();
        Vector size = solid.bounds().sizes();
        Box box = Box.of(millimetres(size.x()), millimetres(size.y()), millimetres(size.z()))
                .lowAt(Axis.X, millimetres(low.x()))
                .lowAt(Axis.Y, millimetres(low.y()))
                .lowAt(Axis.Z, millimetres(low.z()));
        return new Piece(solid.part(), placing, index, box, Optional.of(solid));
    }

    private static Length millimetres(double number) {
        return Length.ofMillimetres(number);
    }

    Piece movedBy(Axis axis, Length by) {
        Vector step = axis.unit().times(by.inMillimetres());
        return new Piece(
                part,
                placing,
                index,
                box.movedBy(axis, by),
                sloping.map(s -> s.at(s.pose().moved(step))));
    }
}
