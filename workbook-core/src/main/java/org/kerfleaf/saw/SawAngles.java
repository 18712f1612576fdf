package org.kerfleaf.saw;

import static org.kerfleaf.reason.Given.given;

import java.util.Optional;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/** Angles and depths that saws are set to. Tilt and scale are from square: 0 is a square cut. */
public final class SawAngles {
    /** How far the blade goes past the far face of the sheet: common practice, 1/8 to 1/4 in. */
    public static final Length PAST_THE_SHEET = Length.ofSixtyFourths(16);

    private static final String CORNER = "corner C";

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
        return Figure.of(
                Angle.RIGHT.minus(corner.half()),
                "90° - C/2, since the scale reads from square: " + not(corner),
                "geometry; that scales read from square is common practice",
                given(CORNER, corner));
    }

    /** {@code not 110°, not 55°}; of a right angle, whose half is the scale's number, {@code not 90°}. */
    private static String not(Angle corner) {
        String own = "not " + corner.in(MeasureStyle.INCHES);
        return corner.equals(Angle.RIGHT) ? own : own + ", not " + corner.half().in(MeasureStyle.INCHES);
    }

    /** What is said beside a scale's number; if it is of a corner, which numbers are the wrong ones. */
    static String readsFromSquare(Optional<Figure<Angle>> scale) {
        return "The scale reads from square"
                + scale.stream()
                        .flatMap(figure -> figure.reason().given().stream())
                        .filter(given -> given.name().equals(CORNER))
                        .map(given -> ": for a corner of %s that is %s, %s"
                                .formatted(
                                        given.value().in(MeasureStyle.INCHES),
                                        scale.orElseThrow().value().in(MeasureStyle.INCHES),
                                        not((Angle) given.value())))
                        .collect(Collectors.joining())
                + ".";
    }

    /** The scale for a brace's end at an upright post: as far from square as the brace rises from level. */
    public static Figure<Angle> braceAtPost(Angle rises) {
        return Figure.of(
                rises,
                "at the post, as far from square as the brace rises from level",
                Reason.GEOMETRY,
                given("rises", rises));
    }

    /** The scale for a brace's end under something level: 90° − how far it rises from level. */
    public static Figure<Angle> braceUnder(Angle rises) {
        return Figure.of(
                Angle.RIGHT.minus(rises),
                "under what it carries, 90° − how far the brace rises from level",
                Reason.GEOMETRY,
                given("rises", rises));
    }

    /** The tilt where fascia and rake meet at a right angle seen from above: 45°, whether the fascia is plumb or square to the roof. */
    public static Figure<Angle> eaveTilt() {
        return Figure.of(
                Angle.RIGHT.half(),
                "half of the right angle that fascia and rake make seen from above",
                Reason.GEOMETRY);
    }

    /** The scale of a rake's end where the fascia stands plumb: the roof's slope. */
    public static Figure<Angle> plumbEave(Angle slope) {
        return Figure.of(
                slope, "a plumb cut on a board that climbs with the roof", Reason.GEOMETRY, given("slope", slope));
    }

    /** How deep a plumb fascia is to match a rake so wide, measured plumb: width / cos slope. */
    public static Figure<Length> fasciaDepth(Length rake, Angle slope) {
        return Figure.of(
                slope.lengthOver(rake),
                "rake's width / cos slope",
                Reason.GEOMETRY,
                given("width", rake),
                given("slope", slope));
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
