package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.kerfleaf.cutting.BoardCutting;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.cutting.BoardPiece;
import org.kerfleaf.cutting.BoardSize;
import org.kerfleaf.cutting.PieceTooLargeException;
import org.kerfleaf.cutting.SheetCutting;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetPiece;
import org.kerfleaf.cutting.SheetSize;
import org.kerfleaf.cutting.StockBound;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Saw;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;

/** Lays the parts out on what is bought, stock by stock. */
final class Stocking {
    private final Sketch sketch;
    private final List<PlannedPart> parts;
    private final Batch batch;
    private final Problems problems;
    private final MeasureStyle style;
    private final List<SheetLayout> sheets = new ArrayList<>();
    private final List<BoardLayout> boards = new ArrayList<>();
    private final List<StockBound> bounds = new ArrayList<>();

    Stocking(Sketch sketch, List<PlannedPart> parts, Batch batch, MeasureStyle style, Problems problems) {
        this.sketch = sketch;
        this.parts = parts;
        this.batch = batch;
        this.style = style;
        this.problems = problems;
        Optional<Length> kerf =
                sketch.all(Saw.class).stream().flatMap(s -> s.kerf().stream()).findFirst();
        if (kerf.isEmpty()) {
            if (!parts.isEmpty()) {
                problems.add(
                        Origin.NOWHERE,
                        "How wide the saw cuts is not known, so nothing is laid out. Say circularSaw().kerf(\"1/8 in\").");
            }
            return;
        }
        sketch.all(Sheet.class).forEach(sheet -> problems.trying(sheet.origin(), () -> cut(sheet, kerf.orElseThrow())));
        sketch.all(Lumber.class)
                .forEach(lumber -> problems.trying(lumber.origin(), () -> cut(lumber, kerf.orElseThrow())));
    }

    List<SheetLayout> sheets() {
        return sheets;
    }

    List<BoardLayout> boards() {
        return boards;
    }

    List<StockBound> bounds() {
        return bounds;
    }

    private List<PlannedPart> from(String stock) {
        return parts.stream().filter(p -> p.stock().equals(stock)).toList();
    }

    private Sheet cut(Sheet sheet, Length kerf) {
        List<PlannedPart> wanted = from(sheet.name());
        if (wanted.isEmpty()) {
            return sheet;
        }
        boolean glazing = wanted.stream().allMatch(p -> p.kind() == PartKind.PANE);
        Length trim = glazing
                ? Length.ZERO
                : sketch.all(Saw.class).stream().map(Saw::trims).findFirst().orElse(Length.ZERO);
        List<SheetPiece> pieces = wanted.stream().map(p -> piece(p, kerf)).toList();
        SheetSize size = new SheetSize(sheet.name(), sheet.length(), sheet.width(), trim, kerf, Integer.MAX_VALUE);
        SheetCutting.Result result = tooLargeIsSaid(sheet.origin(), pieces, some -> SheetCutting.cut(some, size));
        sheets.addAll(result.layouts());
        bounds.add(result.bound());
        return sheet;
    }

    private SheetPiece piece(PlannedPart part, Length kerf) {
        Optional<Trait.SlopingTop> nested = nested(part);
        if (nested.isEmpty()) {
            return new SheetPiece(
                    part.name(), part.length().value(), part.width().value(), many(part), !part.grainMatters());
        }
        return new SheetPiece(
                part.name(), blank(part, nested.get(), kerf), part.width().value(), many(part) / 2, false);
    }

    /** In all kits. */
    private int many(PlannedPart part) {
        return part.count() * batch.kits();
    }

    private Optional<Trait.SlopingTop> nested(PlannedPart part) {
        return sketch.part(part.name())
                .filter(p -> p.trait(Trait.OneBlank.class).isPresent())
                .flatMap(p -> p.trait(Trait.SlopingTop.class));
    }

    private BoardPiece boardPiece(PlannedPart part, Length kerf) {
        return nested(part)
                .map(top -> new BoardPiece(part.name(), blank(part, top, kerf), many(part) / 2))
                .orElseGet(() -> new BoardPiece(part.name(), part.length().value(), many(part)));
    }

    /** The blank of a nested pair: both ends of the slope, and one kerf along the slope: front + back + kerf / cos slope. */
    private static Length blank(PlannedPart part, Trait.SlopingTop top, Length kerf) {
        Angle slope = top.back().minus(top.front()).absolute().over(part.width().value());
        return top.front().plus(top.back(), slope.lengthOver(kerf));
    }

    private Lumber cut(Lumber lumber, Length kerf) {
        List<BoardPiece> pieces =
                from(lumber.name()).stream().map(p -> boardPiece(p, kerf)).toList();
        if (pieces.isEmpty()) {
            return lumber;
        }
        if (lumber.lengths().isEmpty()) {
            throw new Unplannable(
                    lumber.origin(), "In which lengths is “%s” sold? Say .lengths(\"8 ft\").".formatted(lumber.name()));
        }
        List<BoardSize> sizes = lumber.lengths().stream()
                .map(sold -> new BoardSize(lumber.name(), sold.length(), lumber.trim(), kerf, sold.price()))
                .toList();
        BoardCutting.Result result = tooLargeIsSaid(lumber.origin(), pieces, some -> BoardCutting.cut(some, sizes));
        boards.addAll(result.layouts());
        bounds.add(result.bound());
        return lumber;
    }

    /** Nothing of a stock is laid out as long as one part is too large for it; every such part is said. */
    private <P, T> T tooLargeIsSaid(Origin stock, List<P> pieces, Function<List<P>, T> cutting) {
        try {
            return cutting.apply(pieces);
        } catch (PieceTooLargeException first) {
            for (P piece : pieces) {
                try {
                    cutting.apply(List.of(piece));
                } catch (PieceTooLargeException tooLarge) {
                    problems.add(origin(tooLarge, stock), tooLarge.in(style));
                }
            }
            throw new Unplannable(origin(first, stock), first.in(style));
        }
    }

    private Origin origin(PieceTooLargeException tooLarge, Origin stock) {
        return sketch.part(tooLarge.part()).map(Part::origin).orElse(stock);
    }

    /** A length as boards are sold: {@code 8 ft} where it is whole feet, {@code 2400 mm}. */
    static String sold(Length length, MeasureStyle style) {
        long foot = Length.ofInches(12).nanometres();
        boolean feet = style.unit() == LengthUnit.INCHES && length.nanometres() % foot == 0;
        return feet ? length.nanometres() / foot + " ft" : length.in(style);
    }

    /** How many boards of each length are bought, by stock and length. */
    Map<BoardSize, Long> boardsBought() {
        Map<BoardSize, Long> bought = new LinkedHashMap<>();
        boards.forEach(layout -> bought.merge(layout.board(), 1L, Long::sum));
        return bought;
    }
}
