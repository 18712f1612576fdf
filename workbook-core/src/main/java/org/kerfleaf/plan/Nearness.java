package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.joint.Clearances;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.LineThrough;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.PartKind;

/** How near the fasteners of a contact stand to ends, edges and each other, measured on the pieces as they are cut. */
final class Nearness {
    /** A direction this near to the grain runs along it: the cosine. */
    private static final double ALONG = 0.9;

    private final Sizing sizing;
    private final Bodies bodies;

    Nearness(Sizing sizing, Bodies bodies) {
        this.sizing = sizing;
        this.bodies = bodies;
    }

    Clearances of(DrivenContact contact) {
        return contact.pieces().stream()
                .map(piece -> of(piece, contact))
                .reduce(Clearances.NONE, Clearances::and)
                .and(new Clearances(Optional.empty(), Optional.empty(), row(contact)));
    }

    /** In one of the two pieces. */
    Clearances of(Piece piece, DrivenContact contact) {
        return contact.fasteners().stream()
                .map(one -> of(piece, contact, one))
                .reduce(Clearances::and)
                .orElse(Clearances.NONE);
    }

    /** Looked at in the middle of what of the shank is in the piece's wood. */
    private Clearances of(Piece piece, DrivenContact contact, DrivenFastener one) {
        PlacedSolid solid = bodies.of(piece);
        Vector way = one.way();
        double length = one.tip().minus(one.head()).length();
        Optional<Vector> middle = LineThrough.of(solid, one.head(), way).stream()
                .filter(s -> s.leave() > 0 && s.enter() < length)
                .findFirst()
                .map(s -> one.head().plus(way.times((Math.max(0, s.enter()) + Math.min(length, s.leave())) / 2)));
        if (middle.isEmpty()) {
            return Clearances.NONE;
        }
        boolean board = sizing.of(piece.part())
                .filter(part -> part.said().kind() == PartKind.BOARD)
                .isPresent();
        Vector grain = solid.pose().u();
        Optional<Length> end = Optional.empty();
        Optional<Length> edge = Optional.empty();
        for (Vector side : List.of(
                contact.driver().place().frame().u(),
                contact.driver().place().frame().v())) {
            Optional<Length> free = free(solid, middle.get(), side);
            if (board && Math.abs(side.dot(grain)) > ALONG) {
                end = free;
            } else {
                edge = Stream.of(edge, free).flatMap(Optional::stream).min(Length::compareTo);
            }
        }
        return new Clearances(end, edge, Optional.empty());
    }

    private static Optional<Length> free(PlacedSolid solid, Vector from, Vector side) {
        return LineThrough.of(solid, from, side).stream()
                .filter(s -> s.enter() <= 0 && s.leave() >= 0)
                .findFirst()
                .map(s -> Length.ofMillimetres(Math.min(-s.enter(), s.leave())));
    }

    /** From one to the next in a row, where they stand nearest. */
    static Optional<Length> row(DrivenContact contact) {
        return contact.rows().stream()
                .flatMap(row -> Stream.iterate(1, i -> i < row.along().size(), i -> i + 1)
                        .map(i -> row.along().get(i) - row.along().get(i - 1)))
                .min(Double::compare)
                .map(Length::ofMillimetres);
    }
}
