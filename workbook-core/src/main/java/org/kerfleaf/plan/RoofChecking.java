package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.PartChecks;
import org.kerfleaf.rules.SwingChecks;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Sweep;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.EdgeOf;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Item;
import org.kerfleaf.sketch.Trait;

/** Whether a roof closes at its ridge, covers what stands in front of it, and leaves room for the doors under it. */
final class RoofChecking {
    private static final double UPRIGHT = 0.999;

    private final Planned planned;
    private final List<Hung> doors;

    RoofChecking(Planned planned, List<Hung> doors) {
        this.planned = planned;
        this.doors = doors;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        for (SizedPart part : planned.sizedParts()) {
            part.said().trait(Trait.OverGables.class).ifPresent(over -> {
                ridge(part, over.gables().get(0)).ifPresent(checks::add);
                List<Piece> roof = pieces(part.said().name());
                List<Piece> gables =
                        over.gables().stream().flatMap(g -> pieces(g).stream()).toList();
                if (!roof.isEmpty() && !gables.isEmpty()) {
                    checks.add(cover(roof, gables));
                    checks.addAll(drop(roof, gables));
                }
            });
        }
        return checks;
    }

    private List<Piece> pieces(String part) {
        return planned.bodies().all().keySet().stream()
                .filter(p -> p.part().equals(part))
                .toList();
    }

    private Optional<Check> ridge(SizedPart roof, String gable) {
        boolean bevelled = roof.said().trait(Trait.MeetsTwin.class).isPresent();
        return planned.sized(gable)
                .flatMap(g -> g.said().trait(Trait.Gable.class))
                .map(g -> PartChecks.ridge(
                        roof.said().name(),
                        roof.thickness().value(),
                        g.slope(),
                        bevelled,
                        capLeg(roof.said().name()),
                        planned.style()));
    }

    /** Half the girth of what runs along the ridge. */
    private Optional<Length> capLeg(String roof) {
        return planned.sizedParts().stream()
                .filter(p -> runsAlong(p.said().name(), roof, EdgeOf.Edge.RIDGE))
                .map(p -> p.up().value().half())
                .findFirst();
    }

    private boolean runsAlong(String part, String roof, EdgeOf.Edge edge) {
        return planned.sized(part)
                .flatMap(p -> p.said().trait(Trait.Along.class))
                .filter(a -> a.edge().equals(new EdgeOf(roof, edge)))
                .isPresent();
    }

    /** The roof and all that runs along its edges. */
    private List<Piece> withTrim(List<Piece> roof) {
        String name = roof.get(0).part();
        return planned.bodies().all().keySet().stream()
                .filter(p -> p.part().equals(name)
                        || Stream.of(EdgeOf.Edge.values()).anyMatch(edge -> runsAlong(p.part(), name, edge)))
                .toList();
    }

    // ---- in front ------------------------------------------------------------------------------------------------

    private Check cover(List<Piece> roof, List<Piece> gables) {
        List<Piece> above = withTrim(roof);
        double face = least(gables, Vector.Y);
        Piece furthest = planned.assembly().buildOf(gables.get(0).placing()).stream()
                .filter(p -> planned.bodies().has(p) && !above.contains(p))
                .min(Comparator.comparingDouble(p -> least(List.of(p), Vector.Y)))
                .orElseThrow();
        return PartChecks.eaveCover(
                roof.get(0).part(),
                Length.ofMillimetres(face - least(roof, Vector.Y)),
                furthest.part() + (hasKnob() ? " (its knob not counted)" : ""),
                Length.ofMillimetres(face - least(List.of(furthest), Vector.Y)),
                planned.style());
    }

    private boolean hasKnob() {
        return planned.sketch().all(Fitting.class).stream()
                .anyMatch(f -> f.item().kind() == Item.Kind.KNOB);
    }

    private double least(List<Piece> pieces, Vector direction) {
        return pieces.stream()
                .mapToDouble(p -> planned.bodies().of(p).project(direction).least())
                .min()
                .orElseThrow();
    }

    // ---- over a door -----------------------------------------------------------------------------------------------

    private List<Check> drop(List<Piece> roof, List<Piece> gables) {
        double top = Slopes.wallTop(planned.bodies().of(gables.get(0)));
        double eave = roof.stream()
                .mapToDouble(p -> Slopes.eaveLow(planned.bodies().of(p)))
                .min()
                .orElseThrow();
        Length drop = Length.ofMillimetres(top - eave);
        String name = roof.get(0).part();
        List<Check> checks = new ArrayList<>();
        for (Hung door : doors) {
            over(door, withTrim(roof), top)
                    .ifPresent(
                            over -> checks.add(SwingChecks.eaveDrop(name, drop, Optional.of(over), planned.style())));
        }
        return checks.isEmpty() ? List.of(SwingChecks.eaveDrop(name, drop, Optional.empty(), planned.style())) : checks;
    }

    /** What of the roof and its trim hangs lowest where a door with upright hinges comes round. */
    private Optional<SwingChecks.Over> over(Hung door, List<Piece> above, double wallTop) {
        boolean upright = Math.abs(door.line().axis().z()) > UPRIGHT;
        Optional<PlacedSolid> lowest = above.stream()
                .filter(p -> upright)
                .map(planned.bodies()::of)
                .filter(solid -> door.comesUnder(solid))
                .min(Comparator.comparingDouble(solid -> solid.bounds().low().z()));
        return lowest.map(solid -> {
            double doorTop = planned.bodies().of(door.piece()).bounds().high().z();
            Optional<Angle> met = door.met().stream()
                    .filter(sweep ->
                            above.stream().anyMatch(p -> planned.bodies().of(p).equals(sweep.met())))
                    .map(Sweep::at)
                    .findFirst();
            return new SwingChecks.Over(
                    door.name(),
                    solid.part(),
                    Length.ofMillimetres(wallTop - solid.bounds().low().z()),
                    Length.ofMillimetres(wallTop - doorTop),
                    met,
                    door.stop());
        });
    }
}
