package org.kerfleaf.plan;

import java.time.Duration;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.kerfleaf.finish.FinishNeed;
import org.kerfleaf.joint.GlueUp;
import org.kerfleaf.joint.GluedJoint;
import org.kerfleaf.measure.Area;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.GlueChecks;
import org.kerfleaf.sketch.Glue;

/** What each glued joint takes: glue, time, clamps. */
final class Gluing {
    private Gluing() {}

    static List<GluedJoint> all(List<PlannedJoint> joints) {
        return joints.stream()
                .flatMap(joint -> joint.said().glue().stream().map(glue -> glued(joint, glue)))
                .toList();
    }

    private static GluedJoint glued(PlannedJoint joint, Glue glue) {
        int fasteners = joint.fasteners().value();
        Figure<Integer> clamps = GlueUp.clamps(
                joint.touches().stream().map(t -> t.place().along()).toList(), fasteners);
        return new GluedJoint(
                joint.said().origin().step(),
                joint.words(),
                glue.name(),
                Figure.of(joint.area(), "all its contacts", Reason.GEOMETRY),
                FinishNeed.glueMass(joint.area(), spread(glue)),
                closing(joint),
                glue.openTime(),
                clamps);
    }

    /** What is glued in one go: a piece with all it is glued to, the one that takes longest; a ring as a whole. */
    private static Figure<Duration> closing(PlannedJoint joint) {
        boolean ring = joint.said().of().equals(joint.said().to());
        Map<Object, List<PlannedJoint.Touch>> goes = joint.touches().stream()
                .collect(Collectors.groupingBy(
                        t -> ring ? joint : t.through(), LinkedHashMap::new, Collectors.toList()));
        return goes.values().stream()
                .map(touches -> closing(joint, touches))
                .max(Comparator.comparing(Figure::value))
                .orElseThrow();
    }

    private static Figure<Duration> closing(PlannedJoint joint, List<PlannedJoint.Touch> touches) {
        int all = joint.touches().size();
        int fasteners = joint.said()
                .times()
                .map(many -> (many * touches.size() + all - 1) / all)
                .orElseGet(() ->
                        touches.stream().mapToInt(t -> t.fasteners().value()).sum());
        int clamps = GlueUp.clamps(touches.stream().map(t -> t.place().along()).toList(), fasteners)
                .value();
        Area area = touches.stream().map(t -> t.place().area()).reduce(Area.ZERO, Area::plus);
        return GlueUp.closing(area, fasteners, clamps);
    }

    /** What the bottle says it covers, if it does. */
    static Optional<FinishNeed.GlueSpread> spread(Glue glue) {
        return glue.covers().flatMap(area -> glue.per().map(per -> new FinishNeed.GlueSpread(area, per)));
    }

    static List<Check> checks(Planned planned) {
        return all(planned.joints()).stream()
                .map(g -> GlueChecks.time(g.joint(), g.closing().value(), g.openTime(), planned.style()))
                .toList();
    }
}
