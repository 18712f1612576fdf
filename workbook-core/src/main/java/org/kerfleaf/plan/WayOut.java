package org.kerfleaf.plan;

import org.kerfleaf.shape.Vector;

/**
 * How a placed piece comes out of its place again: the way it went in, backwards.
 *
 * @param along in the build's frame, one long; zero for a piece that stays
 * @param off which piece it comes off, by its place in {@link Plan#placed()}; -1 for a piece that stays
 */
public record WayOut(Vector along, int off) {
    /** Of the piece that a build begins with. */
    public static final WayOut STAYS = new WayOut(Vector.ZERO, -1);

    /** Whether it does not come off anything. */
    public boolean stays() {
        return off < 0;
    }
}
