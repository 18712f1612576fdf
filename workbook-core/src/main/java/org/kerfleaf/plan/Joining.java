package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.joint.FastenerLine;
import org.kerfleaf.joint.ScrewChoice;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Gap;
import org.kerfleaf.shape.Touch;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.sketch.Joint;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Screw;
import org.kerfleaf.sketch.Sketch;

/** Finds where fastened parts touch, and counts what is driven along each contact. */
final class Joining {
    private static final Figure<Integer> NONE = Figure.of(0, "nothing is driven here", Reason.THE_WORKBOOK);

    private final Sketch sketch;
    private final Sizing sizing;
    private final Assembly assembly;
    private final Bodies bodies;
    private final Problems problems;
    private final MeasureStyle style;

    Joining(Sketch sketch, Sizing sizing, Assembly assembly, Bodies bodies, MeasureStyle style, Problems problems) {
        this.sketch = sketch;
        this.sizing = sizing;
        this.assembly = assembly;
        this.bodies = bodies;
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
        if (joint.studs().isPresent()) {
            return toStuds(joint);
        }
        if (joint.to().isEmpty()) {
            throw new Unplannable(joint.origin(), "Fastened to what? Say .to(floorIn).");
        }
        if (driven(joint) && joint.every().isEmpty() && joint.times().isEmpty()) {
            throw new Unplannable(joint.origin(), "How many? Say every(\"5 in\"), or .times(4).");
        }
        List<PlannedJoint.Touch> touches = new ArrayList<>();
        boolean eachOther = joint.of().equals(joint.to());
        for (Origin from : joint.of()) {
            for (Origin to : joint.to()) {
                boolean alone = from.equals(to) && assembly.of(from).size() < 2;
                if (eachOther && (alone || from.compareTo(to) > 0)) {
                    continue;
                }
                touches.addAll(touches(joint, from, to));
            }
        }
        if (touches.isEmpty()) {
            throw new Unplannable(
                    joint.origin(),
                    "“%s” is fastened to each other, but no two of it have places yet."
                            .formatted(name(joint.of().get(0))));
        }
        Optional<ScrewChoice> choice = choice(joint, touches);
        Joint chosen = choice.map(made -> joint.screwed(taken(joint, made))).orElse(joint);
        return new PlannedJoint(
                chosen, List.copyOf(touches), fasteners(chosen, touches), stack(touches), Optional.empty(), choice);
    }

    /** Where the studs stand is not known, so nothing is placed; what goes through is as thick as the part is thinnest. */
    private PlannedJoint toStuds(Joint joint) {
        if (joint.fastener().isEmpty()) {
            throw new Unplannable(
                    joint.origin(), "Into studs: with what? Say .lagged(lagScrew(\"3/8 in\", \"4 in\")).");
        }
        if (joint.times().isEmpty()) {
            throw new Unplannable(joint.origin(), "Into studs: how many? Say .times(5).");
        }
        String part = name(joint.of().get(0));
        Length thin = sizing.of(part)
                .map(sized -> sized.thickness().value())
                .orElseThrow(() ->
                        new Unplannable(joint.origin(), "“%s” has no shape that makes sense yet.".formatted(part)));
        return new PlannedJoint(
                joint,
                List.of(),
                fasteners(joint, List.of()),
                List.of(thin),
                Optional.of(new PlannedJoint.Behind(part, thin, joint.studs().orElseThrow())),
                Optional.empty());
    }

    private List<PlannedJoint.Touch> touches(Joint joint, Origin from, Origin to) {
        List<PlannedJoint.Touch> touches = new ArrayList<>();
        for (Piece through : assembly.of(from)) {
            for (Piece into : assembly.of(to)) {
                if (from.equals(to) && through.index() >= into.index()) {
                    continue;
                }
                if (!bodies.has(through) || !bodies.has(into)) {
                    throw new Unplannable(
                            joint.origin(),
                            "“%s” or “%s” has no shape that makes sense yet.".formatted(name(from), name(to)));
                }
                for (Touch place : bodies.touching(through, into).touches()) {
                    touches.add(new PlannedJoint.Touch(
                            through,
                            into,
                            place,
                            bodies.depth(through, place.frame().w()),
                            bodies.depth(into, place.frame().w()),
                            along(joint, place)));
                }
            }
        }
        if (touches.isEmpty()) {
            throw apart(joint, from, to);
        }
        return touches;
    }

    private static boolean driven(Joint joint) {
        return joint.fastener().isPresent() || joint.drawer().isPresent();
    }

    // ---- a screw from the drawer ---------------------------------------------------------------------------------

    private Optional<ScrewChoice> choice(Joint joint, List<PlannedJoint.Touch> touches) {
        return joint.drawer()
                .map(drawer -> ScrewChoice.among(
                        drawer.screws().stream()
                                .map(s -> new WoodScrew(s.gauge(), s.length()))
                                .toList(),
                        touches.stream()
                                .map(t -> new ScrewChoice.Contact(
                                        t.thickness(),
                                        t.depth(),
                                        t.place().across().half()))
                                .toList(),
                        PlannedJoint.words(touches),
                        style));
    }

    private static Screw taken(Joint joint, ScrewChoice choice) {
        WoodScrew taken = choice.chosen();
        return joint.drawer().orElseThrow().screws().stream()
                .filter(s -> s.gauge() == taken.gauge() && s.length().equals(taken.length()))
                .findFirst()
                .orElseThrow();
    }

    // ---- how many --------------------------------------------------------------------------------------------------

    private Figure<Integer> along(Joint joint, Touch place) {
        Optional<Length> every = joint.every();
        return driven(joint) && every.isPresent()
                ? FastenerLine.count(place.along(), FastenerLine.END_DISTANCE, every.get())
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

    /** What a bolt goes through, where it goes through most. */
    private List<Length> stack(List<PlannedJoint.Touch> touches) {
        return InLine.of(touches, bodies).stream()
                .map(line -> line.pieces().stream()
                        .map(piece -> bodies.depth(piece, line.place().frame().w()))
                        .toList())
                .max(Comparator.comparing(depths -> depths.stream().reduce(Length.ZERO, Length::plus)))
                .orElse(List.of());
    }

    private Unplannable apart(Joint joint, Origin from, Origin to) {
        String one = name(from);
        String other = name(to);
        if (assembly.of(from).isEmpty() || assembly.of(to).isEmpty()) {
            return new Unplannable(
                    joint.origin(),
                    "“%s” and “%s” are fastened, but one of them has no place yet.".formatted(one, other));
        }
        Touching nearest = nearest(from, to);
        if (nearest.clash().isPresent()) {
            return new Unplannable(
                    joint.origin(),
                    "%s and %s are in one place: %s of both."
                            .formatted(one, other, Clashes.size(nearest.clash().get(), style)));
        }
        Optional<Gap> gap = nearest.gap();
        if (gap.isEmpty()) {
            return new Unplannable(
                    joint.origin(),
                    "%s and %s touch along a line only; nothing holds there. Bevel the edge, or move one."
                            .formatted(one, other));
        }
        return new Unplannable(
                joint.origin(),
                "%s and %s are fastened but do not touch: %s apart, %s."
                        .formatted(
                                one,
                                other,
                                Clashes.distance(gap.get().size(), style),
                                Clashes.direction(gap.get().direction())));
    }

    /** The pair that is nearest to touching. */
    private Touching nearest(Origin from, Origin to) {
        Touching nearest = null;
        for (Piece one : assembly.of(from)) {
            for (Piece other : assembly.of(to)) {
                Touching touching = bodies.touching(one, other);
                if (nearest == null
                        || touching.clash().isPresent()
                        || size(touching).isShorterThan(size(nearest))) {
                    nearest = touching;
                }
            }
        }
        return nearest;
    }

    private static Length size(Touching touching) {
        return touching.gap().map(Gap::size).orElse(Length.ZERO);
    }

    private String name(Origin placing) {
        return sketch.placing(placing).map(Placing::part).orElse("a part kept nowhere");
    }
}
