package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.kerfleaf.joint.Clearances;
import org.kerfleaf.joint.FastenerSetting;
import org.kerfleaf.joint.Force;
import org.kerfleaf.joint.Hold;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.HoldChecks;
import org.kerfleaf.rules.JointChecks;
import org.kerfleaf.sketch.Bolt;
import org.kerfleaf.sketch.Fastener;
import org.kerfleaf.sketch.Lag;
import org.kerfleaf.sketch.Nail;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Screw;

/**
 * Whether what is driven draws tight, splits nothing and holds: holes, distances to ends, edges and neighbours as placed, pull.
 *
 * <p>Each rule is told once for screws of one gauge, with the contacts nearest to falling short.
 */
final class HoldChecking {
    /** A row within this of the grain runs along it: the cosine of 45°. */
    private static final double ALONG = Math.sqrt(0.5);

    private final Planned planned;
    private final MeasureStyle style;
    private final Nearness nearness;

    HoldChecking(Planned planned) {
        this.planned = planned;
        this.style = planned.style();
        this.nearness = new Nearness(planned.sizing(), planned.bodies());
    }

    private record Seen(DrivenContact contact, FastenerSetting setting, Clearances through, Clearances into) {
        String names() {
            return contact.driver().through().part() + " to "
                    + contact.driver().into().get(0).part();
        }

        Clearances both() {
            return through.and(into);
        }

        boolean drilled() {
            return contact.joint().said().drilled();
        }
    }

    private record Sort(int gauge, boolean drilled) {}

    List<Check> all() {
        Map<Sort, List<Seen>> screws = new LinkedHashMap<>();
        Map<Length, List<Seen>> nails = new LinkedHashMap<>();
        Map<Length, List<Seen>> bolts = new LinkedHashMap<>();
        List<Seen> lags = new ArrayList<>();
        List<Seen> all = planned.driven().stream().map(this::seen).toList();
        for (Seen seen : all) {
            Fastener said = seen.contact().driver().said();
            if (said instanceof Screw screw) {
                put(screws, new Sort(screw.gauge(), seen.drilled()), seen);
            } else if (said instanceof Nail nail) {
                nail.diameter().ifPresent(thick -> put(nails, thick, seen));
            } else if (said instanceof Bolt bolt) {
                put(bolts, bolt.diameter(), seen);
            } else {
                lags.add(seen);
            }
        }
        List<Check> checks = new ArrayList<>();
        screws.forEach((sort, seen) -> checks.addAll(screws(sort, seen)));
        nails.forEach((thick, seen) -> checks.addAll(nails(thick, seen)));
        lags.forEach(lag -> checks.addAll(lag(lag)));
        bolts.forEach((thick, seen) -> checks.addAll(bolts(thick, seen)));
        planned.joints().stream()
                .flatMap(joint -> joint.choice().stream())
                .forEach(choice -> checks.add(HoldChecks.drawer(choice, style)));
        checks.addAll(pulls(all));
        planned.borne().onJoints().forEach(on -> checks.add(sideways(on)));
        planned.borne().brackets().forEach(bracket -> checks.add(bracket(bracket)));
        return checks;
    }

    private static <K> void put(Map<K, List<Seen>> sorts, K sort, Seen seen) {
        sorts.computeIfAbsent(sort, k -> new ArrayList<>()).add(seen);
    }

    private Seen seen(DrivenContact contact) {
        return new Seen(
                contact,
                planned.fastenerSettings().of(contact),
                nearness.of(contact.driver().through(), contact),
                nearness.of(contact.driver().into().get(0), contact));
    }

    // ---- screws ----------------------------------------------------------------------------------------------------

    private List<Check> screws(Sort sort, List<Seen> seen) {
        List<Check> checks = new ArrayList<>();
        worst(seen, s -> Optional.of(jacking(s))).ifPresent(checks::add);
        worst(
                        seen,
                        s -> Optional.of(HoldChecks.pilot(
                                s.names(), sort.gauge(), gravity(s), s.both().end(), sort.drilled(), style)))
                .ifPresent(checks::add);
        worst(
                        seen,
                        s -> s.both()
                                .end()
                                .map(end ->
                                        JointChecks.endDistance(s.names(), sort.gauge(), end, sort.drilled(), style)))
                .ifPresent(checks::add);
        worst(seen, s -> edge(s).map(edge -> JointChecks.edgeDistance(s.names(), sort.gauge(), edge, style)))
                .ifPresent(checks::add);
        worst(seen, s -> row(s, sort)).ifPresent(checks::add);
        worst(
                        seen,
                        s -> s.setting()
                                .head()
                                .flatMap(wide -> s.through()
                                        .edge()
                                        .map(edge -> HoldChecks.head(s.names(), wide.value(), edge, style))))
                .ifPresent(checks::add);
        return checks;
    }

    private Check jacking(Seen seen) {
        Screw screw = (Screw) seen.contact().driver().said();
        Length through = planned.bodies()
                .depth(
                        seen.contact().driver().through(),
                        seen.contact().driver().place().frame().w());
        return HoldChecks.jacking(
                seen.names(), new WoodScrew(screw.gauge(), screw.length()), through, seen.drilled(), style);
    }

    private static Optional<Ratio> gravity(Seen seen) {
        return seen.setting().gravity().map(Figure::value);
    }

    /** A sheet's edge that a screw is driven into is told by another rule. */
    private static Optional<Length> edge(Seen seen) {
        return seen.setting().in() == Hold.SHEET_EDGE
                ? seen.through().edge()
                : seen.both().edge();
    }

    private Optional<Check> row(Seen seen, Sort sort) {
        var driver = seen.contact().driver();
        boolean along = List.of(driver.through(), driver.into().get(0)).stream()
                .filter(this::isBoard)
                .anyMatch(p -> Math.abs(planned.bodies()
                                .of(p)
                                .pose()
                                .u()
                                .dot(driver.place().frame().u()))
                        > ALONG);
        return Nearness.row(seen.contact())
                .map(apart -> HoldChecks.row(seen.names(), sort.gauge(), apart, along, sort.drilled(), style));
    }

    private boolean isBoard(Piece piece) {
        return planned.sized(piece.part())
                .filter(part -> part.said().kind() == PartKind.BOARD)
                .isPresent();
    }

    /** The check that is nearest to falling short: first what does, then what is not known, then by its level. */
    private static Optional<Check> worst(List<Seen> seen, Function<Seen, Optional<Check>> rule) {
        return seen.stream()
                .flatMap(s -> rule.apply(s).stream())
                .min(Comparator.<Check>comparingInt(check -> switch (check.verdict()) {
                            case SHORT -> 0;
                            case NOT_KNOWN -> 1;
                            case HOLDS -> 2;
                        })
                        .thenComparingDouble(check -> check.level().orElse(0)));
    }

    // ---- lag screws, bolts and nails -------------------------------------------------------------------------------

    /** Bolts of one thickness are told once, with the contact nearest to falling short. */
    private List<Check> bolts(Length thick, List<Seen> seen) {
        List<Check> checks = new ArrayList<>();
        worst(
                        seen,
                        s -> nearness.of(s.contact())
                                .end()
                                .map(end -> HoldChecks.boltDistance(s.names(), thick, end, true, style)))
                .ifPresent(checks::add);
        worst(
                        seen,
                        s -> nearness.of(s.contact())
                                .edge()
                                .map(edge -> HoldChecks.boltDistance(s.names(), thick, edge, false, style)))
                .ifPresent(checks::add);
        return checks;
    }

    /** Nails of one thickness are told once, with the contact nearest to falling short. */
    private List<Check> nails(Length thick, List<Seen> seen) {
        List<Check> checks = new ArrayList<>();
        worst(seen, s -> s.setting().reach().map(reach -> HoldChecks.nailReach(s.names(), thick, reach.value(), style)))
                .ifPresent(checks::add);
        worst(seen, s -> s.both().end().map(end -> HoldChecks.nailDistance(s.names(), thick, end, true, style)))
                .ifPresent(checks::add);
        worst(seen, s -> s.both().edge().map(edge -> HoldChecks.nailDistance(s.names(), thick, edge, false, style)))
                .ifPresent(checks::add);
        return checks;
    }

    private List<Check> lag(Seen seen) {
        Length diameter = ((Lag) seen.contact().driver().said()).diameter();
        List<Check> checks = new ArrayList<>();
        seen.setting()
                .thread()
                .ifPresent(in -> checks.add(HoldChecks.lagReach(seen.names(), diameter, in.value(), style)));
        seen.both()
                .end()
                .ifPresent(end -> checks.add(HoldChecks.lagDistance(seen.names(), diameter, end, true, style)));
        seen.both()
                .edge()
                .ifPresent(edge -> checks.add(HoldChecks.lagDistance(seen.names(), diameter, edge, false, style)));
        return checks;
    }

    // ---- what pulls ------------------------------------------------------------------------------------------------

    private List<Check> pulls(List<Seen> all) {
        List<Check> checks = new ArrayList<>();
        List<String> inEndGrain = new ArrayList<>();
        for (PlannedJoint joint : planned.joints()) {
            List<Seen> own =
                    all.stream().filter(s -> s.contact().joint().equals(joint)).toList();
            boolean endGrain = own.stream()
                    .anyMatch(s -> s.setting().in() == Hold.END_GRAIN
                            && s.contact().driver().said() instanceof Screw);
            Optional<Force> pull = joint.said().pulledBy().map(Force::weightOf);
            if (pull.isPresent()) {
                checks.add(pull(joint, pull.get(), own, endGrain));
            } else if (endGrain) {
                inEndGrain.add(joint.words());
            }
        }
        if (!inEndGrain.isEmpty()) {
            checks.add(HoldChecks.endGrain(String.join(", ", inEndGrain), style));
        }
        return checks;
    }

    private Check pull(PlannedJoint joint, Force pull, List<Seen> own, boolean endGrain) {
        List<FastenerSetting> settings = joint.behind().isPresent()
                ? List.of(planned.fastenerSettings()
                        .of(
                                joint.said().fastener().orElseThrow(),
                                joint.behind().get()))
                : own.stream().map(Seen::setting).toList();
        Optional<FastenerSetting> unknown = settings.stream()
                .filter(s -> s.holds().isEmpty() && s.in() != Hold.END_GRAIN)
                .findFirst();
        if (settings.isEmpty() || unknown.isPresent()) {
            return HoldChecks.pullNotKnown(
                    joint.words(),
                    pull,
                    unknown.map(FastenerSetting::notHeld).orElse("nothing is driven there"),
                    style);
        }
        Force least = settings.stream()
                .map(s -> s.holds().map(Figure::value).orElse(Force.ofNewtons(0)))
                .min(Comparator.naturalOrder())
                .orElseThrow();
        return HoldChecks.pull(joint.words(), pull, least, joint.fasteners().value(), endGrain, style);
    }

    private Check bracket(Loads.Bracket bracket) {
        return bracket.pull().isPresent() && bracket.holds().isPresent()
                ? HoldChecks.bracket(
                        bracket.on(),
                        Force.weightOf(bracket.load()),
                        bracket.out(),
                        bracket.height().orElseThrow(),
                        bracket.count(),
                        bracket.pull().get().value(),
                        bracket.holds().get().value(),
                        style)
                : HoldChecks.bracketNotKnown(bracket.on(), bracket.lacks(), style);
    }

    private Check sideways(Loads.OnJoint on) {
        return on.holds()
                .map(each -> HoldChecks.sideways(
                        on.joint(), on.load().value(), on.fasteners(), on.each().value(), each.value(), style))
                .orElseGet(
                        () -> HoldChecks.sidewaysNotKnown(on.joint(), on.each().value(), on.notHeld(), style));
    }
}
