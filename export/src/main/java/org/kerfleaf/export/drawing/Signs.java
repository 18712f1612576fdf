package org.kerfleaf.export.drawing;

import java.awt.geom.Path2D;
import java.util.OptionalDouble;
import org.kerfleaf.measure.LengthUnit;

/** The small signs of the house, each drawn in one way wherever it stands. All measures are millimetres on paper. */
public final class Signs {
    /** The side of a tick box. */
    public static final double TICK_BOX = 4.2;

    /** The diameter of the circle round a part's letter. */
    public static final double LETTER = 6.0;

    /** Half the diagonal of a cut's number diamond. */
    public static final double DIAMOND = 3.2;

    private static final Style LETTERING = new Style(Face.LABEL_BOLD, 9.5, Ink.BLACK);
    private static final Style ON_BLACK = new Style(Face.LABEL_BOLD, 7.5, Ink.WHITE);

    private Signs() {}

    /** A box to tick, from its upper left corner. */
    public static void tickBox(Ink ink, double x, double y) {
        ink.stroke(Ink.box(x + 0.2, y + 0.2, TICK_BOX - 0.4, TICK_BOX - 0.4), Ink.BLACK, 0.4);
    }

    /** A part's letter in its circle, from the middle. Letters past Z have two signs; the circle stays. */
    public static void letter(Ink ink, String letter, double x, double y) {
        ink.fill(Ink.circle(x, y, LETTER / 2 - 0.15), Ink.WHITE);
        ink.stroke(Ink.circle(x, y, LETTER / 2 - 0.15), Ink.BLACK, 0.3);
        Style style = letter.length() > 1 ? LETTERING.at(8) : LETTERING;
        ink.centred(Rich.of(letter, style).line(), x, y + style.capital() / 2);
    }

    /** A cut's number, white in a black diamond, from the middle. */
    public static void diamond(Ink ink, int number, double x, double y) {
        diamond(ink, number, x, y, DIAMOND);
    }

    /** The same with half a diagonal of so much; three digits take more. */
    static void diamond(Ink ink, int number, double x, double y, double half) {
        double r = number > 99 ? half + 1.2 : half;
        ink.fill(Ink.polygon(x, y - r, x + r, y, x, y + r, x - r, y), Ink.BLACK);
        ink.centred(Rich.of(Integer.toString(number), ON_BLACK).line(), x, y + ON_BLACK.capital() / 2);
    }

    /** A small black arrow head whose point is at x, y and that points along dx, dy (one of them 0, the other 1 or -1). */
    static void arrow(Ink ink, double x, double y, double dx, double dy) {
        double bx = x - dx * 1.7;
        double by = y - dy * 1.7;
        ink.fill(Ink.polygon(x, y, bx + dy * 0.9, by + dx * 0.9, bx - dy * 0.9, by - dx * 0.9), Ink.BLACK);
    }

    /** A level's width. */
    public static final double LEVEL = 20;

    /**
     * A check as a level, from its upper left corner, 20 x 4.4 mm: the bubble is in the middle while half the margin or
     * more is left, drifts to the right line as it goes, and lies at the end when the check is short.
     *
     * @param margin left or lacking, as a share of what was wanted; empty draws no bubble
     */
    public static void level(Ink ink, OptionalDouble margin, boolean holds, double x, double y) {
        double high = 4.4;
        double middle = x + LEVEL / 2;
        double mark = 3.4;
        ink.stroke(
                new java.awt.geom.RoundRectangle2D.Double(x + 0.15, y + 0.15, LEVEL - 0.3, high - 0.3, high, high),
                Ink.BLACK,
                0.3);
        if (margin.isPresent()) {
            double at = holds ? middle + drift(margin.getAsDouble()) * (mark - 1.6) : x + LEVEL - 2.5;
            ink.fill(new java.awt.geom.Ellipse2D.Double(at - 1.7, y + 0.95, 3.4, 2.5), Ink.BLACK);
        }
        ink.line(middle - mark, y, middle - mark, y + high, Ink.MIDDLE);
        ink.line(middle + mark, y, middle + mark, y + high, Ink.MIDDLE);
    }

    /** 0 with half the margin or more left, 1 with none. */
    private static double drift(double margin) {
        return 1 - Math.min(Math.max(margin, 0), 0.5) / 0.5;
    }

    /** The symbol of third angle projection for inches, of first angle for millimetres (ISO 5456-2), 9 x 3.7 mm. */
    public static void projection(Ink ink, LengthUnit unit, double x, double y) {
        boolean third = unit == LengthUnit.INCHES;
        ink.within(x, y, 9 / 34.0, () -> {
            double circle = third ? 7 : 27;
            double cone = third ? 18 : 4;
            ink.stroke(Ink.circle(circle, 7, 5), Ink.BLACK, 0.9);
            ink.stroke(Ink.circle(circle, 7, 2.6), Ink.BLACK, 0.9);
            ink.stroke(
                    third
                            ? Ink.polygon(cone, 4.4, cone + 12, 2, cone + 12, 12, cone, 9.6)
                            : Ink.polygon(cone, 2, cone + 12, 4.4, cone + 12, 9.6, cone, 12),
                    Ink.BLACK,
                    0.9);
            Path2D axes = Ink.open(circle - 7, 7, circle + 7, 7);
            axes.append(Ink.open(circle, 0, circle, 14), false);
            axes.append(Ink.open(cone - 3, 7, cone + 15, 7), false);
            ink.dashed(axes, 0.5, 4, 1, 1, 1);
        });
    }

    /** The kerf: a heavy rule whose slot stands as far along as this page stands in the whole. */
    public static void kerfRule(Ink ink, double x, double y, double width, double along) {
        double slot = 1.6;
        double at = Math.min(Math.max(along * width, slot), width - slot);
        ink.fill(Ink.box(x, y, at - slot / 2, 1.4), Ink.BLACK);
        ink.fill(Ink.box(x + at + slot / 2, y, width - at - slot / 2, 1.4), Ink.BLACK);
    }

    /** A blade through its base, tilted by so many degrees from square; 12 x 4.4 mm from the upper left corner. */
    public static void blade(Ink ink, double degrees, double x, double y) {
        double base = y + 3.3;
        ink.line(x, base, x + 12, base, Ink.MIDDLE);
        double tilt = StrictMath.toRadians(degrees);
        double cx = x + 6;
        double up = 3.3;
        double down = 1.3;
        ink.line(
                cx + up * StrictMath.sin(tilt),
                base - up * StrictMath.cos(tilt),
                cx - down * StrictMath.sin(tilt),
                base + down * StrictMath.cos(tilt),
                0.7);
    }

    /**
     * A board against a mitre saw's fence, seen from above, and the cut across it so many degrees from square; 12 x 6 mm from the
     * upper left corner.
     */
    public static void mitre(Ink ink, double degrees, double x, double y) {
        double fence = y + 0.7;
        double front = fence + 3.6;
        double across = 3.6 * StrictMath.tan(StrictMath.toRadians(Math.min(degrees, 70)));
        ink.line(x, fence, x + 12, fence, 0.9);
        ink.line(x, front, x + 12, front, Ink.MIDDLE);
        double beyond = 1.2 / 3.6;
        double middle = x + 6;
        ink.line(middle - across / 2, fence, middle + across * (0.5 + beyond), front + 1.2, 0.7);
    }

    /** Three pencil strokes along the grain, 8 mm long, from the lower left corner. */
    static void grain(Ink ink, double x, double y) {
        ink.line(x + 0.9, y - 2.0, x + 5.6, y - 2.0, Ink.NARROW);
        ink.line(x, y - 1.0, x + 7.2, y - 1.0, Ink.NARROW);
        ink.line(x + 2.2, y, x + 7.9, y, Ink.NARROW);
    }

    /** A dimension between two points of one height: oblique strokes at the ends, its value above the line. */
    static void dimension(Ink ink, Line value, double x1, double x2, double y, double extensionFrom) {
        ink.line(x1, extensionFrom, x1, y + 1.6, Ink.FINE);
        ink.line(x2, extensionFrom, x2, y + 1.6, Ink.FINE);
        ink.line(x1, y, x2, y, Ink.FINE);
        for (double x : new double[] {x1, x2}) {
            ink.line(x - 0.9, y + 0.9, x + 0.9, y - 0.9, Ink.WIDE);
        }
        ink.centred(value, (x1 + x2) / 2, y - 1.1);
    }
}
