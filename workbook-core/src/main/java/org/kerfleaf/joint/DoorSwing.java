package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/** The room a hung door needs to turn. Geometry. */
public final class DoorSwing {
    private DoorSwing() {}

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
