package org.kerfleaf.plan;

import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Trait;

/**
 * The one slope that the sloping top of a standing part makes.
 *
 * @param along the level axis it runs along
 * @param towardsHigh whether it climbs to the back (or right), or else to the front (or left)
 * @param angle from level, 0 or more
 * @param low how high the part is at its lower end
 */
record Slope(Axis along, boolean towardsHigh, Angle angle, Length low) {
    /** The slope of a part whose two heights were said. */
    static Optional<Slope> of(SizedPart part) {
        return part.said()
                .trait(Trait.SlopingTop.class)
                .map(top -> new Slope(
                        part.standing().across(),
                        !top.back().isShorterThan(top.front()),
                        top.back()
                                .minus(top.front())
                                .absolute()
                                .over(part.across().value()),
                        top.front().min(top.back())));
    }

    /** The level axis square to it. */
    Axis level() {
        return along == Axis.X ? Axis.Y : Axis.X;
    }

    /** The side to which water runs. */
    Side lowSide() {
        return along == Axis.X ? (towardsHigh ? Side.LEFT : Side.RIGHT) : towardsHigh ? Side.FRONT : Side.BACK;
    }

    Side highSide() {
        return along == Axis.X ? (towardsHigh ? Side.RIGHT : Side.LEFT) : towardsHigh ? Side.BACK : Side.FRONT;
    }

    /** Up the slope, one long. */
    Vector up() {
        double sign = towardsHigh ? 1 : -1;
        return along.unit().times(sign * angle.cos()).plus(Vector.Z.times(angle.sin()));
    }

    /** Square to the slope, out of what lies under it, one long. */
    Vector normal() {
        double sign = towardsHigh ? -1 : 1;
        return along.unit().times(sign * angle.sin()).plus(Vector.Z.times(angle.cos()));
    }

    /**
     * The middle of a lower end that lies on this slope and goes past what carries it.
     *
     * @param sloped the piece that has the slope
     * @param supports all that carries it
     * @param past along the slope, in millimetres
     */
    Vector lowEnd(Box sloped, Box supports, double past) {
        double end = (towardsHigh ? supports.low(along) : supports.high(along)).inMillimetres();
        double place = end + (towardsHigh ? -1 : 1) * past * angle.cos();
        double middle = supports.middle(level()).inMillimetres();
        double high = heightAt(sloped, place);
        return along == Axis.X ? new Vector(place, middle, high) : new Vector(middle, place, high);
    }

    /** How high the slope of a piece that stands there is at a place on the level axis, in millimetres. */
    private double heightAt(Box piece, double place) {
        double lowEnd = (towardsHigh ? piece.low(along) : piece.high(along)).inMillimetres();
        double away = towardsHigh ? place - lowEnd : lowEnd - place;
        return piece.low(Axis.Z).plus(low).inMillimetres() + away * angle.tan();
    }
}
