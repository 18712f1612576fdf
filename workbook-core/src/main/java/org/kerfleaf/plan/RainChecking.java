package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.RainChecks;

/** Whether rain does harm on the finished build. */
final class RainChecking {
    private final Planned planned;

    RainChecking(Planned planned) {
        this.planned = planned;
    }

    List<Check> all() {
        if (planned.rain().isPresent()) {
            List<Check> checks = new ArrayList<>();
            for (RainMark.Kind kind : RainMark.Kind.values()) {
                checks.add(check(kind, planned.rain().get()));
            }
            return checks;
        }
        boolean said = Raining.outdoors(planned.sketch()).isPresent();
        return said || planned.bodies().all().isEmpty() ? List.of() : List.of(RainChecks.notSaid());
    }

    private static Check check(RainMark.Kind kind, Rain rain) {
        List<RainMark> open = rain.of(kind).stream().filter(RainMark::isOpen).toList();
        List<String> found = open.stream()
                .map(m -> "(%d) %s: %s".formatted(m.number(), m.title(), m.words()))
                .toList();
        String advice = open.stream().map(RainMark::advice).distinct().collect(Collectors.joining(" "));
        return RainChecks.found(rule(kind), found, advice);
    }

    private static RainChecks.Rule rule(RainMark.Kind kind) {
        return switch (kind) {
            case EDGE -> RainChecks.Rule.EDGES;
            case LEDGE -> RainChecks.Rule.LEDGES;
            case SEAM -> RainChecks.Rule.SEAMS;
            case TRAP -> RainChecks.Rule.TRAPS;
            case DRIP -> RainChecks.Rule.DRIPS;
        };
    }
}
