package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.PartChecks;
import org.kerfleaf.rules.SawChecks;
import org.kerfleaf.saw.SawLimits;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Trait;

/** Whether parts are strong enough beside what is cut out of them, and whether the saws can make them. */
final class PartChecking {
    private final Planned planned;

    PartChecking(Planned planned) {
        this.planned = planned;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        for (SizedPart part : planned.sizedParts()) {
            if (part.said().kind() == PartKind.PANEL) {
                checks.addAll(panel(part));
            }
            if (part.said().trait(Trait.OneBlank.class).isPresent()) {
                checks.add(PartChecks.handsFromOneBlank(
                        part.said().name(), part.solid().hands(), planned.style()));
            }
        }
        checks.addAll(saws());
        return checks;
    }

    private List<Check> panel(SizedPart part) {
        List<Check> checks = new ArrayList<>();
        String name = part.said().name();
        part.solid()
                .pockets()
                .forEach(pocket -> checks.add(
                        PartChecks.rabbetLip(name, part.thickness().value(), pocket.depth(), planned.style())));
        for (Cutout cutout : part.cutouts()) {
            if (cutout.opening()) {
                checks.add(PartChecks.frameLeft(name + ", " + cutout.name(), narrowest(part, cutout), planned.style()));
            }
        }
        return checks;
    }

    /** The least that is left between an opening and the part's outline; under a gable or slope, measured upright at its nearer corner. */
    private static Length narrowest(SizedPart part, Cutout cutout) {
        Length right = part.across().value().minus(cutout.from()).minus(cutout.wide());
        Length above = topAt(part, cutout.from())
                .min(topAt(part, cutout.from().plus(cutout.wide())))
                .minus(cutout.up())
                .minus(cutout.high());
        return cutout.from().min(right).min(cutout.up()).min(above);
    }

    /** How high the outline is, so far from its left or front edge. */
    private static Length topAt(SizedPart part, Length from) {
        Optional<Trait.Gable> gable = part.said().trait(Trait.Gable.class);
        if (gable.isPresent()) {
            Length nearer = from.min(part.across().value().minus(from));
            return gable.get().eaves().plus(gable.get().slope().rise(nearer));
        }
        Optional<Trait.SlopingTop> top = part.said().trait(Trait.SlopingTop.class);
        if (top.isPresent()) {
            Length rise = top.get().back().minus(top.get().front());
            return top.get()
                    .front()
                    .plus(rise.times(from.dividedBy(part.across().value())));
        }
        return part.high(SheetSide.OUTSIDE).min(part.high(SheetSide.INSIDE));
    }

    private List<Check> saws() {
        List<Check> checks = new ArrayList<>();
        for (SawSetting setting : planned.settings()) {
            String letters = String.join(", ", setting.parts());
            if (setting.bladeDepth().isPresent()) {
                Length thickness = thickness(setting.parts().get(0));
                checks.add(SawChecks.bladeDepth(
                        letters, thickness, setting.tilt().value(), Optional.empty(), planned.style()));
            }
            if (setting.scale().isPresent() && !setting.scale().get().value().isZero()) {
                checks.add(SawChecks.sawStop(
                        letters, setting.scale().get().value(), SawLimits.SCALE_STOP, planned.style()));
            }
        }
        planned.parts().stream()
                .filter(p -> p.kind() == PartKind.BOARD)
                .min((a, b) -> a.length().value().compareTo(b.length().value()))
                .ifPresent(p ->
                        checks.add(SawChecks.shortPiece(p.name(), p.length().value(), planned.style())));
        return checks;
    }

    private Length thickness(String letter) {
        return planned.parts().stream()
                .filter(p -> p.letter().equals(letter))
                .findFirst()
                .orElseThrow()
                .thickness()
                .value();
    }
}
