package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.SealChecks;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Trait;
import org.kerfleaf.sketch.Where;

/** Whether damp finds its way out of every box that is closed in: down through a weep, up through a vent. */
final class Airing {
    /** A hole is low in the lowest tenth of its box ... */
    private static final double LOW = 0.1;

    /** ... and high in its upper six tenths, roof and all. Common practice, no source. */
    private static final double HIGH = 0.4;

    /** So far before a hole there must be air, in millimetres. */
    private static final double BEFORE = 1;

    private final Planned planned;

    /** A hole that leads out. */
    private record Way(String part, String name, Vector middle) {}

    Airing(Planned planned) {
        this.planned = planned;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        if (Raining.outdoors(planned.sketch()).orElse(false)) {
            planned.painting().finished().forEach(build -> check(build).ifPresent(checks::add));
        }
        return checks;
    }

    private Optional<Check> check(Painting.Finished build) {
        if (build.fixed().isEmpty() || !isClosed(build)) {
            return Optional.empty();
        }
        Box hull = Assembly.hull(build.fixed());
        List<Way> ways = build.fixed().stream().flatMap(this::ways).toList();
        List<String> low = words(ways, hull, 0, LOW);
        List<String> high = words(ways, hull, HIGH, 1);
        return Optional.of(SealChecks.wayOut(lowest(build), low, high, planned.style()));
    }

    private static List<String> words(List<Way> ways, Box hull, double from, double to) {
        double bottom = hull.low(Axis.Z).inMillimetres();
        double high = hull.extent(Axis.Z).inMillimetres();
        return ways.stream()
                .filter(way ->
                        way.middle().z() >= bottom + from * high && way.middle().z() <= bottom + to * high)
                .map(way -> way.part() + ", " + way.name())
                .distinct()
                .toList();
    }

    /** The name of the lowest piece, in which a weep would be. */
    private static String lowest(Painting.Finished build) {
        Piece lowest = build.fixed().get(0);
        for (Piece piece : build.fixed()) {
            boolean flat = piece.box().thinnest() == Axis.Z;
            boolean lower =
                    piece.box().middle(Axis.Z).isShorterThan(lowest.box().middle(Axis.Z));
            lowest = flat && (lower || lowest.box().thinnest() != Axis.Z) ? piece : lowest;
        }
        return lowest.part();
    }

    /** Whether the air in the middle of it is closed in; looked at on three levels, since a shelf may be in the way. */
    private boolean isClosed(Painting.Finished build) {
        Box hull = Assembly.hull(build.fixed());
        List<PlacedSolid> solids = planned.painting().solids(build.fixed());
        return Stream.of(0.5, 0.35, 0.65)
                .map(share -> new Vector(
                        hull.middle(Axis.X).inMillimetres(),
                        hull.middle(Axis.Y).inMillimetres(),
                        hull.low(Axis.Z).plus(hull.extent(Axis.Z).times(share)).inMillimetres()))
                .filter(point -> solids.stream().noneMatch(solid -> solid.holds(point)))
                .findFirst()
                .map(point -> build.solids().closesIn(point))
                .orElse(false);
    }

    /** The holes and openings of a piece that nothing hangs over, nothing is glazed into and no wood closes. */
    private Stream<Way> ways(Piece piece) {
        Optional<SizedPart> part = planned.sized(piece.part());
        if (part.isEmpty() || piece.sloping().isPresent()) {
            return Stream.empty();
        }
        return part.get().cutouts().stream()
                .filter(cutout -> !isCovered(piece, cutout.name()))
                .map(cutout -> way(piece, part.get().standing(), cutout))
                .filter(way -> isOpen(way, part.get().standing().through(), piece));
    }

    private static Way way(Piece piece, Standing standing, Cutout cutout) {
        Vector middle = at(standing.across(), piece.box().low(standing.across()).plus(cutout.middleAcross()))
                .plus(at(standing.up(), piece.box().low(standing.up()).plus(cutout.middleUp())))
                .plus(at(standing.through(), piece.box().middle(standing.through())));
        return new Way(piece.part(), cutout.name(), middle);
    }

    private static Vector at(Axis axis, Length place) {
        return axis.unit().times(place.inMillimetres());
    }

    private boolean isCovered(Piece piece, String opening) {
        boolean hung = planned.sketch().all(Placing.class).stream()
                .filter(placing -> placing.where().stream()
                        .anyMatch(w ->
                                w instanceof Where.Over over && over.opening().equals(opening)))
                .anyMatch(placing -> placing.where().stream()
                        .flatMap(w -> Places.others(w).stream())
                        .anyMatch(piece.placing()::equals));
        boolean glazed = planned.sketch().all(Glazing.class).stream()
                .anyMatch(glazing -> glazing.into().contains(piece.placing())
                        && planned.sketch().part(glazing.pane()).stream()
                                .flatMap(p -> p.traits(Trait.FitsOpening.class).stream())
                                .anyMatch(fits -> fits.opening().opening().equals(opening)));
        return hung || glazed;
    }

    private boolean isOpen(Way way, Axis through, Piece piece) {
        double half = piece.box().extent(through).half().inMillimetres() + BEFORE;
        return Stream.of(half, -half)
                .map(step -> way.middle().plus(through.unit().times(step)))
                .noneMatch(point -> planned.bodies().all().values().stream().anyMatch(solid -> solid.holds(point)));
    }
}
