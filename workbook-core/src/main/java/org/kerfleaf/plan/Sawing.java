package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.saw.SawCut;
import org.kerfleaf.saw.SawKind;
import org.kerfleaf.saw.SawSetUps;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.saw.Straightedges;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Saw;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;

/** Lists every kind of cut the parts need, and groups them into settings. */
final class Sawing {
    private static final Figure<Angle> SQUARE = Figure.of(Angle.ZERO, "a square cut", Reason.GEOMETRY);

    private final Sketch sketch;
    private final List<SizedPart> sized;

    Sawing(Sketch sketch, List<SizedPart> sized) {
        this.sketch = sketch;
        this.sized = sized;
    }

    List<SawSetting> settings(List<PlannedPart> parts) {
        Optional<Saw> saw = sketch.all(Saw.class).stream().findFirst();
        Straightedges straightedges =
                new Straightedges(saw.flatMap(Saw::kerf), saw.flatMap(Saw::left), saw.flatMap(Saw::right));
        SawSetUps setUps = new SawSetUps(straightedges);
        for (PlannedPart part : parts) {
            SizedPart own = sized.stream()
                    .filter(s -> s.said().name().equals(part.name()))
                    .findFirst()
                    .orElseThrow();
            setUps.addAll(part.kind() == PartKind.BOARD ? board(part) : panel(part, own));
        }
        return setUps.settings();
    }

    private static List<SawCut> board(PlannedPart part) {
        Length thickness = part.thickness().value();
        List<SawCut> cuts = new ArrayList<>();
        cuts.add(new SawCut(part.letter(), SawKind.MITRE_SAW, "square ends", thickness, SQUARE, Optional.of(SQUARE)));
        for (PlannedPart.PlannedEdge edge : part.edges()) {
            boolean bevel = edge.cut() == PlannedPart.PlannedEdge.Cut.BEVEL;
            cuts.add(new SawCut(
                    part.letter(),
                    SawKind.MITRE_SAW,
                    edge.name(),
                    thickness,
                    bevel ? edge.angle() : edge.tilt().orElse(SQUARE),
                    Optional.of(bevel ? SQUARE : edge.angle())));
        }
        return cuts;
    }

    private static List<SawCut> panel(PlannedPart part, SizedPart own) {
        if (part.kind() == PartKind.PANE) {
            return List.of();
        }
        Length thickness = part.thickness().value();
        List<SawCut> cuts = new ArrayList<>();
        cuts.add(new SawCut(part.letter(), SawKind.CIRCULAR_SAW, "straight cuts", thickness, SQUARE, Optional.empty()));
        if (own.said().trait(Trait.Gable.class).isPresent()
                || own.said().trait(Trait.SlopingTop.class).isPresent()) {
            cuts.add(new SawCut(
                    part.letter(),
                    SawKind.CIRCULAR_SAW,
                    "slopes, along the marked line",
                    thickness,
                    SQUARE,
                    Optional.empty()));
        }
        for (PlannedPart.PlannedEdge edge : part.edges()) {
            // A hand-held saw follows the marked line: only its blade's tilt is set.
            cuts.add(new SawCut(
                    part.letter(),
                    SawKind.CIRCULAR_SAW,
                    edge.name(),
                    thickness,
                    edge.tilt().orElse(edge.angle()),
                    Optional.empty()));
        }
        for (Cutout cutout : own.cutouts()) {
            if (cutout.opening()) {
                cuts.add(new SawCut(
                        part.letter(),
                        SawKind.JIGSAW,
                        "opening “" + cutout.name() + "”",
                        thickness,
                        SQUARE,
                        Optional.empty()));
            }
        }
        return cuts;
    }
}
