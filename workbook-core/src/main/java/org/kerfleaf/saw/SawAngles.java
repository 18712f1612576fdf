package org.kerfleaf.saw;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/** Angles and depths that saws are set to. Tilt and scale are from square: 0 is a square cut. */
public final class SawAngles {
    /** How far the blade goes past the far face of the sheet: common practice, 1/8 to 1/4 in. */
    public static final Length PAST_THE_SHEET = Length.ofSixtyFourths(16);

    private static final Angle HALF_TURN = Angle.RIGHT.times(2);

    private SawAngles() {}

    /** How far the blade stands out of the base, along its tilt: thickness / cos tilt + 1/4 in. */
    public static Figure<Length> bladeDepth(Length thickness, Angle tilt) {
        return Figure.of(
                tilt.lengthOver(thickness).plus(PAST_THE_SHEET),
                "thickness / cos tilt + 1/4 in, along the tilt",
                "geometry; 1/4 in past the sheet is common practice",
                given("thickness", thickness),
                given("tilt", tilt));
    }

    /** What the short face lacks against the long one across a bevelled edge: thickness · tan tilt. */
    public static Figure<Length> bevelShorter(Length thickness, Angle tilt) {
        return Figure.of(
                tilt.rise(thickness),
                "thickness · tan tilt",
                Reason.GEOMETRY,
                given("thickness", thickness),
                given("tilt", tilt));
    }

    /** What the short point lacks against the long point of a mitred end: width · tan scale. */
    public static Figure<Length> mitreShorter(Length width, Angle scale) {
        return Figure.of(
                scale.rise(width), "width · tan scale", Reason.GEOMETRY, given("width", width), given("scale", scale));
    }

    /**
     * The number to set on a mitre scale for two equal ends that meet in a corner: 90° - C/2.
     *
     * @param corner the included angle, as an angle finder reads it, from 0 to 180 degrees
     */
    public static Figure<Angle> mitreScale(Angle corner) {
        Angle scale = Angle.RIGHT.minus(corner.half());
        return Figure.of(
                scale,
                "90° - C/2. The scale reads from square, so it is not the corner's own number"
                        + (scale.equals(corner.half()) ? "" : " and not half of it"),
                "geometry; that scales read from square is common practice",
                given("corner C", corner));
    }

    /** The bevel at a peak between two slopes: half their sum. */
    public static Figure<Angle> peakBevel(Angle oneSlope, Angle otherSlope) {
        return Figure.of(
                oneSlope.plus(otherSlope).half(),
                "(one slope + other slope) / 2",
                Reason.GEOMETRY,
                given("one slope", oneSlope),
                given("other slope", otherSlope));
    }

    /** The included angle at a peak between two slopes: 180° less both. */
    public static Figure<Angle> peakAngle(Angle oneSlope, Angle otherSlope) {
        return Figure.of(
                HALF_TURN.minus(oneSlope).minus(otherSlope),
                "180° - one slope - other slope",
                Reason.GEOMETRY,
                given("one slope", oneSlope),
                given("other slope", otherSlope));
    }

    /** The angle of the complement, for a cut past a saw's stop with the stock turned against a squared block: 90° - scale. */
    public static Figure<Angle> complement(Angle scale) {
        return Figure.of(
                Angle.RIGHT.minus(scale),
                "90° - scale, with the stock turned against a squared block",
                Reason.GEOMETRY,
                given("scale", scale));
    }
}
