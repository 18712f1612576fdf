package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/** How far a hung door can turn. Geometry. */
public final class DoorSwing {
    private DoorSwing() {}

    /**
     * Where an overlay door's own edge meets the front it hangs on: 90° + asin(stand-off / thickness). A stay must stop it
     * before that. A stand-off of the door's thickness or more lets it fold flat.
     */
    public static Figure<Angle> meetsFront(Length standOff, Length thickness) {
        double share = Math.min(1, standOff.dividedBy(thickness));
        Angle past = Angle.ofDegrees(StrictMath.toDegrees(StrictMath.asin(share)));
        return Figure.of(
                Angle.RIGHT.plus(past),
                "90° + asin(stand-off / thickness)",
                Reason.GEOMETRY,
                given("stand-off", standOff),
                given("thickness", thickness));
    }

    /** The room an inset door's back edge needs to swing past its jamb: thickness² / (2 · width). */
    public static Figure<Length> backEdgeRoom(Length thickness, Length width) {
        return Figure.of(
                thickness.times(thickness.dividedBy(width)).half(),
                "thickness² / (2 · width)",
                Reason.GEOMETRY,
                given("thickness", thickness),
                given("width", width));
    }
}
