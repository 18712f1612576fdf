package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.finish.FinishNeed;
import org.kerfleaf.joint.GlueUp;
import org.kerfleaf.joint.GluedJoint;
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
                GlueUp.closing(joint.area(), fasteners, clamps.value()),
                glue.openTime(),
                clamps);
    }

    /** What the bottle says it covers, if it does. */
    static Optional<FinishNeed.GlueSpread> spread(Glue glue) {
        return glue.covers().flatMap(area -> glue.per().map(per -> new FinishNeed.GlueSpread(area, per)));
    }

    static List<Check> checks(Planned planned) {
        List<PlannedJoint> joints = planned.joints();
        Stream<Check> times = all(joints).stream()
                .map(g -> GlueChecks.time(g.joint(), g.closing().value(), g.openTime(), planned.style()));
        Stream<Check> bare = joints.stream()
                .filter(joint -> joint.said().glue().isPresent())
                .map(joint -> GlueChecks.bare(joint.words(), painted(planned.sketch(), joint), planned.style()));
        return Stream.concat(times, bare).toList();
    }

    /** The part whose glued face a coat before the joint covers. */
    private static Optional<String> painted(Sketch sketch, PlannedJoint joint) {
        return sketch.all(Coat.class).stream()
                .filter(coat -> coat.origin().compareTo(joint.said().origin()) < 0)
                .flatMap(coat -> coat.faces().stream().flatMap(faces -> joint.touches().stream()
                        .flatMap(t -> Stream.of(
                                        covered(coat, faces, t.through(), t.place().faceOfA()),
                                        covered(coat, faces, t.into(), t.place().faceOfB()))
                                .flatMap(Optional::stream))))
                .findFirst();
    }

    private static Optional<String> covered(Coat coat, Coat.Faces faces, Piece piece, Face face) {
        boolean there = piece.placing().compareTo(coat.origin()) < 0;
        boolean is =
                switch (faces.which()) {
                    case INSIDE, OUTSIDE -> there && face.name().equals(faces.which().name());
                    case BOTH_OF -> Bodies.isWide(face) && faces.part().orElseThrow().equals(piece.part());
                    case ENDS_OF -> false;
                };
        return is ? Optional.of(piece.part()) : Optional.empty();
    }
}
