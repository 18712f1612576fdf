package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.PaintChecks;

/** Whether every face that is to be painted is painted while a brush comes to it, and no face that is to be glued. */
final class PaintChecking {
    private final Planned planned;

    PaintChecking(Planned planned) {
        this.planned = planned;
    }

    List<Check> all() {
        Paintwork work = planned.paintwork();
        List<Check> checks = new ArrayList<>();
        if (!work.faces().isEmpty()) {
            checks.addAll(reach(work));
        }
        boolean glued = planned.joints().stream().anyMatch(j -> j.said().glue().isPresent());
        if (glued && work.bare().stream().allMatch(bare -> bare.masked().isEmpty())) {
            checks.add(PaintChecks.gluedBare());
        }
        for (Paintwork.Bare bare : work.bare()) {
            bare.masked()
                    .ifPresent(masked -> checks.add(PaintChecks.glueOnPaint(
                            bare.part() + ", " + bare.face(),
                            bare.glued(),
                            bare.to(),
                            bare.across(),
                            masked,
                            planned.style())));
        }
        return checks;
    }

    private static List<Check> reach(Paintwork work) {
        record Case(int closedIn, String by, OptionalInt painted) {}
        Map<Case, List<String>> late = new LinkedHashMap<>();
        work.order().stream()
                .filter(by -> !by.inTime())
                .forEach(by -> late.computeIfAbsent(
                                new Case(by.closedIn(), by.by(), by.painted()), c -> new ArrayList<>())
                        .add(by.part() + ", " + by.face()));
        if (!late.isEmpty()) {
            List<Check> checks = new ArrayList<>();
            late.forEach((c, faces) ->
                    checks.add(PaintChecks.outOfReach(String.join("; ", faces), c.closedIn(), c.by(), c.painted())));
            return checks;
        }
        List<String> inTime = work.order().stream()
                .map(by -> "%s, %s%s"
                        .formatted(by.part(), by.face(), by.closedIn() > 0 ? ", before step " + by.closedIn() : ""))
                .toList();
        return List.of(PaintChecks.inReach(inTime));
    }
}
