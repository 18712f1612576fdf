package org.kerfleaf.plan;

import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;

/**
 * A hole or opening with its place in a part's face.
 *
 * @param name its name
 * @param opening an opening, or else a round hole
 * @param from from the part's left (or front) edge to its near side
 * @param up from the part's lower (or front) edge to its near side
 * @param wide its width, or diameter
 * @param high its height, or diameter
 * @param radius of its corners
 */
record Cutout(String name, boolean opening, Length from, Length up, Length wide, Length high, Length radius) {
    Length middleAcross() {
        return from.plus(wide.half());
    }

    Length middleUp() {
        return up.plus(high.half());
    }

    /** A rectangle less what its rounded corners give back: w·h − (4 − π)·r², which for a round hole is π·r². */
    Area area() {
        double radiusMm = radius.inMillimetres();
        return wide.by(high).minus(Area.ofSquareMillimetres((4 - Math.PI) * radiusMm * radiusMm));
    }
}
