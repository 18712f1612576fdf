package org.kerfleaf.shape;

/**
 * An edge of one solid that lies on a face of the other where they share no area: a touch without glue.
 *
 * @param edgeOf whose edge it is
 * @param faceOf whose face it lies on
 */
public record LineTouch(PlacedSolid edgeOf, PlacedSolid faceOf, Face face, Vector from, Vector to) {
    /** In millimetres. */
    public double length() {
        return to.minus(from).length();
    }
}
