package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.OrderChecks;
import org.kerfleaf.shape.FirstMet;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Origin;

/** Whether a drill comes to every fastener's head past what stands there when it is driven; what hangs swings away. */
final class DriverRoom {
    private final Planned planned;

    private record State(Origin joint, int build) {}

    private final Map<State, FirstMet> states = new LinkedHashMap<>();

    DriverRoom(Planned planned) {
        this.planned = planned;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        int reached = 0;
        for (DrivenContact contact : planned.driven()) {
            List<FirstMet.Met> near = contact.fasteners().stream()
                    .flatMap(fastener -> behind(contact, fastener).stream())
                    .sorted((a, b) -> Double.compare(a.away(), b.away()))
                    .toList();
            if (near.isEmpty()) {
                reached += contact.fasteners().size();
            } else {
                checks.add(OrderChecks.noRoomToDrive(
                        contact.joint().words(),
                        contact.joint().said().origin().step(),
                        near.size(),
                        Length.ofMillimetres(near.get(0).away()),
                        near.get(0).solid().part(),
                        room(contact.fasteners().get(0)),
                        planned.style()));
            }
        }
        if (reached > 0) {
            checks.add(OrderChecks.roomToDrive(reached, planned.style()));
        }
        return checks;
    }

    /** A drill with its bit, and the fastener that stands out before it is driven. */
    private static Length room(DrivenFastener fastener) {
        return OrderChecks.DRILL.plus(
                Length.ofMillimetres(fastener.tip().minus(fastener.head()).length()));
    }

    /** What stands too near behind a head, if anything does. */
    private Optional<FirstMet.Met> behind(DrivenContact contact, DrivenFastener fastener) {
        Vector out = fastener.way().negated();
        return there(contact)
                .along(fastener.head(), out)
                .filter(met -> met.away() < room(fastener).inMillimetres());
    }

    /** What stands in the build when these are driven: all that is put in place before the joint is said. */
    private FirstMet there(DrivenContact contact) {
        Origin joint = contact.joint().said().origin();
        int build = planned.assembly().number(contact.driver().through().placing());
        return states.computeIfAbsent(new State(joint, build), state -> {
            List<PlacedSolid> there = new ArrayList<>();
            planned.bodies().all().forEach((piece, solid) -> {
                boolean standing = Painting.isThere(piece, joint)
                        && planned.assembly().number(piece.placing()) == build
                        && !Painting.isHung(planned.sketch(), piece);
                if (standing) {
                    there.add(solid);
                }
            });
            return new FirstMet(there);
        });
    }
}
