package org.kerfleaf.rain;

import java.util.List;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

/** A place that water reaches. */
public sealed interface Wet {
    /** A point of it, for a mark. */
    Vector at();

    /**
     * An upward face, or the open part of one, that rain falls on or water stands on.
     *
     * @param squareMillimetres of it that is wet, in its own plane
     * @param longest the longer side of what is wet, all pieces together, in millimetres
     */
    record Surface(PlacedSolid solid, Face face, double squareMillimetres, double longest, Stands stands, Vector at)
            implements Wet {}

    /** Whether water stands on a surface. */
    enum Stands {
        /** It slopes. */
        NOT,
        /** It is level, and water runs off over its rim. */
        OPEN,
        /** It is level and closed in all round, and water leaves through a hole in it. */
        IN_A_BASIN
    }

    /**
     * A line between two pieces that water reaches and where their joint leads level or downward into the wood.
     *
     * @param from of the straight line
     */
    record Seam(PlacedSolid a, PlacedSolid b, Vector from, Vector to) implements Wet {
        /** In millimetres. */
        public double length() {
            return to.minus(from).length();
        }

        @Override
        public Vector at() {
            return from.plus(to).times(0.5);
        }
    }

    /**
     * A place that water runs into and cannot leave.
     *
     * @param solids whose faces keep it, each once
     * @param face the first of these faces
     */
    record Trap(List<PlacedSolid> solids, Face face, Vector at) implements Wet {
        public Trap {
            solids = List.copyOf(solids);
        }
    }

    /**
     * A lower edge where water creeps along a level under side to a wall: no groove makes it drip before.
     *
     * @param wall what it comes to
     * @param from of the edge
     * @param far how far it creeps, in millimetres
     */
    record Creep(PlacedSolid solid, PlacedSolid wall, Vector from, Vector to, double far) implements Wet {
        /** Of the edge, in millimetres. */
        public double length() {
            return to.minus(from).length();
        }

        @Override
        public Vector at() {
            return from.plus(to).times(0.5);
        }
    }
}
