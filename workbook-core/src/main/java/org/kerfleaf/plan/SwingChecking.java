package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.DoorChecks;
import org.kerfleaf.rules.SwingChecks;
import org.kerfleaf.shape.Sweep;
import org.kerfleaf.sketch.Fitting;

/** Whether what hangs on hinges can open. */
final class SwingChecking {
    private final Planned planned;
    private final List<Hung> hung;

    SwingChecking(Planned planned, List<Hung> hung) {
        this.planned = planned;
        this.hung = hung;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        for (Fitting fitting : planned.sketch().all(Fitting.class)) {
            if (Hanging.isHinge(fitting)) {
                missing(fitting)
                        .ifPresent(words ->
                                checks.add(SwingChecks.doorSwing(planned.fittedOn(fitting), words, planned.style())));
            }
        }
        for (Hung door : hung) {
            List<SwingChecks.Met> met = door.met().stream()
                    .map(sweep -> new SwingChecks.Met(sweep.met().part(), sweep.at(), into(door, sweep)))
                    .toList();
            checks.add(SwingChecks.doorSwing(door.name(), door.upTo(), met, door.stop(), planned.style()));
            door.inset().ifPresent(gap -> checks.add(backEdge(door, gap)));
            new DoorEdges(planned, door).room().ifPresent(room -> checks.add(gap(door, room)));
        }
        return checks;
    }

    private Optional<String> into(Hung door, Sweep sweep) {
        return sweep.into(door.upTo()).map(clash -> Clashes.size(clash, planned.style()));
    }

    private Check gap(Hung door, HungDoor.Room room) {
        Optional<Length> swelling = room.swelling().map(Figure::value);
        return swelling.map(swells -> DoorChecks.doorGap(
                        door.name(), room.gap().value(), room.film().value(), swells, planned.style()))
                .orElseGet(() -> DoorChecks.doorGapNotKnown(
                        door.name(), room.gap().value(), new DoorEdges(planned, door).missing(), planned.style()));
    }

    private Check backEdge(Hung door, Length gap) {
        Length thick = planned.bodies().of(door.piece()).solid().thickness();
        return DoorChecks.backEdge(door.name(), gap, thick, door.wide(), planned.style());
    }

    /** What would have to be said before a hinge's line is known. */
    private Optional<String> missing(Fitting fitting) {
        if (fitting.on().isEmpty() || fitting.side().isEmpty()) {
            return Optional.of("Say what the hinges are on, and at which edge: .at(doorIn, LEFT), .at(lidIn, BACK).");
        }
        boolean known = hung.stream()
                .anyMatch(h -> h.piece().placing().equals(fitting.on().get()));
        return known
                ? Optional.empty()
                : Optional.of(
                        "It has no place, or no edge at the %s: LEFT or RIGHT of a door, BACK or FRONT of a lid would be right."
                                .formatted(fitting.side().get().words()));
    }
}
