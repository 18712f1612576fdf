package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.GlazingChecks;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Item;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Trait;
import org.kerfleaf.stock.GlazingKind;
import org.kerfleaf.stock.PaneSize;

/** Tells each pane with its pocket: sizes, bite, depth, lip, beads. */
final class GlazedPanes {
    private final Planned planned;

    GlazedPanes(Planned planned) {
        this.planned = planned;
    }

    List<GlazedPane> all() {
        return planned.sketch().all(Glazing.class).stream()
                .flatMap(glazing -> planned.sized(glazing.pane()).stream()
                        .flatMap(pane -> planned.sizing().pocketOf(pane.said()).stream()
                                .map(pocket -> pane(glazing, pane, pocket))))
                .toList();
    }

    private GlazedPane pane(Glazing glazing, SizedPart pane, Panes.Pocket pocket) {
        Optional<Length> deep = deep(pane.said());
        Optional<Figure<Length>> over = beadOver(glazing, pane, pocket);
        return new GlazedPane(
                glazing.origin().step(),
                pane.said().name(),
                pocket(pocket.clearWide(), pocket),
                pocket(pocket.clearHigh(), pocket),
                pane.across(),
                pane.up(),
                bite(pane.said(), pane.across().value(), pocket.clearWide()),
                bite(pane.said(), pane.up().value(), pocket.clearHigh()),
                fills(glazing, pane),
                deep.map(depth -> Figure.said(depth, "how deep the rabbet is")),
                deep.flatMap(depth -> frame(glazing)
                        .map(part -> Figure.of(
                                part.thickness().value().minus(depth),
                                "thickness − rabbet",
                                Reason.GEOMETRY,
                                given("thickness", part.thickness().value()),
                                given("rabbet", depth)))),
                bead(glazing, pocket.wide(), over),
                bead(glazing, pocket.high(), over),
                over,
                over.flatMap(any -> frame(glazing).map(this::pinDeep)));
    }

    /** A bead lies in the rabbet if bedding and pane leave it room there, else on the face; empty where that is not known. */
    Optional<Length> roomForBead(Glazing glazing, SizedPart pane) {
        return deep(pane.said()).flatMap(deep -> fills(glazing, pane).map(fills -> deep.minus(fills.value())));
    }

    Optional<Figure<Length>> beadOver(Glazing glazing, SizedPart pane, Panes.Pocket pocket) {
        return roomForBead(glazing, pane)
                .filter(room -> room.isShorterThan(GlazingChecks.pinned(planned.style())))
                .flatMap(room -> glazing.beads()
                        .flatMap(Item::wide)
                        .map(wide -> Figure.of(
                                wide.minus(pocket.rabbet()),
                                "bead − rabbet: it lies on the face, since bedding and pane fill the rabbet",
                                Reason.GEOMETRY,
                                given("bead", wide),
                                given("rabbet", pocket.rabbet()))));
    }

    private Figure<Length> pinDeep(SizedPart part) {
        return Figure.of(
                part.thickness().value().minus(GlazingChecks.tip(planned.style())),
                "thickness − 1/16 in (1.5 mm)",
                Reason.COMMON_PRACTICE,
                given("thickness", part.thickness().value()));
    }

    private static Figure<Length> pocket(Length clear, Panes.Pocket pocket) {
        return Figure.of(
                clear.plus(pocket.rabbet(), pocket.rabbet()),
                "clear opening + 2 · rabbet",
                Reason.GEOMETRY,
                given("clear", clear),
                given("rabbet", pocket.rabbet()));
    }

    private Optional<Figure<Length>> bite(Part pane, Length cut, Length clear) {
        Optional<GlazingKind> kind =
                planned.sketch().sheet(pane.stock()).map(Sheet::name).flatMap(GlazingKind::named);
        return pane.trait(Trait.Colder.class)
                .flatMap(cold -> kind.map(
                        of -> PaneSize.coldBite(cut, clear, of.expansion().value(), cold.change())));
    }

    /** Bedding and pane on each other; without bedding the pane alone. Empty where the bedding's thickness was not said. */
    static Optional<Figure<Length>> fills(Glazing glazing, SizedPart pane) {
        Optional<Length> bedding = glazing.bedding().isEmpty()
                ? Optional.of(Length.ZERO)
                : glazing.bedding().flatMap(Item::thick);
        return bedding.map(tape -> Figure.of(
                tape.plus(pane.thickness().value()),
                "bedding + pane",
                Reason.GEOMETRY,
                given("bedding", tape),
                given("pane", pane.thickness().value())));
    }

    /** How deep the rabbet is that it lies in. */
    Optional<Length> deep(Part pane) {
        return pane.trait(Trait.FitsRabbet.class)
                .map(Trait.FitsRabbet::rabbetDeep)
                .or(() -> pane.trait(Trait.FitsOpening.class)
                        .map(Trait.FitsOpening::opening)
                        .flatMap(fits -> planned.sketch().part(fits.part()).stream()
                                .flatMap(part -> part.traits(Trait.RabbetIn.class).stream())
                                .filter(rabbet -> rabbet.opening().equals(fits.opening()))
                                .map(Trait.RabbetIn::deep)
                                .findFirst()));
    }

    /** The part it is glazed into; of a frame of boards the first. */
    Optional<SizedPart> frame(Glazing glazing) {
        return glazing.into().stream()
                .flatMap(key -> planned.sketch().placing(key).stream())
                .map(Placing::part)
                .flatMap(name -> planned.sized(name).stream())
                .findFirst();
    }

    private static Optional<Figure<Length>> bead(Glazing glazing, Length pocket, Optional<Figure<Length>> over) {
        Length past = over.map(Figure::value).orElse(Length.ZERO).max(Length.ZERO);
        return glazing.beads()
                .map(beads -> Figure.of(
                        pocket.plus(past, past),
                        past.isZero()
                                ? "as long as the pocket at its long point, mitred 45° at both ends"
                                : "pocket + 2 · what it reaches past it, at its long point, mitred 45° at both ends",
                        Reason.GEOMETRY,
                        given("pocket", pocket),
                        given("past it", past)));
    }
}
