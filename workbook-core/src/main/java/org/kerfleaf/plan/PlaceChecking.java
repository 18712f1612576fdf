package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.Check;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.Clash;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Touching;

/** Whether the sizes close in every direction, and whether two parts are in one place. */
final class PlaceChecking {
    private final Planned planned;

    PlaceChecking(Planned planned) {
        this.planned = planned;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        for (List<Piece> build : planned.assembly().builds()) {
            List<Piece> fixed = build.stream()
                    .filter(p ->
                            planned.bodies().has(p) && p.sloping().isEmpty() && !Painting.isHung(planned.sketch(), p))
                    .toList();
            if (fixed.size() > 1) {
                for (Axis axis : Axis.values()) {
                    closes(fixed, axis).ifPresent(checks::add);
                }
            }
        }
        if (planned.assembly().all().size() > 1) {
            checks.add(onePlaceOnePart());
        }
        return checks;
    }

    /** Follows the parts that touch one after the other from one end to the other: their sizes must add up to the whole. One part alone says nothing. */
    private Optional<Check> closes(List<Piece> build, Axis axis) {
        Box hull = Assembly.hull(build);
        List<Piece> chain = List.of();
        for (Piece piece : build) {
            if (piece.box().low(axis).equals(hull.low(axis))) {
                chain = better(chain, follow(List.of(piece), build, axis), axis);
            }
        }
        Length whole = hull.extent(axis);
        Length sum = chain.get(chain.size() - 1).box().high(axis).minus(hull.low(axis));
        String words = chain.stream()
                .map(p -> p.part() + " "
                        + p.box().extent(axis).read(planned.style()).text())
                .collect(Collectors.joining(" + "));
        String name = "Sizes close: " + axis.words() + ", " + build.get(0).part();
        String result = words + " = " + sum.in(planned.style()) + "; outside " + whole.in(planned.style()) + ".";
        if (sum.equals(whole) && chain.size() == 1) {
            return Optional.empty();
        }
        if (sum.equals(whole)) {
            return Optional.of(new Check(
                    name, result, "closes exactly", OptionalDouble.of(1), Check.Verdict.HOLDS, "", Reason.GEOMETRY));
        }
        Length lacks = whole.minus(sum);
        return Optional.of(new Check(
                name,
                result,
                "short by " + lacks.in(planned.style()),
                OptionalDouble.of(-lacks.dividedBy(whole)),
                Check.Verdict.SHORT,
                "Nothing touches the far side of %s. A part %s longer, or moved, would close it."
                        .formatted(chain.get(chain.size() - 1).part(), lacks.in(planned.style())),
                Reason.GEOMETRY));
    }

    private List<Piece> follow(List<Piece> chain, List<Piece> build, Axis axis) {
        Piece last = chain.get(chain.size() - 1);
        List<Piece> best = chain;
        for (Piece next : build) {
            boolean onward = next.box().low(axis).equals(last.box().high(axis));
            if (onward && !planned.bodies().touching(last, next).touches().isEmpty()) {
                List<Piece> longer = new ArrayList<>(chain);
                longer.add(next);
                best = better(best, follow(longer, build, axis), axis);
            }
        }
        return best;
    }

    /** The chain that reaches further; of equal ones the one of more parts. */
    private static List<Piece> better(List<Piece> one, List<Piece> other, Axis axis) {
        if (one.isEmpty()) {
            return other;
        }
        int further = end(other, axis).compareTo(end(one, axis));
        return further > 0 || further == 0 && other.size() > one.size() ? other : one;
    }

    private static Length end(List<Piece> chain, Axis axis) {
        return chain.get(chain.size() - 1).box().high(axis);
    }

    private Check onePlaceOnePart() {
        List<PlacedSolid> solids = new ArrayList<>(planned.bodies().all().values());
        for (Touching pair : Touching.all(solids)) {
            if (pair.clash().isPresent()) {
                return clash(pair);
            }
        }
        return new Check(
                "One place, one part",
                "No two of the " + solids.size() + " placed pieces are in one place.",
                "",
                OptionalDouble.empty(),
                Check.Verdict.HOLDS,
                "",
                Reason.GEOMETRY);
    }

    private Check clash(Touching pair) {
        Clash clash = pair.clash().orElseThrow();
        Length least = clash.sizes().stream().reduce(Length::min).orElseThrow();
        return new Check(
                "One place, one part",
                "%s and %s are in one place: %s of both."
                        .formatted(pair.a().part(), pair.b().part(), Clashes.size(clash, planned.style())),
                least.in(planned.style()) + " too much",
                OptionalDouble.of(-1),
                Check.Verdict.SHORT,
                "One of them %s smaller, or moved by as much, would do.".formatted(least.in(planned.style())),
                Reason.GEOMETRY);
    }
}
