package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Percent;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.sketch.Air;
import org.kerfleaf.sketch.Damp;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.OfSite;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.SiteSaid;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.stock.WoodMovement;

/** Follows boards across their grain from the moisture they are worked with to the driest and the dampest they will have. */
final class Movements {
    private final Sketch sketch;
    private final Assembly assembly;
    private final List<PlannedPart> parts;
    private final Optional<Range> range;

    /** What the wood will live between. */
    private record Range(Figure<Percent> driest, Figure<Percent> dampest) {}

    /** Which way a board lies: its grain along one axis, its width along another. */
    private record Lying(Axis grain, Axis width, Axis through) {}

    Movements(Sketch sketch, Assembly assembly, List<PlannedPart> parts) {
        this.sketch = sketch;
        this.assembly = assembly;
        this.parts = parts;
        this.range =
                sketch.all(SiteSaid.class).stream().flatMap(Movements::said).findFirst();
    }

    private static Stream<Range> said(SiteSaid site) {
        Optional<Range> moistures = site.of(OfSite.WoodLives.class)
                .map(lives -> new Range(
                        Figure.said(lives.driest(), "the driest its wood will be"),
                        Figure.said(lives.dampest(), "the dampest its wood will be")));
        return moistures.or(() -> site.of(OfSite.WoodLivesIn.class).map(Movements::airs)).stream();
    }

    private static Range airs(OfSite.WoodLivesIn said) {
        Figure<Percent> one = moisture(said.one());
        Figure<Percent> other = moisture(said.other());
        return one.value().compareTo(other.value()) <= 0 ? new Range(one, other) : new Range(other, one);
    }

    private static Figure<Percent> moisture(Air air) {
        return WoodMovement.equilibrium(air.warm(), air.humidity());
    }

    /** Every board of which all that is needed was said. */
    List<Moving> all() {
        return boards().flatMap(part -> moving(part).stream()).toList();
    }

    /** Every board of a wood, mouldings of metal left out. */
    private Stream<PlannedPart> boards() {
        return parts.stream()
                .filter(p -> p.kind() == PartKind.BOARD && lumber(p).isPresent());
    }

    private Optional<Lumber> lumber(PlannedPart part) {
        return sketch.lumber(part.stock())
                .filter(l -> !l.moulding() || l.species().isPresent());
    }

    /** How a part moves; empty if something it takes was not said. */
    Optional<Moving> moving(PlannedPart part) {
        Optional<Lumber> lumber = lumber(part);
        Optional<WoodMovement> wood = lumber.flatMap(Movements::wood);
        Optional<Figure<Percent>> now = lumber.flatMap(l -> now(l.damp()));
        if (wood.isEmpty() || now.isEmpty() || range.isEmpty()) {
            return Optional.empty();
        }
        Figure<Length> dry = change(wood.get(), part, now.get(), range.get().driest());
        Figure<Length> damp = change(wood.get(), part, now.get(), range.get().dampest());
        return Optional.of(new Moving(
                part.name(),
                part.width(),
                wood.get(),
                now.get(),
                range.get().driest(),
                range.get().dampest(),
                dry,
                damp,
                gap(part.name()).map(gap -> gap(gap, dry.value(), damp.value()))));
    }

    private static Optional<WoodMovement> wood(Lumber lumber) {
        return WoodMovement.named(lumber.species().orElse(lumber.name()), lumber.rings());
    }

    private static Optional<Figure<Percent>> now(Damp damp) {
        return damp.moisture()
                .map(said -> Figure.said(said, "moisture when it is worked"))
                .or(() -> damp.dried().map(Movements::moisture));
    }

    /** What a meter shows, or what the air gives in which it dried. */
    static Optional<Percent> moistureOf(Damp damp) {
        return now(damp).map(Figure::value);
    }

    private static Figure<Length> change(
            WoodMovement wood, PlannedPart part, Figure<Percent> from, Figure<Percent> to) {
        return wood.change(part.width().value(), from.value(), to.value());
    }

    private static Moving.Gap gap(Length gap, Length dry, Length damp) {
        return new Moving.Gap(
                Figure.of(gap, "from board to board, as placed", Reason.GEOMETRY),
                moved(gap, dry, "driest"),
                moved(gap, damp, "dampest"));
    }

    private static Figure<Length> moved(Length gap, Length change, String when) {
        return Figure.of(
                gap.minus(change),
                "gap − what a board gets wider: each is fixed in its middle, so half of either neighbour's comes into it",
                Reason.GEOMETRY,
                given("gap", gap),
                given("wider when " + when, change));
    }

    /** What would have to be said before a board's movement is known. */
    String missing(PlannedPart part) {
        Optional<Lumber> lumber = lumber(part);
        List<String> missing = new ArrayList<>();
        if (lumber.flatMap(Movements::wood).isEmpty()) {
            missing.add(".species(\"western redcedar\") of “%s”, in full".formatted(part.stock()));
        }
        if (lumber.flatMap(l -> now(l.damp())).isEmpty()) {
            missing.add(".moisture(\"12 %%\") of “%s”".formatted(part.stock()));
        }
        if (range.isEmpty()) {
            missing.add("site().woodBetween(\"8 %\", \"16 %\")");
        }
        return "Say " + String.join(", and ", missing) + ".";
    }

    // ---- gaps ----------------------------------------------------------------------------------------------------

    /** Every board with another beside it, across the grain of both, and the smallest gap between such. */
    Map<PlannedPart, Length> gaps() {
        Map<PlannedPart, Length> gaps = new LinkedHashMap<>();
        boards().forEach(part -> gap(part.name()).ifPresent(gap -> gaps.put(part, gap)));
        return gaps;
    }

    private Optional<Length> gap(String part) {
        return assembly.all().stream()
                .filter(piece -> piece.part().equals(part))
                .flatMap(piece -> assembly.buildOf(piece.placing()).stream()
                        .filter(other -> other != piece)
                        .flatMap(other -> gap(piece, other).stream()))
                .min(Length::compareTo);
    }

    private Optional<Length> gap(Piece one, Piece other) {
        Optional<Lying> lying =
                lying(one).filter(l -> lying(other).filter(l::equals).isPresent());
        return lying.flatMap(l -> gap(one.box(), other.box(), l));
    }

    /**
     * The gap along the width of two boards that lie in one layer. Boards stacked on their edges and touching are one wall,
     * which may grow; where boards touch side by side they press on each other.
     */
    private static Optional<Length> gap(Box one, Box other, Lying lying) {
        Length gap = one.low(lying.width())
                .minus(other.high(lying.width()))
                .max(other.low(lying.width()).minus(one.high(lying.width())));
        boolean near = !gap.isNegative() && gap.isShorterThan(one.extent(lying.width()));
        boolean beside = overlap(one, other, lying.grain()).isPositive()
                && overlap(one, other, lying.through())
                        .isLongerThan(one.extent(lying.through()).half());
        boolean stacked = gap.isZero() && lying.width() == Axis.Z;
        return Optional.of(gap).filter(g -> near && beside && !stacked);
    }

    private static Length overlap(Box one, Box other, Axis axis) {
        return one.high(axis).min(other.high(axis)).minus(one.low(axis).max(other.low(axis)));
    }

    /** Empty for what lies on a slope, and for a board as wide as it is long or thick, of which nothing says which is which. */
    private Optional<Lying> lying(Piece piece) {
        Optional<PlannedPart> part =
                boards().filter(p -> p.name().equals(piece.part())).findFirst();
        if (part.isEmpty() || piece.sloping().isPresent()) {
            return Optional.empty();
        }
        Optional<Axis> grain = along(piece.box(), part.get().length().value());
        Optional<Axis> width = along(piece.box(), part.get().width().value());
        Optional<Axis> through = along(piece.box(), part.get().thickness().value());
        return grain.isEmpty() || width.isEmpty() || through.isEmpty()
                ? Optional.empty()
                : Optional.of(new Lying(grain.get(), width.get(), through.get()));
    }

    /** The one axis on which a box is so long. */
    private static Optional<Axis> along(Box box, Length extent) {
        List<Axis> found = Stream.of(Axis.values())
                .filter(axis -> box.extent(axis).equals(extent))
                .toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }
}
