package org.kerfleaf.plan;

import java.time.Duration;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.kerfleaf.finish.FinishNeed;
import org.kerfleaf.joint.GlueUp;
import org.kerfleaf.joint.GluedJoint;
import org.kerfleaf.measure.Area;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.GlueChecks;
import org.kerfleaf.shape.Face;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.Glue;
import org.kerfleaf.sketch.Sketch;

/** What each glued joint takes: glue, time, clamps; and whether it lies on bare wood. */
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
        Stream<Check> times = all(planned.joints()).stream()
                .map(g -> GlueChecks.time(g.joint(), g.closing().value(), g.openTime(), planned.style()));
        return Stream.concat(times, bare(planned)).toList();
    }

    /** Every joint that is painted before, else all of them as one. */
    private static Stream<Check> bare(Planned planned) {
        List<PlannedJoint> glued = planned.joints().stream()
                .filter(joint -> joint.said().glue().isPresent())
                .toList();
        List<Check> painted = glued.stream()
                .filter(joint -> painted(planned.sketch(), joint).isPresent())
                .map(joint -> GlueChecks.bare(joint.words(), painted(planned.sketch(), joint), planned.style()))
                .toList();
        return painted.isEmpty()
                ? glued.stream().limit(1).map(any -> GlueChecks.bare("", Optional.empty(), planned.style()))
                : painted.stream();
    }

    /** The part whose glued face a coat before the joint covers. */
    private static Optional<String> painted(Sketch sketch, PlannedJoint joint) {
        return sketch.all(Coat.class).stream()
                .filter(coat -> coat.origin().compareTo(joint.said().origin()) < 0)
                .flatMap(coat -> coat.faces().stream()
                        .flatMap(faces -> joint.touches().stream()
                                .flatMap(t -> Stream.of(
                                                covered(
                                                        coat,
                                                        faces,
                                                        t.through(),
                                                        t.place().faceOfA()),
                                                covered(
                                                        coat,
                                                        faces,
                                                        t.into(),
                                                        t.place().faceOfB()))
                                        .flatMap(Optional::stream))))
                .findFirst();
    }

    private static Optional<String> covered(Coat coat, Coat.Faces faces, Piece piece, Face face) {
        boolean there = piece.placing().compareTo(coat.origin()) < 0;
        boolean is = switch (faces.which()) {
            case INSIDE, OUTSIDE -> there && face.name().equals(faces.which().name());
            case BOTH_OF -> Bodies.isWide(face) && faces.part().orElseThrow().equals(piece.part());
            case ENDS_OF -> false;
        };
        return is ? Optional.of(piece.part()) : Optional.empty();
    }
}
