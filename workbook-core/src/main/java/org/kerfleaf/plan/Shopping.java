package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Buying.SheetAsSold;
import org.kerfleaf.plan.Buying.Yard;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.stock.BoardMeasure;
import org.kerfleaf.stock.Limits;
import org.kerfleaf.stock.SheetThickness;
import org.kerfleaf.stock.SheetTolerance;

/** What to know in the shop of what is bought there. */
final class Shopping {
    private final Sketch sketch;
    private final Stocking stocking;
    private final List<PlannedPart> parts;
    private final MeasureStyle style;

    Shopping(Sketch sketch, Stocking stocking, List<PlannedPart> parts, MeasureStyle style) {
        this.sketch = sketch;
        this.stocking = stocking;
        this.parts = parts;
        this.style = style;
    }

    Buying buying() {
        return new Buying(sheets(), yards(), Bringing.home(sketch, stocking, parts, style), List.of());
    }

    private List<SheetAsSold> sheets() {
        return sketch.all(Sheet.class).stream()
                .filter(sheet -> parts.stream()
                        .anyMatch(part ->
                                part.kind() == PartKind.PANEL && part.stock().equals(sheet.name())))
                .map(this::asSold)
                .toList();
    }

    private SheetAsSold asSold(Sheet sheet) {
        SheetTolerance standard = SheetTolerance.of(style.unit());
        Optional<Figure<Limits>> limits =
                sheet.soldAs().flatMap(label -> SheetThickness.of(label, sheet.surface(), style.unit()));
        return new SheetAsSold(
                sheet.name(),
                limits.map(found -> new Figure<>(found.value().least(), found.reason())),
                limits.map(found -> new Figure<>(found.value().most(), found.reason())),
                standard.shortest(sheet.length()),
                standard.shortest(sheet.width()),
                standard.outOfSquare(sheet.length()));
    }

    private List<Yard> yards() {
        List<Yard> yards = new ArrayList<>();
        stocking.boardsBought()
                .forEach((board, count) -> BoardMeasure.of(board.stock(), board.length(), count.intValue())
                        .ifPresent(measure ->
                                yards.add(new Yard(board.stock(), board.length(), count.intValue(), measure))));
        return yards;
    }
}
