package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.joint.FastenerSetting;
import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.plan.Loads.Bracket;
import org.kerfleaf.plan.Loads.OnJoint;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.sketch.Carries;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.JointLoad;
import org.kerfleaf.sketch.Sketch;

/** Follows what hangs on joints and brackets to the single fastener. */
final class Borne {
    private final Sketch sketch;
    private final List<DrivenContact> driven;
    private final FastenerSettings settings;
    private final Carrying carrying;
    private final Map<JointLoad, OnJoint> onJoints = new LinkedHashMap<>();
    private final Map<Fitting, Bracket> brackets = new LinkedHashMap<>();

    Borne(
            Sketch sketch,
            List<PlannedJoint> joints,
            List<DrivenContact> driven,
            FastenerSettings settings,
            Carrying carrying) {
        this.sketch = sketch;
        this.driven = driven;
        this.settings = settings;
        this.carrying = carrying;
        for (JointLoad said : sketch.all(JointLoad.class)) {
            joints.stream()
                    .filter(joint -> joint.said().origin().equals(said.joint()))
                    .filter(joint -> joint.fasteners().value() > 0)
                    .findFirst()
                    .ifPresent(joint -> onJoints.put(said, onJoint(said, joint)));
        }
        sketch.all(Fitting.class).stream()
                .filter(fitting -> fitting.load().isPresent())
                .forEach(fitting -> brackets.put(fitting, bracket(fitting)));
    }

    /** What hangs on joints, in document order. */
    List<OnJoint> onJoints() {
        return List.copyOf(onJoints.values());
    }

    /** What brackets carry, in document order. */
    List<Bracket> brackets() {
        return List.copyOf(brackets.values());
    }

    // ---- joints ----------------------------------------------------------------------------------------------------

    private OnJoint onJoint(JointLoad said, PlannedJoint joint) {
        Figure<Mass> load = load(said);
        int count = joint.fasteners().value();
        List<FastenerSetting> own = settingsOf(joint);
        Optional<FastenerSetting> unknown =
                own.stream().filter(s -> s.across().holds().isEmpty()).findFirst();
        String notHeld = own.isEmpty()
                ? "nothing is driven there"
                : unknown.map(s -> s.across().notHeld()).orElse("");
        Optional<Figure<Force>> holds = notHeld.isEmpty()
                ? own.stream().flatMap(s -> s.across().holds().stream()).min(Comparator.comparing(Figure::value))
                : Optional.empty();
        return new OnJoint(
                joint.words(),
                load,
                count,
                Figure.of(
                        Force.weightOf(load.value()).times(1.0 / count),
                        "load / fasteners, which share it alike",
                        Reason.GEOMETRY,
                        given("load", load.value()),
                        given("fasteners", count)),
                holds,
                notHeld);
    }

    private Figure<Mass> load(JointLoad said) {
        if (said.load().isPresent()) {
            return Figure.said(said.load().get(), "what hangs on the joint");
        }
        Carries.Share share = said.share().orElseThrow();
        Mass other = carrying.whole(share.of());
        return Figure.of(
                other.times(share.share()),
                "its share of the load",
                Reason.GEOMETRY,
                given("load", other),
                given("share", Ratio.of(share.share())));
    }

    private List<FastenerSetting> settingsOf(PlannedJoint joint) {
        return joint.behind()
                .map(wall -> List.of(settings.of(joint.said().fastener().orElseThrow(), wall)))
                .orElseGet(() -> driven.stream()
                        .filter(contact -> contact.joint().equals(joint))
                        .map(settings::of)
                        .toList());
    }

    // ---- brackets --------------------------------------------------------------------------------------------------

    private Bracket bracket(Fitting fitting) {
        Fitting.Load load = fitting.load().orElseThrow();
        Optional<Length> height = fitting.item().screwsApart();
        List<String> lacks = new ArrayList<>();
        if (height.isEmpty()) {
            lacks.add("Say .screwsApart(\"9 in\") of the bracket.");
        }
        Optional<Figure<Force>> holds = settings.bracket(fitting).flatMap(FastenerSetting::holds);
        if (holds.isEmpty()) {
            lacks.add("Say .comesWith(...) of the bracket and .toStudsOf(\"spruce-pine-fir\").");
        }
        return new Bracket(
                Planned.fittedOn(sketch, fitting),
                load.weight(),
                load.out(),
                height,
                fitting.count(),
                height.map(high -> pull(load, high, fitting.count())),
                holds,
                lacks.isEmpty() ? "" : lacks.get(0));
    }

    private static Figure<Force> pull(Fitting.Load load, Length height, int count) {
        return Figure.of(
                Force.weightOf(load.weight()).times(load.out().dividedBy(height) / count),
                "load · how far out / height between the screws / brackets",
                "statics",
                given("load", load.weight()),
                given("out", load.out()),
                given("height", height),
                given("brackets", count));
    }
}
