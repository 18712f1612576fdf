package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.cutting.SheetCut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.saw.Reading;
import org.kerfleaf.saw.SawCut;
import org.kerfleaf.saw.SawKind;
import org.kerfleaf.saw.SawLimits;
import org.kerfleaf.saw.SawSetUps;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.saw.SawSetting.NumberedCut;
import org.kerfleaf.saw.Straightedges;
import org.kerfleaf.sketch.MitreSaw;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Saw;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;

/** Lists every kind of cut the parts need, and groups them into settings of this maker's saws. */
final class Sawing {
    private final Sketch sketch;
    private final List<PlannedPart> parts;
    private final Sizing sizing;
    private final Optional<Saw> saw;
    private final OpeningCuts openings;
    private final RouterCuts router;

    Sawing(Sketch sketch, List<PlannedPart> parts, Sizing sizing, MeasureStyle style) {
        this.sketch = sketch;
        this.parts = parts;
        this.sizing = sizing;
        this.saw = sketch.all(Saw.class).stream().findFirst();
        this.openings = new OpeningCuts(sketch, style);
        this.router = new RouterCuts(sketch, parts, sizing, style);
    }

    /** All settings; the numbered cuts are those of the sheets that panels come from. */
    List<SawSetting> settings(List<SheetLayout> sheets) {
        SawSetUps setUps = new SawSetUps(straightedges(), limits(sketch));
        StopBlocks stops = new StopBlocks(parts, sizing);
        for (PlannedPart part : parts) {
            SizedPart own = sizing.of(part.name()).orElseThrow();
            if (part.kind() == PartKind.BOARD) {
                setUps.addAll(board(part, own, stops));
            } else if (part.kind() == PartKind.PANEL) {
                setUps.addAll(panel(part, own));
            }
            setUps.addAll(router.of(part, own));
        }
        number(sheets, setUps);
        return setUps.settings();
    }

    /** What this maker's saws can do at most. */
    static SawLimits limits(Sketch sketch) {
        return new SawLimits(
                sketch.all(Saw.class).stream()
                        .flatMap(s -> s.cutsDeep().stream())
                        .findFirst(),
                sketch.all(MitreSaw.class).stream()
                        .flatMap(s -> s.stop().stream())
                        .findFirst());
    }

    private Straightedges straightedges() {
        List<Straightedges.Base> base = new ArrayList<>();
        saw.flatMap(Saw::left).ifPresent(d -> base.add(new Straightedges.Base("left", Angle.ZERO, d)));
        saw.flatMap(Saw::right).ifPresent(d -> base.add(new Straightedges.Base("right", Angle.ZERO, d)));
        saw.stream()
                .flatMap(s -> s.tilted().stream())
                .map(t -> new Straightedges.Base(t.side() == Side.LEFT ? "left" : "right", t.tilt(), t.distance()))
                .forEach(base::add);
        return new Straightedges(saw.flatMap(Saw::kerf), base);
    }

    /** Tells the cuts of every sheet from which a panel comes. */
    private void number(List<SheetLayout> sheets, SawSetUps setUps) {
        for (int at = 0; at < sheets.size(); at++) {
            String stock = sheets.get(at).sheet().stock();
            Optional<PlannedPart> panel = parts.stream()
                    .filter(p -> p.kind() == PartKind.PANEL && p.stock().equals(stock))
                    .findFirst();
            if (panel.isPresent()) {
                for (SheetCut cut : sheets.get(at).cuts()) {
                    setUps.guides()
                            .add(panel.get().thickness().value(), cut.set(), new NumberedCut(at + 1, cut.number()));
                }
            }
        }
    }

    private SawKind sheetSaw() {
        return saw.filter(Saw::table).isPresent() ? SawKind.TABLE_SAW : SawKind.CIRCULAR_SAW;
    }

    // ---- boards ------------------------------------------------------------------------------------------------

    private List<SawCut> board(PlannedPart part, SizedPart own, StopBlocks stops) {
        Length thickness = part.thickness().value();
        Length width = part.width().value();
        List<SawCut> cuts = new ArrayList<>();
        stops.square(part, own)
                .ifPresent(ends ->
                        cuts.add(SawCut.of(part.letter(), SawKind.MITRE_SAW, ends.words(), thickness, Edges.SQUARE)
                                .scaled(Edges.SQUARE, width)
                                .with(ends.set())));
        for (PlannedEdge edge : part.edges()) {
            boolean bevel = edge.cut() == PlannedEdge.Cut.BEVEL;
            if (Ends.isLong(own, edge)) {
                cuts.add(SawCut.of(part.letter(), sheetSaw(), edge.name(), thickness, edge.angle()));
                continue;
            }
            SawCut cut = SawCut.of(
                            part.letter(),
                            SawKind.MITRE_SAW,
                            edge.name(),
                            thickness,
                            bevel ? edge.angle() : edge.tilt().orElse(Edges.SQUARE))
                    .scaled(bevel ? Edges.SQUARE : edge.angle(), width)
                    .with(stops.of(part, own))
                    .with(Ends.fascia(own.said(), edge, width));
            cuts.add(Ends.meetItsLike(own.said(), edge) ? cut.meetingItsLike() : cut);
        }
        return cuts;
    }

    // ---- panels ------------------------------------------------------------------------------------------------

    private List<SawCut> panel(PlannedPart part, SizedPart own) {
        Length thickness = part.thickness().value();
        List<SawCut> cuts = new ArrayList<>();
        cuts.add(SawCut.of(part.letter(), sheetSaw(), "straight cuts", thickness, Edges.SQUARE));
        if (own.said().trait(Trait.Gable.class).isPresent()
                || own.said().trait(Trait.SlopingTop.class).isPresent()) {
            cuts.add(SawCut.of(
                    part.letter(), SawKind.CIRCULAR_SAW, "slopes, along the marked line", thickness, Edges.SQUARE));
        }
        for (PlannedEdge edge : part.edges()) {
            SawCut cut = SawCut.of(
                    part.letter(),
                    sheetSaw(),
                    edge.name(),
                    thickness,
                    edge.tilt().orElse(edge.angle()));
            cut = edge.tilt().isPresent() ? turned(cut, edge, part.width().value()) : cut;
            cuts.add(Ends.meetItsLike(own.said(), edge) ? cut.meetingItsLike() : cut);
        }
        cuts.addAll(openings.of(part.letter(), thickness, own, saw));
        return cuts;
    }

    /** A hand-held saw follows the marked line: only its blade's tilt is set. A table saw's gauge is set to it. */
    private SawCut turned(SawCut cut, PlannedEdge edge, Length wide) {
        return sheetSaw() == SawKind.TABLE_SAW
                ? cut.scaled(edge.angle(), wide)
                : cut.with(List.of(new Reading("angle of the marked line, from square", edge.angle())));
    }
}
