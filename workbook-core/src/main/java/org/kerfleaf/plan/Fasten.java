package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.joint.Clearances;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Sketch;

/** Tells of every contact what is driven there, how it is set, and what is marked for it. */
final class Fasten {
    private final Sketch sketch;
    private final Bodies bodies;
    private final Hardware hardware;
    private final MeasureStyle style;
    private final FastenerSettings settings;
    private final Nearness nearness;
    private final PieceNames names;

    Fasten(
            Sketch sketch,
            FastenerSettings settings,
            Sizing sizing,
            Bodies bodies,
            Hardware hardware,
            MeasureStyle style) {
        this.sketch = sketch;
        this.bodies = bodies;
        this.hardware = hardware;
        this.style = style;
        this.settings = settings;
        this.nearness = new Nearness(sizing, bodies);
        this.names = new PieceNames(bodies);
    }

    Fastening all(
            List<PlannedJoint> joints,
            List<DrivenContact> driven,
            List<PlannedPart> parts,
            List<HingeMarks.Mark> hinges) {
        List<Fastened> fastened = new ArrayList<>();
        for (PlannedJoint joint : joints) {
            joint.behind().ifPresent(wall -> fastened.add(toStuds(joint, wall)));
            driven.stream()
                    .filter(c -> c.joint().equals(joint))
                    .map(this::contact)
                    .forEach(fastened::add);
        }
        sketch.all(Fitting.class).forEach(fitting -> bracket(fitting).ifPresent(fastened::add));
        return new Fastening(
                fastened,
                joints.stream().flatMap(j -> j.choice().stream()).toList(),
                Gluing.all(joints),
                new Markings(bodies, parts, names, settings, style).of(driven, hinges));
    }

    /** The top screw of each bracket that is screwed to studs. */
    private Optional<Fastened> bracket(Fitting fitting) {
        return settings.bracket(fitting)
                .map(setting -> new Fastened(
                        fitting.origin().step(),
                        fitting.item().name() + " to studs",
                        hardware.words(fitting.item().screws().orElseThrow()) + ", the top one of each",
                        fitting.count(),
                        setting,
                        Clearances.NONE,
                        new Fastened.Bound(fitting.item().name(), 1),
                        List.of(),
                        Length.ZERO,
                        List.of()));
    }

    private Fastened contact(DrivenContact contact) {
        return new Fastened(
                contact.joint().said().origin().step(),
                contact.joint().words(),
                hardware.words(contact.driver().said(), contact.joint()),
                contact.driven().size(),
                settings.of(contact),
                nearness.of(contact),
                bound(contact.driver().through()),
                contact.driver().into().stream().map(this::bound).toList(),
                contact.moved(),
                contact.fasteners());
    }

    private Fastened toStuds(PlannedJoint joint, PlannedJoint.Behind wall) {
        var fastener = joint.said().fastener().orElseThrow();
        return new Fastened(
                joint.said().origin().step(),
                joint.words(),
                hardware.words(fastener, joint),
                joint.fasteners().value(),
                settings.of(fastener, wall),
                Clearances.NONE,
                new Fastened.Bound(wall.part(), 1),
                List.of(),
                Length.ZERO,
                List.of());
    }

    private Fastened.Bound bound(Piece piece) {
        return new Fastened.Bound(piece.part(), names.number(piece));
    }
}
