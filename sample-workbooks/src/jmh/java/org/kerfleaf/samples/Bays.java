package org.kerfleaf.samples;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;

/**
 * A shelf wall, bay by bay: an upright with eight grooves, a back with a round hole, eight shelves in the grooves. Ten parts to a
 * bay, every solid made anew, so that nothing worked out before is at hand.
 */
final class Bays {
    private static final Length THICK = millimetres(18);
    private static final Length DEEP = millimetres(300);
    private static final Length HIGH = millimetres(2000);
    private static final Length GROOVE = millimetres(6);
    private static final int SHELVES = 8;
    private static final double BAY = 600;
    private static final double STEP = 240;

    private Bays() {}

    static List<PlacedSolid> of(int parts) {
        List<PlacedSolid> all = new ArrayList<>();
        for (int bay = 0; bay < parts / (SHELVES + 2); bay++) {
            double left = bay * BAY;
            // Its inside, with the grooves, looks to the right, where the shelves are.
            all.add(new PlacedSolid("Upright", bay, upright(), Pose.of(new Vector(left, 0, 0), Vector.Y, Vector.Z)));
            all.add(new PlacedSolid(
                    "Back", bay, back(), Pose.of(new Vector(left, DEEP.inMillimetres() + 18, 0), Vector.X, Vector.Z)));
            for (int shelf = 0; shelf < SHELVES; shelf++) {
                Vector at = new Vector(left + 12, 0, 100 + shelf * STEP);
                Solid solid = Solid.of(Outline.rectangle(millimetres(BAY - 12), DEEP), THICK);
                all.add(new PlacedSolid("Shelf", bay * SHELVES + shelf, solid, Pose.HOME.moved(at)));
            }
        }
        return all;
    }

    private static Solid upright() {
        Solid solid = Solid.of(Outline.rectangle(DEEP, HIGH), THICK);
        for (int shelf = 0; shelf < SHELVES; shelf++) {
            Length from = millimetres(100 + shelf * STEP);
            solid = solid.groove("groove " + shelf, "BOTTOM", from, THICK, GROOVE, SheetSide.INSIDE);
        }
        return solid;
    }

    private static Solid back() {
        Outline hole = Outline.circle(millimetres(60)).moved(millimetres(300), millimetres(1900));
        return Solid.of(Outline.rectangle(millimetres(BAY), HIGH).opening("hole", hole), THICK);
    }

    private static Length millimetres(double length) {
        return Length.ofMillimetres(length);
    }
}
