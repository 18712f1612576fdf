package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.MovementChecks;

/** Whether boards side by side have room to move. */
final class MovementChecking {
    private final Planned planned;

    MovementChecking(Planned planned) {
        this.planned = planned;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        planned.movements().gaps().forEach((part, gap) -> checks.add(check(part, gap)));
        return checks;
    }

    private Check check(PlannedPart part, Length gap) {
        Optional<Moving> moving = planned.movements().moving(part);
        return moving.map(known -> MovementChecks.movement(
                        part.name(),
                        gap,
                        known.atDampest().value().max(Length.ZERO),
                        known.atDriest().value().negated().max(Length.ZERO),
                        known.wood().rings().words(),
                        planned.style()))
                .orElseGet(() -> MovementChecks.movementNotKnown(
                        part.name(), gap, planned.movements().missing(part), planned.style()));
    }
}
