package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;

/** The seed-swap cabinet's 21 pieces, shaped and placed by hand: the floor's lower front left corner is the origin. */
public final class CabinetSolids {
    static final double INCH = 25.4;
    static final Length T = Length.parse("23/32 in");
    static final Angle SLOPE = Angle.ofDegrees(30);
    private static final Length W = in(22);
    private static final Length D = in(11);
    private static final Length E = in(24);
    private static final Length OVER = in(2);
    private static final Length WALL = W.plus(T, T);
    private static final Length ROOF_LONG =
            SLOPE.lengthOver(WALL.half()).plus(OVER).plus(SLOPE.rise(T));
    private static final Length ROOF_DEEP = D.plus(T, T, OVER, OVER);

    static final Solid FLOOR = Solid.of(
            Outline.rectangle(W, D)
                    .opening("left weep", Outline.circle(in(0.375)).moved(in(2), in(1)))
                    .opening("right weep", Outline.circle(in(0.375)).moved(in(20), in(1))),
            T);
    static final Solid SIDE =
            Solid.of(Outline.rectangle(D, E.plus(SLOPE.rise(T))), T).bevelled("TOP", SLOPE, SheetSide.INSIDE);
    static final Solid BACK = Solid.of(
            Outline.gable(WALL, E, SLOPE)
                    .opening("left vent", Outline.circle(in(1)).moved(in(5), in(21)))
                    .opening("right vent", Outline.circle(in(1)).moved(WALL.minus(in(5)), in(21))),
            T);
    static final Solid FRONT = Solid.of(
            Outline.gable(WALL, E, SLOPE)
                    .opening(
                            "doorway",
                            Outline.rectangle(in(16), in(18))
                                    .rounded(in(0.25))
                                    .moved(WALL.minus(in(16)).half(), in(3))),
            T);
    static final Solid SHELF = Solid.of(Outline.rectangle(W, in(8)), T);
    static final Solid ROOF = Solid.of(
                    Outline.polygon(List.of(
                            new Corner("FRONT_RAKE", Length.ZERO, Length.ZERO),
                            new Corner("EAVE", ROOF_LONG, Length.ZERO),
                            new Corner("BACK_RAKE", ROOF_LONG, ROOF_DEEP),
                            new Corner("RIDGE", Length.ZERO, ROOF_DEEP))),
                    T)
            .bevelled("RIDGE", SLOPE, SheetSide.INSIDE);
    static final Solid RAKE = Solid.of(Outline.rectangle(ROOF_LONG, in(1.5)).mitred("LEFT", "TOP", SLOPE), in(0.75));
    static final Solid EAVE = Solid.of(Outline.rectangle(ROOF_DEEP.plus(in(1.5)), in(1.5)), in(0.75));
    static final Solid DOOR = Solid.of(
                    Outline.rectangle(in(18), in(20))
                            .opening("window", Outline.rectangle(in(13), in(15)).moved(in(2.5), in(2.5))),
                    T)
            .rabbetAround("rabbet", "window", in(0.5), Length.parse("3/16 in"), SheetSide.INSIDE);
    static final Solid PANE =
            Solid.of(Outline.rectangle(Length.parse("13 15/16 in"), Length.parse("15 15/16 in")), in(0.125));

    private CabinetSolids() {}

    static Length in(double inches) {
        return Length.ofInches(inches);
    }

    static Vector at(double x, double y, double z) {
        return new Vector(x * INCH, y * INCH, z * INCH);
    }

    public static List<PlacedSolid> all() {
        List<PlacedSolid> all = new ArrayList<>();
        double t = T.inInches();
        all.add(new PlacedSolid("Floor", 1, FLOOR, Pose.HOME));
        all.add(side(1, 0));
        all.add(new PlacedSolid("Side", 2, SIDE, Pose.of(at(22 + t, 11, 0), Vector.Y.negated(), Vector.Z)));
        all.add(new PlacedSolid("Back", 1, BACK, Pose.of(at(-t, 11 + t, 0), Vector.X, Vector.Z)));
        all.add(new PlacedSolid("Front", 1, FRONT, Pose.of(at(22 + t, -t, 0), Vector.X.negated(), Vector.Z)));
        all.add(new PlacedSolid("Shelf", 1, SHELF, Pose.HOME.moved(at(0, 3, 8 + t))));
        all.add(new PlacedSolid("Shelf", 2, SHELF, Pose.HOME.moved(at(0, 3, 15 + t))));
        addRoof(all);
        all.add(new PlacedSolid("Door", 1, DOOR, Pose.of(at(20, -2 * t - 0.125, 2), Vector.X.negated(), Vector.Z)));
        all.add(new PlacedSolid(
                "Pane",
                1,
                PANE,
                Pose.of(at(11 + 13.9375 / 2, -t - 0.125 - 3.0 / 16, 12 - 15.9375 / 2), Vector.X.negated(), Vector.Z)));
        addStand(all);
        return all;
    }

    /** The left side, moved off to the left by so many millimetres. */
    static PlacedSolid side(int piece, double off) {
        Vector origin = new Vector(-T.inMillimetres() - off, 0, 0);
        return new PlacedSolid("Side", piece, SIDE, Pose.of(origin, Vector.Y, Vector.Z));
    }

    private static void addRoof(List<PlacedSolid> all) {
        double t = T.inMillimetres();
        double s = SLOPE.sin();
        double c = SLOPE.cos();
        double up = E.inMillimetres() + (11 * INCH + t) * SLOPE.tan();
        // Where the two upper faces meet, above the gables' peaks.
        Vector ridge = new Vector(11 * INCH, -t - 2 * INCH, up + t / c);
        Vector down = new Vector(c, 0, -s);
        Vector normal = new Vector(s, 0, c);
        Pose right = Pose.of(ridge.minus(normal.times(t)), down, Vector.Y);
        addTwice(all, "Roof", 1, ROOF, right);
        Vector low = ridge.minus(normal.times(1.5 * INCH));
        addTwice(all, "Rake trim", 1, RAKE, Pose.of(low, down, normal));
        double length = ROOF_LONG.inMillimetres();
        Vector left = new Vector(c, 0, s);
        Vector leftNormal = new Vector(-s, 0, c);
        Vector foot = ridge.minus(left.times(length)).minus(leftNormal.times(1.5 * INCH));
        addTwice(all, "Rake trim", 3, RAKE.mirrored(), Pose.of(foot, left, leftNormal));
        Vector end = low.plus(down.times(length)).minus(new Vector(0, 0.75 * INCH, 0));
        addTwice(all, "Eave trim", 1, EAVE, Pose.of(end, Vector.Y, normal));
    }

    /** There, and turned half round about the middle of the floor. */
    private static void addTwice(List<PlacedSolid> all, String part, int first, Solid solid, Pose pose) {
        all.add(new PlacedSolid(part, first, solid, pose));
        Pose turned = pose.turnedAbout(at(11, 5.5, 0), Vector.Z, Angle.ofDegrees(180));
        all.add(new PlacedSolid(part, first + 1, solid, turned));
    }

    private static void addStand(List<PlacedSolid> all) {
        Solid post = Solid.of(Outline.rectangle(in(3.5), in(72)), in(3.5));
        Solid arm = Solid.of(Outline.rectangle(in(18), in(7.25)), in(1.5));
        Solid seat = Solid.of(Outline.rectangle(in(20), in(7.25)), in(1.5));
        all.add(new PlacedSolid("Post", 1, post, Pose.of(at(9.25, 7.25, -73.5), Vector.X, Vector.Z)));
        all.add(new PlacedSolid("Arm", 1, arm, Pose.of(at(2, 3.75, -8.75), Vector.X, Vector.Z)));
        all.add(new PlacedSolid("Arm", 2, arm, Pose.of(at(2, 8.75, -8.75), Vector.X, Vector.Z)));
        all.add(new PlacedSolid("Seat", 1, seat, Pose.HOME.moved(at(1, 1.875, -1.5))));
    }
}
