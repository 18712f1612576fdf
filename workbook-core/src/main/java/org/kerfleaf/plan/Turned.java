package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Where;

/** The way a part is turned before it has a place: along which axes its sizes run, alone or side by side. */
final class Turned {
    private Turned() {}

    /** The part's box with its lower corner where the axes meet. */
    static Box loose(SizedPart part, Placing placing) {
        Map<Axis, Length> extent = new EnumMap<>(Axis.class);
        Axis across = across(part, placing);
        Axis up = part.isTurnedWhenPlaced()
                ? widthOfBoard(placing, across)
                : part.standing().up();
        for (Axis axis : Axis.values()) {
            Length size = axis == across
                    ? part.across().value()
                    : axis == up ? part.up().value() : part.thickness().value();
            extent.put(axis, size);
        }
        return Box.of(extent.get(Axis.X), extent.get(Axis.Y), extent.get(Axis.Z));
    }

    private static Axis across(SizedPart part, Placing placing) {
        if (!part.isTurnedWhenPlaced()) {
            return part.standing().across();
        }
        for (Where where : placing.where()) {
            if (where instanceof Where.Standing) {
                return Axis.Z;
            }
            if (where instanceof Where.Running running) {
                return running.from() == Side.LEFT ? Axis.X : Axis.Y;
            }
        }
        throw new Unplannable(
                placing.origin(),
                "Which way does “%s” run? Say .standing(), .running(LEFT_TO_RIGHT) or .running(FRONT_TO_BACK)."
                        .formatted(placing.part()));
    }

    private static Axis widthOfBoard(Placing placing, Axis run) {
        boolean flat = placing.where().stream().anyMatch(Where.Flat.class::isInstance);
        boolean facesSide = placing.where().stream()
                .anyMatch(w -> w instanceof Where.Facing facing
                        && (facing.side() == Side.LEFT || facing.side() == Side.RIGHT));
        if (run == Axis.Z) {
            return facesSide ? Axis.Y : Axis.X;
        }
        return flat ? other(run) : Axis.Z;
    }

    private static Axis other(Axis level) {
        return level == Axis.X ? Axis.Y : Axis.X;
    }

    /** The level axis along which pieces of it stand side by side: not the way it runs. */
    static Axis rowAxis(SizedPart part, Placing placing) {
        Axis across = across(part, placing);
        if (part.isTurnedWhenPlaced()) {
            return across == Axis.Z ? widthOfBoard(placing, across) : other(across);
        }
        return part.standing() == Standing.LIES ? Axis.Y : across;
    }

    /** The box round a row. */
    static Box row(Box one, Axis axis, Where.SideBySide row) {
        Length whole = one.extent(axis).times(row.pieces()).plus(row.gap().times(row.pieces() - 1L));
        Map<Axis, Length> extent = new EnumMap<>(one.extent());
        extent.put(axis, whole);
        return new Box(one.low(), extent);
    }

    /** The boxes in a row that stands there. */
    static List<Box> apart(Box one, Box row, Axis axis, Where.SideBySide said) {
        List<Box> boxes = new ArrayList<>();
        Length step = one.extent(axis).plus(said.gap());
        for (int i = 0; i < said.pieces(); i++) {
            boxes.add(new Box(row.low(), one.extent()).movedBy(axis, step.times(i)));
        }
        return boxes;
    }
}
