package org.kerfleaf.sketch;

import org.kerfleaf.measure.Length;

/**
 * A bead of caulk, as it lies in its seam.
 *
 * @param across how wide, more than nothing
 * @param deep how deep, more than nothing
 * @param lies how it lies
 * @group sealing and paint
 */
public record Bead(Length across, Length deep, Lies lies) {
    /** @throws SketchException if it is not more than nothing */
    public Bead {
        if (!across.isPositive() || !deep.isPositive()) {
            throw new SketchException(
                    "A bead %s wide and %s deep: both more than 0 would be right.".formatted(across, deep));
        }
    }

    /** How a bead lies in its seam. */
    public enum Lies {
        /** Round, as it comes from the cartridge. */
        ROUND,
        /** In a joint between two parts, which gives it a width and a depth. */
        IN_JOINT,
        /** Across a corner, a triangle with its width and depth along the two faces. */
        IN_CORNER
    }

    /** Pressed into a joint so deep, and as wide as was said. @example seal(seamsOf(length("6 ft"))).with(sealer, bead("3/8 in").deep("1/4 in")) */
    public Bead deep(String depth) {
        return new Bead(across, SketchRun.length(depth), Lies.IN_JOINT);
    }

    /** Smoothed into a corner, as wide on either face as was said. @example seal(insideSeams()).with(sealer, bead("1/4 in").inCorner()) */
    public Bead inCorner() {
        return new Bead(across, across, Lies.IN_CORNER);
    }
}
