package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Count;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.PartChecks;
import org.kerfleaf.rules.SawChecks;
import org.kerfleaf.saw.Routing;
import org.kerfleaf.saw.SawKind;
import org.kerfleaf.saw.SawLimits;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Saw;
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
        planned.parts().forEach(part -> checks.addAll(sharedBevels(part)));
        checks.addAll(saws());
        return checks;
    }

    /** Of a part that is cut more than once, its bevelled edges. */
    private List<Check> sharedBevels(PlannedPart part) {
        boolean oneBlank = planned.sized(part.name())
                .filter(own -> own.said().trait(Trait.OneBlank.class).isPresent())
                .isPresent();
        Optional<Length> kerf = planned.sketch().all(Saw.class).stream()
                .flatMap(saw -> saw.kerf().stream())
                .findFirst();
        return part.edges().stream()
                .filter(edge -> part.count() > 1
                        && (edge.cut() == PlannedPart.PlannedEdge.Cut.BEVEL
                                || edge.cut() == PlannedPart.PlannedEdge.Cut.COMPOUND))
                .map(edge -> SawChecks.sharedBevel(
                        part.name() + ", " + edge.name(),
                        oneBlank,
                        edge.tilt().orElse(edge.angle()).value(),
                        edge.tilt().isPresent() ? edge.angle().value() : Angle.ofDegrees(0),
                        kerf,
                        planned.style()))
                .toList();
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
                String opening = name + ", " + cutout.name();
                checks.add(PartChecks.frameLeft(opening, narrowest(part, cutout), planned.style()));
                checks.add(startHole(opening, cutout));
            }
        }
        return checks;
    }

    private Check startHole(String of, Cutout cutout) {
        OpeningCuts cuts = new OpeningCuts(planned.sketch(), planned.style());
        return SawChecks.startHole(of, cuts.hole(cutout).map(Figure::value), cuts.blade(), planned.style());
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
        SawLimits limits = Sawing.limits(planned.sketch());
        for (SawSetting setting : planned.settings()) {
            String letters = String.join(", ", setting.parts());
            if (setting.bladeDepth().isPresent()) {
                checks.add(depth(letters, setting, limits));
            }
            if (setting.scale().isPresent() && !setting.scale().get().value().isZero()) {
                checks.add(
                        SawChecks.sawStop(letters, setting.scale().get().value(), limits.saidStop(), planned.style()));
            }
        }
        checks.addAll(routed());
        planned.parts().stream()
                .filter(p -> p.kind() == PartKind.BOARD)
                .min((a, b) -> a.length().value().compareTo(b.length().value()))
                .ifPresent(p ->
                        checks.add(SawChecks.shortPiece(p.name(), p.length().value(), planned.style())));
        return checks;
    }

    private Check depth(String letters, SawSetting setting, SawLimits limits) {
        Length thickness = thickness(setting.parts().get(0));
        return planned.sketch().all(Saw.class).isEmpty()
                ? SawChecks.bladeDepthNotKnown(
                        letters, thickness, setting.tilt().value(), planned.style())
                : SawChecks.bladeDepth(letters, thickness, setting.tilt().value(), limits.saidDepth(), planned.style());
    }

    /** How deep the router cuts in one pass, as said or as the plan divides it; and what it leaves of a board. */
    private List<Check> routed() {
        List<Check> checks = new ArrayList<>();
        for (SawSetting setting : planned.settings()) {
            if (setting.saw().equals(SawKind.ROUTER.words())) {
                String of = String.join(", ", setting.parts()) + ", " + setting.cut();
                Length depth = (Length) reading(setting, Routing.DEPTH);
                int passes = (int) ((Count) reading(setting, Routing.PASSES)).number();
                checks.add(PartChecks.routerBite(of, depth, passes, planned.style()));
                PlannedPart first = part(setting.parts().get(0));
                if (first.kind() == PartKind.BOARD) {
                    checks.add(PartChecks.rabbetLip(of, first.thickness().value(), depth, planned.style()));
                }
            }
        }
        return checks;
    }

    private static Quantity reading(SawSetting setting, String what) {
        return setting.set().stream()
                .filter(reading -> reading.what().equals(what))
                .map(reading -> reading.value().value())
                .findFirst()
                .orElseThrow();
    }

    private Length thickness(String letter) {
        return part(letter).thickness().value();
    }

    private PlannedPart part(String letter) {
        return planned.parts().stream()
                .filter(p -> p.letter().equals(letter))
                .findFirst()
                .orElseThrow();
    }
}
