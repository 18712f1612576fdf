package org.kerfleaf.shape;

/**
 * A straight edge of a face, its wood on the left when looked at from outside.
 *
 * @param group the arc it is a chord of, from 1 within the part; 0 where it is a straight edge of the piece itself
 * @param smooth whether the surface goes on round it (between facets of one arc, or where an arc meets a straight wall): drawn
 *     only where one side faces the viewer and the other does not
 */
public record FaceEdge(Vector from, Vector to, int group, boolean smooth) {
    public double length() {
        return to.minus(from).length();
    }
}
