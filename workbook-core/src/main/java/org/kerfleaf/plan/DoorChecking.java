package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.DoorChecks;
import org.kerfleaf.rules.GlazingChecks;
import org.kerfleaf.rules.PartChecks;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Item;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Router;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Trait;
import org.kerfleaf.stock.GlazingKind;
import org.kerfleaf.stock.PaneSize;

/** Whether the pane fits and stays, and whether the door closes on its strip and hangs. */
final class DoorChecking {
    /** What hangs at one of these edges hangs on a level line, and its height says nothing about its hinges. */
    private static final Set<Side> LEVEL = Set.of(Side.TOP, Side.BOTTOM, Side.FRONT, Side.BACK);

    private final Planned planned;
    private final MeasureStyle style;

    DoorChecking(Planned planned) {
        this.planned = planned;
        this.style = planned.style();
    }

    List<Check> all() {
        List<Check> checks = new ArrayList<>();
        for (Part part : planned.sketch().all(Part.class)) {
            if (part.kind() == PartKind.PANE) {
                Optional<GlazingKind> kind = kind(part);
                checks.add(GlazingChecks.glassKind(part.name(), kind, true, true, style));
                kind.ifPresent(known -> planned.sized(part.name()).ifPresent(pane -> checks.addAll(pane(pane, known))));
            }
        }
        planned.sketch().all(Glazing.class).forEach(glazing -> checks.addAll(pocket(glazing)));
        for (Fitting fitting : planned.sketch().all(Fitting.class)) {
            Item item = fitting.item();
            if (item.kind() == Item.Kind.WEATHERSTRIP) {
                checks.add(DoorChecks.stripSqueeze(planned.fittedOn(fitting), item.thick(), item.squeezedTo(), style));
            }
            if (Hanging.isHinge(fitting)) {
                hinges(fitting).ifPresent(checks::add);
                hingeScrews(fitting).ifPresent(checks::add);
            }
        }
        return checks;
    }

    /** Depth, lip and corners of the rabbet a pane lies in. */
    private List<Check> pocket(Glazing glazing) {
        GlazedPanes panes = new GlazedPanes(planned);
        Optional<SizedPart> pane = planned.sized(glazing.pane());
        Optional<Length> deep = pane.flatMap(p -> panes.deep(p.said()));
        if (deep.isEmpty()) {
            return List.of();
        }
        String name = glazing.pane();
        List<Check> checks = new ArrayList<>();
        checks.add(GlazingChecks.rabbetDepth(
                name,
                deep.get(),
                GlazedPanes.fills(glazing, pane.get()).map(Figure::value),
                glazing.beads().flatMap(Item::thick),
                style));
        if (glazing.beads().isPresent()) {
            planned.sizing()
                    .pocketOf(pane.get().said())
                    .ifPresent(pocket -> checks.add(GlazingChecks.beads(
                            name,
                            panes.roomForBead(glazing, pane.get()),
                            panes.beadOver(glazing, pane.get(), pocket).map(Figure::value),
                            pocket.rabbet(),
                            style)));
        }
        panes.frame(glazing)
                .filter(part -> part.said().kind() == PartKind.BOARD)
                .ifPresent(part -> checks.add(PartChecks.rabbetLip(
                        part.said().name(), part.thickness().value(), deep.get(), style)));
        checks.add(GlazingChecks.paneCorner(
                name,
                planned.sketch().all(Router.class).stream()
                        .flatMap(router -> router.cutter().stream())
                        .findFirst(),
                pane.get()
                        .said()
                        .trait(Trait.RoundedCorners.class)
                        .map(Trait.RoundedCorners::radius)
                        .orElse(Length.ZERO),
                glazing.squared(),
                style));
        return checks;
    }

    private Optional<Check> hinges(Fitting fitting) {
        return fitting.on()
                .filter(key -> fitting.side().filter(LEVEL::contains).isEmpty())
                .map(planned.assembly()::of)
                .filter(pieces -> !pieces.isEmpty())
                .map(pieces -> Assembly.hull(pieces).extent(Axis.Z))
                .map(high -> DoorChecks.hinges(planned.fittedOn(fitting), fitting.count(), high, style));
    }

    private Optional<Check> hingeScrews(Fitting fitting) {
        return fitting.item()
                .screws()
                .flatMap(screw -> fitting.on()
                        .flatMap(planned.sketch()::placing)
                        .flatMap(placing -> planned.sized(placing.part()))
                        .map(door -> DoorChecks.hingeScrews(
                                planned.fittedOn(fitting),
                                screw.length(),
                                door.thickness().value(),
                                style)));
    }

    private Optional<GlazingKind> kind(Part pane) {
        return planned.sketch().sheet(pane.stock()).map(Sheet::name).flatMap(GlazingKind::named);
    }

    /** Each direction of a pane is held against its pocket when warm, and against its clear opening when cold. */
    private List<Check> pane(SizedPart pane, GlazingKind kind) {
        Part said = pane.said();
        List<Check> checks = new ArrayList<>();
        Panes.Pocket pocket = planned.sizing().pocketOf(said).orElseThrow();
        Ratio damp = said.trait(Trait.InDamp.class).isPresent()
                ? kind.swelling().map(f -> f.value()).orElse(PaneSize.DRY)
                : PaneSize.DRY;
        if (said.trait(Trait.Colder.class).isEmpty()) {
            checks.add(GlazingChecks.paneCold(said.name(), style));
        }
        said.trait(Trait.Warmer.class).ifPresent(warm -> {
            var expansion = kind.expansion().value();
            checks.add(GlazingChecks.paneHot(
                    said.name() + ", wide",
                    pane.across().value(),
                    pocket.wide(),
                    expansion,
                    warm.change(),
                    damp,
                    style));
            checks.add(GlazingChecks.paneHot(
                    said.name() + ", high", pane.up().value(), pocket.high(), expansion, warm.change(), damp, style));
        });
        said.trait(Trait.Colder.class).ifPresent(cold -> {
            var expansion = kind.expansion().value();
            checks.add(GlazingChecks.paneCold(
                    said.name() + ", wide",
                    pane.across().value(),
                    pocket.clearWide(),
                    pocket.rabbet(),
                    expansion,
                    cold.change(),
                    style));
            checks.add(GlazingChecks.paneCold(
                    said.name() + ", high",
                    pane.up().value(),
                    pocket.clearHigh(),
                    pocket.rabbet(),
                    expansion,
                    cold.change(),
                    style));
        });
        return checks;
    }
}
