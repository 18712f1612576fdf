package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Loads.Bending;
import org.kerfleaf.plan.Loads.Carried;
import org.kerfleaf.plan.Loads.Lifted;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.LiftChecks;
import org.kerfleaf.rules.SagChecks;
import org.kerfleaf.sketch.Carries;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.SagLimit;

/** Whether what carries a load sags too far, and whether people can lift what they lift. */
final class LoadChecking {
    private final Planned planned;
    private final MeasureStyle style;

    LoadChecking(Planned planned) {
        this.planned = planned;
        this.style = planned.style();
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        planned.carrying().all().forEach((said, carried) -> checks.add(sag(said, carried)));
        planned.carrying()
                .withoutLoad()
                .forEach(part -> checks.add(SagChecks.sagNotKnown(
                        part,
                        "What stands on it weighs nobody knows what.",
                        "Say it of the things: weighs(\"2 lb\").",
                        style)));
        for (Loads.Filled filled : planned.filled()) {
            checks.add(filled.together()
                    .map(all -> LiftChecks.filled(filled.part(), all.value(), 1, style))
                    .orElseGet(() -> LiftChecks.liftNotKnown(
                            filled.part() + ", filled",
                            "What it weighs filled is not known.",
                            "Say how heavy the filling is, .weighs(\"1.4 kg/L\"), and the species of every board.",
                            style)));
        }
        planned.lifting().all().forEach((mount, lifted) -> {
            checks.add(lift(mount, lifted));
            checks.add(LiftChecks.letGo(
                    lifted.part(),
                    lifted.weight().map(Figure::value),
                    lifted.holding().eachSide(),
                    style));
        });
        return checks;
    }

    private Check lift(Mount mount, Lifted lifted) {
        if (lifted.weight().isEmpty()) {
            return LiftChecks.liftNotKnown(
                    lifted.part(),
                    "What is lifted with it weighs nobody knows what: a part's density is not known.",
                    "Say the species of every board in it.",
                    style);
        }
        Mass weight = lifted.weight().get().value();
        return lifted.limit()
                .map(limit -> LiftChecks.lift(lifted.part(), weight, limit.value(), lifted.people(), style))
                .orElseGet(() -> LiftChecks.liftNotKnown(
                        lifted.part(),
                        "%s is lifted by %s, from nobody knows where."
                                .formatted(
                                        weight.in(style),
                                        lifted.people() == 1 ? "one person" : lifted.people() + " people"),
                        "Say how high its underside stood before: liftedFrom(\"30 in\").",
                        style));
    }

    private Check sag(Carries said, Carried carried) {
        String part = carried.part();
        if (carried.bending().isEmpty()) {
            boolean free = said.span().isPresent() || !said.between().isEmpty();
            return free
                    ? SagChecks.sagNotKnown(
                            part,
                            "How stiff its wood is, is not known.",
                            "Say its species, or its grade's modulus: stiffness(\"1.2 million psi\").",
                            style)
                    : SagChecks.sagNotKnown(
                            part,
                            "How far it hangs free is not known.",
                            "Say on what it lies, between(sidesIn), or how far it spans, spans(\"22 in\").",
                            style);
        }
        Bending bending = carried.bending().get();
        Length span = bending.span().value();
        if (said.limit().isEmpty()) {
            return SagChecks.sagNotKnown(
                    part,
                    "Over %s it sags %s at first and %s with time. %s."
                            .formatted(
                                    span.in(style),
                                    SagChecks.thousandths(bending.sag().value(), style),
                                    SagChecks.thousandths(bending.sagInTime().value(), style),
                                    bending.limits().stream()
                                            .map(limited -> limit(limited, bending))
                                            .collect(Collectors.joining("; "))),
                    "Name the limit: heldTo(WOODWORK_STANDARD), heldTo(VISIBLE) or heldTo(FIRST_LOAD).",
                    style);
        }
        SagLimit limit = said.limit().get();
        boolean inTime = said.lasting() && limit != SagLimit.FIRST_LOAD;
        return SagChecks.sag(part, (inTime ? bending.sagInTime() : bending.sag()).value(), span, limit, style);
    }

    private String limit(Loads.Limited limited, Bending bending) {
        boolean first = !bending.sag().value().isLongerThan(limited.allowed());
        boolean inTime = !bending.sagInTime().value().isLongerThan(limited.allowed());
        return "%s allows %s: %s"
                .formatted(
                        limited.limit().words(),
                        SagChecks.thousandths(limited.allowed(), style),
                        first ? (inTime ? "holds" : "holds at first, not with time") : "short");
    }
}
