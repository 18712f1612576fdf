package org.kerfleaf.saw;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.measure.Angle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Given;

/**
 * The two settings of a compound mitre, for stock that lies flat on the saw's table.
 *
 * <p>Source: geometry; the formula reproduces a saw maker's printed chart (seen in a copy). With S the side's angle from level
 * and T half the turn at the corner: mitre = atan(cos S · tan T), tilt = asin(sin S · sin T).
 *
 * @param mitre the scale's number, from square
 * @param tilt the blade's tilt, from square
 */
public record CompoundMitre(Figure<Angle> mitre, Figure<Angle> tilt) {
    private static final String SOURCE = "geometry; agrees with a saw maker's printed chart (seen in a copy)";

    /**
     * For a hopper, planter or pyramid of equal sides.
     *
     * @param side a side's angle from level: 90 degrees for an upright box, 0 for a flat frame
     * @param sides how many, 3 or more
     * @throws IllegalArgumentException if there are fewer than 3 sides
     */
    public static CompoundMitre ofSides(Angle side, int sides) {
        if (sides < 3) {
            throw new IllegalArgumentException("A frame of %d sides: 3 or more would be right.".formatted(sides));
        }
        Angle half = Angle.ofDegrees(180.0 / sides);
        return of(side, half, given("sides", sides));
    }

    /** For one corner of an included angle seen from above. */
    public static CompoundMitre ofCorner(Angle side, Angle corner) {
        return of(side, Angle.RIGHT.minus(corner.half()), given("corner", corner));
    }

    private static CompoundMitre of(Angle side, Angle halfTurn, Given shape) {
        double mitre = StrictMath.atan(side.cos() * halfTurn.tan());
        double tilt = StrictMath.asin(side.sin() * halfTurn.sin());
        return new CompoundMitre(
                Figure.of(
                        Angle.ofDegrees(StrictMath.toDegrees(mitre)),
                        "mitre = atan(cos S · tan T), S the side from level, T half the turn at the corner",
                        SOURCE,
                        given("S", side),
                        given("T", halfTurn),
                        shape),
                Figure.of(
                        Angle.ofDegrees(StrictMath.toDegrees(tilt)),
                        "tilt = asin(sin S · sin T), S the side from level, T half the turn at the corner",
                        SOURCE,
                        given("S", side),
                        given("T", halfTurn),
                        shape));
    }
}
