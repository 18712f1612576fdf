package org.kerfleaf.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.OrderChecks;
import org.kerfleaf.rules.WorkChecks;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.CutAll;
import org.kerfleaf.sketch.Declaration;
import org.kerfleaf.sketch.Joint;
import org.kerfleaf.sketch.Loud;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Screw;
import org.kerfleaf.sketch.Seal;
import org.kerfleaf.sketch.Session;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.WorkTime;

/** Whether a step comes too early, and whether a session's work can be done and borne. */
final class StepChecking {
    private final Planned planned;
    private final Sketch sketch;
    private final MeasureStyle style;
    private final List<PlannedJoint> joints;
    private final List<PlacedPart> placed;
    private final Handling handling;
    private final Waits waits;
    private final Scheduling scheduling;

    StepChecking(Planned planned, List<PlacedPart> placed, Handling handling, Scheduling scheduling) {
        this.sketch = planned.sketch();
        this.planned = planned;
        this.style = planned.style();
        this.joints = planned.joints();
        this.placed = placed;
        this.handling = handling;
        this.waits = new Waits(handling);
        this.scheduling = scheduling;
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        cutFirst().ifPresent(checks::add);
        waysIn(checks);
        checks.addAll(new DriverRoom(planned).all());
        cures(checks);
        for (Loud said : sketch.all(Loud.class)) {
            checks.add(noise(said));
        }
        for (Session session : sketch.all(Session.class)) {
            checks.add(WorkChecks.session(
                    scheduling.chain(session.cutBefore()), session.time(), List.copyOf(scheduling.notKnown()), style));
            session.builders().ifPresent(many -> checks.add(drills(session, many)));
        }
        return checks;
    }

    // ---- too early -----------------------------------------------------------------------------------------------

    private Optional<Check> cutFirst() {
        return sketch.all(CutAll.class).stream().findFirst().map(cut -> {
            Set<String> early = new LinkedHashSet<>();
            for (Placing placing : sketch.all(Placing.class)) {
                int step = placing.origin().step();
                if (step > 0 && step < cut.origin().step()) {
                    early.add("%s in step %d".formatted(placing.part(), step));
                }
            }
            return OrderChecks.cutFirst(List.copyOf(early), cut.origin().step(), style);
        });
    }

    private void waysIn(List<Check> checks) {
        WaysIn ways = new WaysIn(placed);
        int late = ways.late().size();
        List<WaysIn.Shut> shut = ways.shut();
        if (late > 0 && shut.isEmpty()) {
            checks.add(OrderChecks.wayIn(late, style));
        }
        Set<String> named = new LinkedHashSet<>();
        for (WaysIn.Shut one : shut) {
            if (named.add(one.piece().solid().part())) {
                int before = one.by().stream().mapToInt(PlacedPart::step).max().orElseThrow();
                checks.add(OrderChecks.noWayIn(
                        one.piece().solid().part(), one.piece().step(), WaysIn.words(one.by()), before, style));
            }
        }
    }

    /** Glue, paint and caulk one by one: what one of them has to wait for, over all steps. */
    private void cures(List<Check> checks) {
        Map<String, Set<Waits.Wait>> all = new LinkedHashMap<>();
        Map<String, Set<String>> early = new LinkedHashMap<>();
        List<Sketch.Step> steps = sketch.steps();
        for (int i = 0; i < steps.size(); i++) {
            int step = steps.get(i).number();
            waits.within(step).forEach(wait -> keep(all, wait));
            for (int j = i + 1; j < steps.size(); j++) {
                waits.between(step, steps.get(j).number()).forEach(wait -> keep(all, wait));
            }
            inOneStep(steps.get(i), all, early);
        }
        all.forEach((of, found) -> {
            List<String> missing = found.stream()
                    .filter(wait -> wait.time().isEmpty())
                    .map(Waits.Wait::because)
                    .distinct()
                    .toList();
            checks.add(
                    early.containsKey(of)
                            ? OrderChecks.tooEarly(of, List.copyOf(early.get(of)), style)
                            : missing.isEmpty()
                                    ? OrderChecks.waited(
                                            of,
                                            found.stream()
                                                    .map(StepChecking::words)
                                                    .distinct()
                                                    .toList(),
                                            style)
                                    : OrderChecks.waitNotKnown(of, missing, style));
        });
    }

    private static void keep(Map<String, Set<Waits.Wait>> all, Waits.Wait wait) {
        all.computeIfAbsent(wait.of(), of -> new LinkedHashSet<>()).add(wait);
    }

    /** What goes on in the same step with parts that are still wet or clamped. */
    private void inOneStep(Sketch.Step step, Map<String, Set<Waits.Wait>> all, Map<String, Set<String>> early) {
        List<Declaration> said = handling.said(step.number());
        for (int i = 0; i < said.size(); i++) {
            for (Declaration later : said.subList(i + 1, said.size())) {
                Declaration first = said.get(i);
                if (!goesOn(first, later)) {
                    continue;
                }
                waits.between(first, later).ifPresent(wait -> {
                    keep(all, wait);
                    if (!wait.known().isZero()) {
                        early.computeIfAbsent(wait.of(), of -> new LinkedHashSet<>())
                                .add("in step %d, %s, the work goes on, but %s"
                                        .formatted(step.number(), step.title(), words(wait)));
                    }
                });
            }
        }
    }

    /** More glue before the clamps come off, the coats after a caulk and the next coats are one work; the rest has to wait. */
    private static boolean goesOn(Declaration first, Declaration later) {
        if (first instanceof Joint) {
            return later instanceof Mount || later instanceof Coat || later instanceof Seal;
        }
        return first instanceof Coat && !(later instanceof Coat) && !(later instanceof Seal);
    }

    private static String words(Waits.Wait wait) {
        return wait.because() + " " + time(wait.known());
    }

    static String time(Duration time) {
        if (time.toHours() >= 48 && time.equals(Duration.ofDays(time.toDays()))) {
            return time.toDays() + " days";
        }
        if (time.toMinutes() == 0) {
            return "0 min";
        }
        String hours = time.toHours() == 0 ? "" : time.toHours() + " h";
        return (hours + (time.toMinutesPart() == 0 ? "" : " " + time.toMinutesPart() + " min")).strip();
    }

    // ---- a session -----------------------------------------------------------------------------------------------

    private Check noise(Loud said) {
        int step = said.origin().step();
        String title = sketch.steps().stream()
                .filter(one -> one.number() == step)
                .map(Sketch.Step::title)
                .findFirst()
                .orElse("the whole build");
        return sketch.all(WorkTime.class).stream()
                .filter(time -> time.origin().step() == step)
                .map(WorkTime::work)
                .reduce(Duration::plus)
                .map(heard -> WorkChecks.noise(title, said.decibels(), heard, style))
                .orElseGet(() -> WorkChecks.noiseNotKnown(title, said.decibels(), style));
    }

    /** One pilot hole for each screw of each builder's kit. */
    private Check drills(Session session, int builders) {
        if (session.drills().isEmpty() || session.pilot().isEmpty()) {
            String missing = session.drills().isEmpty() ? ".drills(3)" : ".pilotHole(\"20 s\")";
            return WorkChecks.stationLoadNotKnown("drills", "Say " + missing + " of the session.", style);
        }
        int screws = joints.stream()
                .filter(joint ->
                        joint.said().fastener().filter(Screw.class::isInstance).isPresent())
                .mapToInt(joint -> joint.fasteners().value())
                .sum();
        Duration busy = session.pilot().get().multipliedBy((long) builders * screws);
        return WorkChecks.stationLoad("drills", busy, session.drills().get(), session.time(), style);
    }
}
