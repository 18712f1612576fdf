package org.kerfleaf.plan;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Percent;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.MovementChecks;
import org.kerfleaf.stock.WoodMovement;

/**
 * How a board's width follows the damp where it will live.
 *
 * @param part the board
 * @param wide across its grain, as it is cut
 * @param wood how that wood moves
 * @param now the moisture in it when it is worked
 * @param driest the least it will have
 * @param dampest the most it will have
 * @param atDriest what it is then wider than now, below zero narrower
 * @param atDampest the same when it is dampest
 * @param gap to the next board beside it, if one lies there
 */
public record Moving(
        String part,
        Figure<Length> wide,
        WoodMovement wood,
        Figure<Percent> now,
        Figure<Percent> driest,
        Figure<Percent> dampest,
        Figure<Length> atDriest,
        Figure<Length> atDampest,
        Optional<Gap> gap) {

    /** What the figures are worth, beside them. */
    public static final String NOTE =
            "Figures for planning: boards of one wood differ by a third and more. Each board is fixed in its middle, so a gap takes"
                    + " half the movement of either neighbour. Along its grain wood hardly moves.";

    /** The gap beside it now, driest and dampest, in words; empty without a neighbour. */
    public Optional<String> gapWords(MeasureStyle style) {
        return gap.map(known -> "%s now, %s when driest, %s when dampest"
                .formatted(
                        gap(known.now().value(), style),
                        gap(known.whenDriest().value(), style),
                        gap(known.whenDampest().value(), style)));
    }

    /**
     * The gap between two such boards, each fixed in its middle.
     *
     * @param now as they are laid
     * @param whenDriest with both at their driest
     * @param whenDampest with both at their dampest; below zero they press on each other
     */
    public record Gap(Figure<Length> now, Figure<Length> whenDriest, Figure<Length> whenDampest) {}

    /** {@code 0.0901 in narrower}, {@code stays}. */
    public static String change(Length change, MeasureStyle style) {
        if (change.isZero()) {
            return "stays";
        }
        return MovementChecks.fine(change.absolute(), style) + (change.isNegative() ? " narrower" : " wider");
    }

    /** A gap: to 1/64 in or 0.5 mm, and where that hides something to ten-thousandths of an inch or 0.01 mm too. */
    public static String gap(Length gap, MeasureStyle style) {
        String tape = gap.in(style.toTheFinest());
        String fine = MovementChecks.fine(gap, style);
        boolean exact = style.unit() == LengthUnit.INCHES
                ? gap.nanometres() % Length.ofSixtyFourths(1).nanometres() == 0
                : fine.equals(tape);
        return exact ? tape : fine;
    }
}
