package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kerfleaf.joint.FastenerLine;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.Contact;
import org.kerfleaf.sketch.Joint;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Sketch;

/** Finds where fastened parts touch, and counts what is driven along each contact. */
final class Joining {
    private static final Figure<Integer> NONE = Figure.of(0, "nothing is driven here", Reason.THE_WORKBOOK);

    private final Sketch sketch;
    private final Assembly assembly;
    private final Problems problems;
    private final MeasureStyle style;

    Joining(Sketch sketch, Assembly assembly, MeasureStyle style, Problems problems) {
        this.sketch = sketch;
        this.assembly = assembly;
        this.style = style;
        this.problems = problems;
    }

    List<PlannedJoint> all() {
        List<PlannedJoint> planned = new ArrayList<>();
        for (Joint joint : sketch.all(Joint.class)) {
            problems.trying(joint.origin(), () -> plan(joint)).ifPresent(planned::add);
        }
        return planned;
    }

    private PlannedJoint plan(Joint joint) {
        if (joint.to().isEmpty()) {
            throw new Unplannable(joint.origin(), "Fastened to what? Say .to(floorIn).");
        }
        if (joint.fastener().isPresent()
                && joint.every().isEmpty()
                && joint.times().isEmpty()) {
            throw new Unplannable(joint.origin(), "How many? Say every(\"5 in\"), or .times(4).");
        }
        List<PlannedJoint.Touch> touches = new ArrayList<>();
        for (Origin from : joint.of()) {
            for (Origin to : joint.to()) {
                touches.addAll(touches(joint, from, to));
            }
        }
        return new PlannedJoint(joint, List.copyOf(touches), fasteners(joint, touches), stack(touches));
    }

    private List<PlannedJoint.Touch> touches(Joint joint, Origin from, Origin to) {
        List<PlannedJoint.Touch> touches = new ArrayList<>();
        for (Piece through : assembly.of(from)) {
            for (Piece into : assembly.of(to)) {
                through.box()
                        .contact(into.box())
                        .ifPresent(contact ->
                                touches.add(new PlannedJoint.Touch(through, into, contact, along(joint, contact))));
            }
        }
        if (touches.isEmpty()) {
            throw apart(joint, from, to);
        }
        return touches;
    }

    private Figure<Integer> along(Joint joint, Contact contact) {
        Optional<Length> every = joint.every();
        return joint.fastener().isPresent() && every.isPresent()
                ? FastenerLine.count(contact.along(), FastenerLine.END_DISTANCE, every.get())
                : NONE;
    }

    private static Figure<Integer> fasteners(Joint joint, List<PlannedJoint.Touch> touches) {
        if (joint.fastener().isEmpty()) {
            return NONE;
        }
        if (joint.times().isPresent()) {
            return Figure.said(joint.times().get(), "how many");
        }
        int sum = touches.stream().mapToInt(t -> t.fasteners().value()).sum();
        return Figure.of(
                sum,
                "the sum over the contacts; on each: (contact − 2 · end distance) / spacing, rounded up, + 1",
                Reason.COMMON_PRACTICE,
                given("contacts", touches.size()),
                given("end distance", FastenerLine.END_DISTANCE),
                given("spacing", joint.every().orElseThrow()));
    }

    /** What a bolt through the whole joint goes through: every piece once, along the first contact's axis. */
    private static List<Length> stack(List<PlannedJoint.Touch> touches) {
        if (touches.isEmpty()) {
            return List.of();
        }
        Axis axis = touches.get(0).contact().axis();
        Set<Piece> pieces = new LinkedHashSet<>();
        for (PlannedJoint.Touch touch : touches) {
            pieces.add(touch.through());
            pieces.add(touch.into());
        }
        return pieces.stream().map(p -> p.box().extent(axis)).toList();
    }

    private Unplannable apart(Joint joint, Origin from, Origin to) {
        String one = name(from);
        String other = name(to);
        if (assembly.of(from).isEmpty() || assembly.of(to).isEmpty()) {
            return new Unplannable(
                    joint.origin(),
                    "“%s” and “%s” are fastened, but one of them has no place yet.".formatted(one, other));
        }
        Box a = assembly.of(from).get(0).box();
        Box b = assembly.of(to).get(0).box();
        Optional<Box> clash = a.clash(b);
        if (clash.isPresent()) {
            return new Unplannable(
                    joint.origin(),
                    "%s and %s are in one place: %s of both."
                            .formatted(one, other, clash.get().size(style)));
        }
        Map<Axis, Length> gaps = new LinkedHashMap<>();
        for (Axis axis : Axis.values()) {
            Length overlap = a.overlap(b, axis);
            if (overlap.isNegative()) {
                gaps.put(axis, overlap.negated());
            }
        }
        if (gaps.isEmpty()) {
            return new Unplannable(
                    joint.origin(), "%s and %s touch along a line only; nothing holds there.".formatted(one, other));
        }
        List<String> words = gaps.entrySet().stream()
                .map(g -> g.getValue().in(style) + " apart, " + g.getKey().words())
                .toList();
        return new Unplannable(
                joint.origin(),
                "%s and %s are fastened but do not touch: %s.".formatted(one, other, String.join("; ", words)));
    }

    private String name(Origin placing) {
        return sketch.placing(placing).map(Placing::part).orElse("a part kept nowhere");
    }
}
