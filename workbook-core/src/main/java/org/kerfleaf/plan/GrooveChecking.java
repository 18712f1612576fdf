package org.kerfleaf.plan;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.GrooveChecks;
import org.kerfleaf.shape.OutlineEdge;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pocket;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Trait;

/** Whether grooves fit what stands in them. A groove in which nothing stands (a drip groove) has nothing to fit. */
final class GrooveChecking {
    private static final double TOLERANCE = Touching.TOLERANCE.inMillimetres();

    private final Planned planned;

    GrooveChecking(Planned planned) {
        this.planned = planned;
    }

    /** One check for each groove of a part and each part that stands in it, in whichever of its pieces. */
    List<Check> all() {
        Map<String, Check> checks = new LinkedHashMap<>();
        for (List<Piece> build : planned.assembly().builds()) {
            for (Piece piece : build) {
                for (Trait.GrooveIn groove : grooves(piece)) {
                    build.stream()
                            .filter(other ->
                                    !other.equals(piece) && planned.bodies().has(other))
                            .forEach(other -> tongue(piece, groove, other)
                                    .map(tongue -> check(piece, groove, other, tongue))
                                    .ifPresent(check -> checks.merge(check.name(), check, GrooveChecking::worse)));
                }
            }
        }
        return List.copyOf(checks.values());
    }

    private List<Trait.GrooveIn> grooves(Piece piece) {
        return planned.bodies().has(piece)
                ? planned.sized(piece.part()).orElseThrow().said().traits(Trait.GrooveIn.class)
                : List.of();
    }

    private static Check worse(Check one, Check other) {
        return List.of(one, other).stream()
                .min(Comparator.comparingDouble(check -> check.level().orElse(0)))
                .orElseThrow();
    }

    private Check check(Piece piece, Trait.GrooveIn groove, Piece other, Length tongue) {
        String of = "%s in “%s” of %s".formatted(other.part(), groove.name(), piece.part());
        String stock = planned.sized(other.part()).orElseThrow().said().stock();
        return isMeasured(stock)
                ? GrooveChecks.fit(of, groove.wide(), tongue, planned.style())
                : GrooveChecks.fitNotKnown(of, groove.wide(), stock, planned.style());
    }

    /** A sheet by caliper, or a board whose section was said as measured. */
    private boolean isMeasured(String stock) {
        return planned.sketch()
                        .sheet(stock)
                        .filter(sheet -> sheet.measured().isPresent())
                        .isPresent()
                || planned.sketch()
                        .lumber(stock)
                        .filter(lumber -> lumber.thickness().isPresent())
                        .isPresent();
    }

    /** How thick, across the groove, what of the other piece stands in it is; empty if it stays out of the groove. */
    private Optional<Length> tongue(Piece piece, Trait.GrooveIn groove, Piece other) {
        PlacedSolid grooved = planned.bodies().of(piece);
        Pocket pocket = grooved.solid().pockets().stream()
                .filter(p -> p.name().equals(groove.name()))
                .findFirst()
                .orElseThrow();
        boolean inside = pocket.side() == SheetSide.INSIDE;
        double face = inside ? grooved.solid().thickness().inMillimetres() : 0;
        Vector out = inside ? grooved.pose().w() : grooved.pose().w().negated();
        Optional<PlacedSolid> sunk =
                planned.bodies().of(other).behind(out, out.dot(grooved.pose().toWorld(new Vector(0, 0, face))));
        OutlineEdge longest = pocket.shape().edges().stream()
                .max(Comparator.comparing(OutlineEdge::length))
                .orElseThrow();
        Vector run = point(longest.to()).minus(point(longest.from())).normalised();
        Vector across = new Vector(-run.y(), run.x(), 0);
        return sunk.filter(in -> overlap(in, grooved, grooved.pose().turned(run))
                        && overlap(in, grooved, out)
                        && into(in, grooved, pocket, across))
                .map(in -> in.project(grooved.pose().turned(across)))
                .map(reach -> Length.ofMillimetres(reach.most() - reach.least()));
    }

    private static Vector point(OutlineEdge.Point point) {
        return new Vector(point.u().inMillimetres(), point.v().inMillimetres(), 0);
    }

    private static boolean overlap(PlacedSolid one, PlacedSolid other, Vector direction) {
        PlacedSolid.Reach a = one.project(direction);
        PlacedSolid.Reach b = other.project(direction);
        return Math.min(a.most(), b.most()) - Math.max(a.least(), b.least()) > TOLERANCE;
    }

    /** Whether what is sunk into the grooved piece's face is, across the groove, at least partly in the groove. */
    private static boolean into(PlacedSolid in, PlacedSolid grooved, Pocket pocket, Vector across) {
        PlacedSolid.Reach reach = in.project(grooved.pose().turned(across));
        double origin = grooved.pose().origin().dot(grooved.pose().turned(across));
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (OutlineEdge edge : pocket.shape().edges()) {
            double at = origin + point(edge.from()).dot(across);
            least = Math.min(least, at);
            most = Math.max(most, at);
        }
        return Math.min(most, reach.most()) - Math.max(least, reach.least()) > TOLERANCE;
    }
}
