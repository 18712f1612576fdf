package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Trait;

/** Puts the sides of a ring round its middle, the first one in front, and a floor into it. The ring's foot is at z = 0. */
final class Rings {
    private Rings() {}

    static List<Piece> round(Placing placing, SizedPart side) {
        Trait.RingOf ring = side.said()
                .trait(Trait.RingOf.class)
                .orElseThrow(() -> new Unplannable(
                        placing.origin(),
                        "“%s” goes round in a ring, but of how many? Say .ringOf(6, \"15 deg\") where it is made."
                                .formatted(placing.part())));
        double lean = ring.leansOut().inRadians();
        double below = ring.leansOut().rise(side.thickness().value()).inMillimetres();
        double foot = RingSizes.footFromMiddle(side);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < ring.sides(); i++) {
            double turn = -StrictMath.PI / 2 + 2 * StrictMath.PI * i / ring.sides();
            Vector out = new Vector(StrictMath.cos(turn), StrictMath.sin(turn), 0);
            Vector up = out.times(StrictMath.sin(lean)).plus(Vector.Z.times(StrictMath.cos(lean)));
            Vector along = out.cross(Vector.Z);
            // The blank begins below the foot of the outside face: there its inside face ends.
            Vector corner = out.times(foot)
                    .minus(up.times(below))
                    .minus(along.times(side.solid().outline().wide().inMillimetres() / 2));
            PlacedSolid solid = new PlacedSolid(placing.part(), i, side.solid(), Pose.of(corner, along, up));
            pieces.add(Piece.sloping(placing.origin(), i, solid));
        }
        return pieces;
    }

    /** A floor with one side in front, as far up as its sizes say. */
    static List<Piece> floor(Placing placing, SizedPart floor, SizedPart side) {
        Length up = floor.said()
                .trait(Trait.FitsRing.class)
                .orElseThrow(() -> new Unplannable(
                        placing.origin(),
                        "“%s” rests in a ring, but where does it fit? Say .fitsInRing(side, \"1 in\") where it is made."
                                .formatted(placing.part())))
                .up();
        Length front = Length.ofMillimetres(-RingSizes.floorFromMiddle(floor, side));
        Box box = Box.of(
                        floor.across().value(),
                        floor.up().value(),
                        floor.thickness().value())
                .lowAt(Axis.X, floor.across().value().half().negated())
                .lowAt(Axis.Y, front)
                .lowAt(Axis.Z, up);
        return List.of(new Piece(placing.part(), placing.origin(), 0, box));
    }
}
