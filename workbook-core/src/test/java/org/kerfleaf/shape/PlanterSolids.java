package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;

/** A six-sided planter: top outer side 250 mm, 300 high, leaning out 15 degrees, of 18 mm ply; its middle stands on the origin. */
final class PlanterSolids {
    static final double T = 18;
    static final double HIGH = 300;
    static final Angle LEAN = Angle.ofDegrees(15);
    private static final double S = LEAN.sin();
    private static final double C = LEAN.cos();
    private static final double FLATS_TOP = 250 * StrictMath.sqrt(3);
    static final double FLATS_BOTTOM = FLATS_TOP - 2 * HIGH * LEAN.tan();
    static final double BLANK = HIGH / C + T * LEAN.tan();

    /** The front side's frame: w inward, v up the slope, the inner face's lower edge at v = 0. */
    private static final Pose FRONT = Pose.of(
            new Vector(0, -FLATS_BOTTOM / 2 + T * LEAN.tan() * S, -T * S), Vector.X.negated(), new Vector(0, -S, C));

    private PlanterSolids() {}

    /** The same by the saw's words: the long face's outline, each edge bevelled. */
    static Solid bevelledSide() {
        double narrowing = StrictMath.tan(StrictMath.PI / 6) * S * 2;
        Angle tilt = Angle.ofDegrees(StrictMath.toDegrees(StrictMath.asin(C / 2)));
        return Solid.of(Outline.tapered(mm(250 - BLANK * narrowing), mm(250), mm(BLANK)), mm(T))
                .bevelled("LEFT", tilt, SheetSide.OUTSIDE)
                .bevelled("RIGHT", tilt, SheetSide.OUTSIDE)
                .bevelled("TOP", LEAN, SheetSide.OUTSIDE)
                .bevelled("BOTTOM", LEAN, SheetSide.INSIDE);
    }

    /** The blank by its long faces, sawn at four planes of the build: level top and bottom, upright corners. */
    static Solid side() {
        double narrowing = StrictMath.tan(StrictMath.PI / 6) * S * 2;
        // A millimetre to spare at both ends, so that the mitres are those planes exactly.
        Outline blank =
                Outline.tapered(mm(252 - BLANK * narrowing), mm(252), mm(BLANK)).moved(mm(-126), Length.ZERO);
        double sin60 = StrictMath.sqrt(3) / 2;
        return Solid.of(blank, mm(T))
                .cut(plane("TOP", Vector.Z, HIGH))
                .cut(plane("BOTTOM", Vector.Z.negated(), 0))
                .cut(plane("LEFT", new Vector(sin60, 0.5, 0), 0))
                .cut(plane("RIGHT", new Vector(-sin60, 0.5, 0), 0));
    }

    /** A plane of the build as a cut in the front side's frame. */
    private static Cut plane(String name, Vector normal, double offset) {
        Vector n = new Vector(normal.dot(FRONT.u()), normal.dot(FRONT.v()), normal.dot(FRONT.w()));
        return new Cut(name, n, offset - normal.dot(FRONT.origin()));
    }

    static Solid floor() {
        double flats = FLATS_BOTTOM + 40 * LEAN.tan() - 2 * T / C;
        double radius = flats / StrictMath.sqrt(3);
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            double angle = StrictMath.PI / 3 * i;
            corners.add(
                    new Corner("EDGE_" + i, mm(radius * StrictMath.cos(angle)), mm(radius * StrictMath.sin(angle))));
        }
        return Solid.of(Outline.polygon(corners), mm(18));
    }

    static List<PlacedSolid> all() {
        List<PlacedSolid> all = new ArrayList<>();
        Solid side = side();
        for (int i = 0; i < 6; i++) {
            Pose pose = FRONT.turnedAbout(Vector.ZERO, Vector.Z, Angle.ofDegrees(60 * i));
            all.add(new PlacedSolid("Side", i + 1, side, pose));
        }
        all.add(new PlacedSolid("Floor", 1, floor(), Pose.HOME.moved(new Vector(0, 0, 20))));
        return all;
    }

    private static Length mm(double millimetres) {
        return Length.ofMillimetres(millimetres);
    }
}
