package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Point;

/** Whether the two of a pair are the same piece. */
public enum Hands {
    /** The same piece turned round, with the same face inside: a pair of equals. */
    EQUAL,
    /** The same piece turned over: equals where either face may show, left and right where one face is the good one. */
    TURNED_OVER,
    /** Left and right. */
    LEFT_AND_RIGHT;

    private static final double NEAR = 1e-3;

    /**
     * By where the middles of the faces come to lie when the solid is mirrored about a middle plane of its box: left to right or
     * bottom to top makes EQUAL, face to face TURNED_OVER. Other symmetries are not looked for.
     */
    static Hands of(Solid solid) {
        List<Flag> flags = solid.faces().stream().map(Flag::of).toList();
        Vector middle = Bounds.of(solid.corners()).middle();
        if (isSame(flags, middle, new Vector(-1, 1, 1)) || isSame(flags, middle, new Vector(1, -1, 1))) {
            return EQUAL;
        }
        return isSame(flags, middle, new Vector(1, 1, -1)) ? TURNED_OVER : LEFT_AND_RIGHT;
    }

    /** A face's middle, direction and size. */
    private record Flag(Vector at, Vector normal, double area) {
        static Flag of(Face face) {
            Point middle = face.polygon().getCentroid();
            Vector at = face.frame().toWorld(new Vector(middle.getX(), middle.getY(), 0));
            return new Flag(at, face.normal(), face.squareMillimetres());
        }

        boolean isNear(Flag other) {
            return at.minus(other.at).length() < NEAR
                    && normal.minus(other.normal).length() < TouchSearch.OPPOSITE
                    && Math.abs(area - other.area) < NEAR * (1 + StrictMath.sqrt(area));
        }
    }

    private static boolean isSame(List<Flag> flags, Vector middle, Vector signs) {
        List<Flag> left = new ArrayList<>(flags);
        for (Flag flag : flags) {
            Vector at = middle.plus(scaled(flag.at().minus(middle), signs));
            Flag mirrored = new Flag(at, scaled(flag.normal(), signs), flag.area());
            Flag twin = left.stream().filter(mirrored::isNear).findFirst().orElse(null);
            if (twin == null) {
                return false;
            }
            left.remove(twin);
        }
        return true;
    }

    private static Vector scaled(Vector vector, Vector by) {
        return new Vector(vector.x() * by.x(), vector.y() * by.y(), vector.z() * by.z());
    }
}
