package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.SwingChecks.Stop;
import org.kerfleaf.shape.HingeLine;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Sweep;
import org.kerfleaf.shape.Vector;

/**
 * A piece that hangs on hinges, with what is fastened to it and glazed into it, and what it meets when it opens.
 *
 * @param name its name, with its number if there are several
 * @param piece the one the hinges are on
 * @param turned that and all that turns with it
 * @param others what stands in one frame with it and does not turn
 * @param out in the sheet, square to the hinges and out over their edge
 * @param in towards what it closes
 * @param line what it turns about
 * @param upTo how far it was turned to look
 * @param met what it meets up to there, by angle
 * @param stop what stops it
 * @param wide from the hinges' edge to the opposite one
 * @param inset if it lies between others: the gap at the edge away from the hinges
 */
record Hung(
        String name,
        Piece piece,
        List<PlacedSolid> turned,
        List<PlacedSolid> others,
        Vector out,
        Vector in,
        HingeLine line,
        Angle upTo,
        List<Sweep> met,
        Stop stop,
        Length wide,
        Optional<Length> inset) {

    /** Whether any of it can come where a piece is, looked at along the hinges. */
    boolean comesUnder(PlacedSolid other) {
        return turned.stream().anyMatch(t -> line.furthest(t) > line.nearest(other));
    }
}
