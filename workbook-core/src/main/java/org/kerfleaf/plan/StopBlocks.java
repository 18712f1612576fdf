package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.saw.Reading;
import org.kerfleaf.sketch.PartKind;

/** Where the stop block stands on the mitre saw, so that equal pieces need no second line. */
final class StopBlocks {
    private final List<PlannedPart> parts;
    private final Sizing sizing;

    StopBlocks(List<PlannedPart> parts, Sizing sizing) {
        this.parts = parts;
        this.sizing = sizing;
    }

    /** Square ends and where they stop. */
    record Square(String words, List<Reading> set) {}

    /** The square ends of a board: two with a stop block, or the one that is cut before the other is mitred; empty if it has none. */
    Optional<Square> square(PlannedPart part, SizedPart own) {
        return switch (Ends.of(own, part.edges()).size()) {
            case 0 -> Optional.of(new Square("square ends", List.of(shared(part.length()))));
            case 1 -> Optional.of(new Square("one end square, before the other is cut", List.of()));
            default -> Optional.empty();
        };
    }

    /** One stop for all boards of that length with square ends. */
    private Reading shared(Figure<Length> length) {
        List<PlannedPart> equal = parts.stream()
                .filter(p -> p.kind() == PartKind.BOARD && p.length().value().equals(length.value()))
                .filter(p ->
                        Ends.of(sizing.of(p.name()).orElseThrow(), p.edges()).isEmpty())
                .toList();
        String letters = equal.stream().map(PlannedPart::letter).collect(Collectors.joining(" "));
        int pieces = equal.stream().mapToInt(PlannedPart::count).sum();
        return new Reading(
                "stop block, %s, %s".formatted(letters, pieces(pieces)),
                equal.get(0).length());
    }

    /** The stop for the ends of a board that are not square: the long point lies at it; and where the short point then is. */
    List<Reading> of(PlannedPart part, SizedPart own) {
        List<Reading> set = new ArrayList<>();
        set.add(new Reading(
                "stop block, long point, %s, %s".formatted(part.letter(), pieces(part.count())), part.length()));
        Length lacks = Length.ZERO;
        for (PlannedEdge end : Ends.of(own, part.edges())) {
            lacks = lacks.plus(end.shorter().value());
        }
        Length shortest = part.length().value().minus(lacks);
        if (lacks.isPositive() && shortest.isPositive()) {
            set.add(new Reading(
                    "short point, " + part.letter(),
                    Figure.of(
                            shortest,
                            "long point − what its ends lack there",
                            Reason.GEOMETRY,
                            given("long point", part.length().value()),
                            given("ends lack", lacks))));
        }
        return set;
    }

    private static String pieces(int count) {
        return count == 1 ? "1 piece" : count + " pieces";
    }
}
