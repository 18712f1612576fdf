package org.kerfleaf.joint;

import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.measure.Length;

/**
 * How near the fasteners of a contact stand, as placed: the least of all of them, measured to the middle of the shank.
 *
 * @param end to an end of a board, along its grain; empty if neither part has one there
 * @param edge to an edge or opening, of either part
 * @param row to the next in the row; empty for one alone
 */
public record Clearances(Optional<Length> end, Optional<Length> edge, Optional<Length> row) {
    /** Where nothing is known of the places. */
    public static final Clearances NONE = new Clearances(Optional.empty(), Optional.empty(), Optional.empty());

    /** The nearer of both, one by one. */
    public Clearances and(Clearances other) {
        return new Clearances(least(end, other.end), least(edge, other.edge), least(row, other.row));
    }

    private static Optional<Length> least(Optional<Length> one, Optional<Length> other) {
        return Stream.of(one, other).flatMap(Optional::stream).min(Length::compareTo);
    }
}
