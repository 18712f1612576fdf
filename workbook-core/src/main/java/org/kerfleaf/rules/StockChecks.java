package org.kerfleaf.rules;

import java.math.RoundingMode;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.stock.Limits;
import org.kerfleaf.stock.SheetThickness;
import org.kerfleaf.stock.SheetTolerance;
import org.kerfleaf.stock.Surface;

/** Whether sheets and boards are what they are taken for. */
public final class StockChecks {
    private static final String MEASURE = "Measure it with a caliper at 4 to 6 places and say the mean.";

    private StockChecks() {}

    /**
     * Check 3: a wood sheet was measured, and the measure lies within the limits of its label: PS 1 for a workbook in inches,
     * EN 315 for one in millimetres.
     */
    public static Check thicknessMeasured(
            String of, Optional<Length> soldAs, Optional<Length> measured, Surface surface, MeasureStyle style) {
        Optional<Figure<Limits>> limits = soldAs.flatMap(label -> SheetThickness.of(label, surface, style.unit()));
        String source = limits.map(figure -> figure.reason().source()).orElse("PS 1-19; EN 315:2000");
        Held held = new Held("Thickness measured", of, source, style);
        if (measured.isEmpty()) {
            String sold = soldAs.map(label -> "Sold as " + label.in(style) + " and never measured.")
                    .orElse("Never measured.");
            return held.notKnown(sold, MEASURE);
        }
        String caliper = "A caliper says " + Say.fine(measured.get(), style);
        if (limits.isEmpty()) {
            return held.notKnown(
                    caliper + "; no standard has limits for its label.",
                    "Say what the sheet is sold as, if it is plywood.");
        }
        return held.between(
                caliper + ", sold as " + Say.fine(soldAs.orElseThrow(), style) + ".",
                measured.get(),
                limits.get().value().least(),
                limits.get().value().most(),
                "It is another sheet than its label says, or the caliper was off. " + MEASURE);
    }

    /**
     * Check 5: a part that takes the whole width of a sheet still fits when the sheet is as short as its standard allows.
     *
     * @param trims what is trimmed off both edges together
     */
    public static Check fullWidthPart(String of, Length part, Length sheetSide, Length trims, MeasureStyle style) {
        SheetTolerance standard = SheetTolerance.of(style.unit());
        Held held = new Held("Full-width part", of, standard.source(), style);
        Length sure = sheetSide.minus(standard.lacksAtMost(), trims);
        return held.atMost(
                "%s of a sheet of %s, which may be %s short, less %s of trim."
                        .formatted(
                                part.in(style),
                                sheetSide.in(style),
                                Say.fine(standard.lacksAtMost(), style),
                                Say.fine(trims, style)),
                part,
                sure,
                "Measure this sheet, or make the part %s."
                        .formatted(
                                sure.roundedTo(style.step(), RoundingMode.FLOOR).in(style)));
    }

    /** What is bought gets home in the vehicle, whole, on its roof, or after a cut or two in the shop. */
    public static Check getsHome(String of, String vehicle, String how, boolean goes, MeasureStyle style) {
        Held held = new Held("Gets home", of, Reason.GEOMETRY, style);
        String sentence = "In the %s: %s".formatted(vehicle, how);
        return goes
                ? held.holds(sentence)
                : held.falls(sentence, "Have it delivered, or cut it more often in the shop.");
    }

    /** The same, where a size of the vehicle was not said. */
    public static Check getsHomeNotKnown(String of, String vehicle, String missing, MeasureStyle style) {
        return new Held("Gets home", of, Reason.GEOMETRY, style)
                .notKnown("Whether it fits the %s is not known.".formatted(vehicle), missing);
    }

    /** Check 6 where no kerf was said. */
    public static Check equalPiecesNotKnown(String of, MeasureStyle style) {
        return new Held("Equal pieces", of, Reason.GEOMETRY, style)
                .notKnown(
                        "How many come out of a board is not known, since every cut takes a kerf.",
                        "Cut into scrap, measure the width of the cut, and say it: circularSaw().kerf(...).");
    }

    /** Check 6: so many equal pieces come out of a length, with a kerf between them: floor((L + k)/(l + k)). */
    public static Check equalPieces(
            String of, int wanted, Length piece, Length stock, Length kerf, MeasureStyle style) {
        Held held = new Held("Equal pieces", of, Reason.GEOMETRY, style);
        Length need = piece.times(wanted).plus(kerf.times(wanted - 1L));
        long come = stock.plus(kerf).nanometres() / piece.plus(kerf).nanometres();
        Length lacks = need.minus(stock);
        Length fits =
                stock.minus(kerf.times(wanted - 1L)).dividedBy(wanted).roundedTo(style.step(), RoundingMode.FLOOR);
        boolean fitWithoutKerf = !piece.times(wanted).isLongerThan(stock);
        String kerfEats = lacks.isPositive() && fitWithoutKerf ? " The kerf eats the last one." : "";
        return held.atMost(
                "%d pieces of %s with %s of %s take %s; %d come out of %s.%s"
                        .formatted(
                                wanted,
                                piece.in(style),
                                wanted == 2 ? "1 kerf" : wanted - 1 + " kerfs",
                                Say.fine(kerf, style),
                                Say.fine(need, style),
                                come,
                                stock.in(style),
                                kerfEats),
                need,
                stock,
                "At %s each, %d come out.".formatted(fits.in(style), wanted));
    }
}
