package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Chain.Held;
import org.kerfleaf.plan.Chain.Link;
import org.kerfleaf.plan.Plan.PlannedSize;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.sketch.Sketch;

/**
 * Follows the parts that touch one after the other from one end of a build to the other.
 *
 * <p>What hangs (a door) is in no chain. What lies on a slope is in the chain up and down only, on top of what carries it.
 */
final class Chains {
    private final Sketch sketch;
    private final Assembly assembly;
    private final Bodies bodies;
    private final List<PlannedPart> parts;
    private final List<PlannedSize> sizes;

    Chains(Sketch sketch, Assembly assembly, Bodies bodies, List<PlannedPart> parts, List<PlannedSize> sizes) {
        this.sketch = sketch;
        this.assembly = assembly;
        this.bodies = bodies;
        this.parts = parts;
        this.sizes = sizes;
    }

    /** One chain for each direction of each build of more than one piece that stands square. */
    List<Chain> all() {
        List<Chain> chains = new ArrayList<>();
        for (List<Piece> build : assembly.builds()) {
            List<Piece> fixed = build.stream()
                    .filter(p -> bodies.has(p) && !Painting.isHung(sketch, p))
                    .toList();
            List<Piece> square =
                    fixed.stream().filter(p -> p.sloping().isEmpty()).toList();
            if (square.size() > 1) {
                for (Axis axis : Axis.values()) {
                    chains.add(chain(square, axis == Axis.Z ? fixed : square, axis));
                }
            }
        }
        return chains;
    }

    private Chain chain(List<Piece> square, List<Piece> counted, Axis axis) {
        List<Piece> pieces = longest(square, axis);
        List<Link> links = new ArrayList<>();
        pieces.forEach(p -> links.add(link(p, p.box().extent(axis))));
        if (axis == Axis.Z) {
            links.addAll(above(pieces.get(pieces.size() - 1), counted));
        }
        Length overall = Assembly.hull(counted).extent(axis);
        Piece first = square.get(0);
        return new Chain(assembly.number(first.placing()), first.part(), axis, links, overall, held(links, overall));
    }

    // ---- one after the other -------------------------------------------------------------------------------------

    private List<Piece> longest(List<Piece> build, Axis axis) {
        Length end = Assembly.hull(build).low(axis);
        Map<Piece, List<Piece>> known = new HashMap<>();
        List<Piece> best = List.of();
        for (Piece piece : build) {
            if (piece.box().low(axis).equals(end)) {
                best = better(best, onward(piece, build, axis, known), axis);
            }
        }
        return best;
    }

    /** The best chain that begins with this piece; each is followed once. */
    private List<Piece> onward(Piece piece, List<Piece> build, Axis axis, Map<Piece, List<Piece>> known) {
        List<Piece> found = known.get(piece);
        if (found == null) {
            List<Piece> rest = List.of();
            for (Piece next : build) {
                boolean follows = next.box().low(axis).equals(piece.box().high(axis));
                if (follows && touch(piece, next)) {
                    rest = better(rest, onward(next, build, axis, known), axis);
                }
            }
            found = new ArrayList<>(List.of(piece));
            found.addAll(rest);
            known.put(piece, found);
        }
        return found;
    }

    /** The chain that reaches further; of equal ones the one of more parts, then the earlier. */
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

    private boolean touch(Piece one, Piece other) {
        return !bodies.touching(one, other).touches().isEmpty();
    }

    /** What lies on the top of the chain on a slope and reaches further up: a roof, and the cap on it. */
    private List<Link> above(Piece top, List<Piece> build) {
        List<Link> links = new ArrayList<>();
        Piece last = top;
        for (Piece piece : build) {
            Length adds = piece.box().high(Axis.Z).minus(last.box().high(Axis.Z));
            if (piece.sloping().isPresent() && adds.isLongerThan(Touching.TOLERANCE) && touch(last, piece)) {
                links.add(link(piece, adds));
                last = piece;
            }
        }
        return links;
    }

    private Link link(Piece piece, Length size) {
        return new Link(
                piece.part(), part(piece.part()).map(PlannedPart::letter).orElse(""), size);
    }

    private Optional<PlannedPart> part(String name) {
        return parts.stream().filter(p -> p.name().equals(name)).findFirst();
    }

    // ---- what the maker holds ------------------------------------------------------------------------------------

    private List<Held> held(List<Link> links, Length overall) {
        List<Held> held = new ArrayList<>();
        for (PlannedSize size : sizes) {
            if (size.value() instanceof Length value) {
                span(links, overall, value).ifPresent(span -> held.add(new Held(size.label(), value, span)));
            }
        }
        return held;
    }

    private Optional<String> span(List<Link> links, Length overall, Length size) {
        if (same(size, overall)) {
            return Optional.of("outside");
        }
        for (int from = 1; from < links.size() - 1; from++) {
            Length clear = Length.ZERO;
            for (int to = from; to < links.size() - 1; to++) {
                clear = clear.plus(links.get(to).size());
                if (same(size, clear) && !isStock(links, from, to)) {
                    return Optional.of("between %s and %s"
                            .formatted(
                                    links.get(from - 1).part(),
                                    links.get(to + 1).part()));
                }
            }
        }
        for (int at = 0; at < links.size(); at++) {
            if (same(size, links.get(at).size()) && !isStock(links, at, at)) {
                return Optional.of(links.get(at).part());
            }
        }
        return Optional.empty();
    }

    private static boolean same(Length one, Length other) {
        return one.isWithin(other, Touching.TOLERANCE);
    }

    /** A link that is as long as its stock is thick is bought so, not held. */
    private boolean isStock(List<Link> links, int from, int to) {
        return from == to
                && part(links.get(from).part())
                        .filter(p -> same(p.thickness().value(), links.get(from).size()))
                        .isPresent();
    }
}
