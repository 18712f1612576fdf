package org.kerfleaf.plan;

import java.util.stream.Collectors;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Clash;
import org.kerfleaf.shape.Vector;

/** Words for where two pieces are to each other. */
final class Clashes {
    /** A direction is an axis' own if it leans from it by no more than about five degrees. */
    private static final double STRAIGHT = 0.996;

    private Clashes() {}

    /** The box round what both share: {@code 1/4 × 7 1/4 × 18 7/8 in}. */
    static String size(Clash clash, MeasureStyle style) {
        return clash.sizes().stream().map(side -> digits(side, style)).collect(Collectors.joining(" × ")) + " "
                + style.unit().symbol();
    }

    /** A gap, or what is too much, to 1/64 in or 0.5 mm whatever the workbook prints to; never as nothing. */
    static String distance(Length distance, MeasureStyle style) {
        MeasureStyle finest = style.toTheFinest();
        return isPrinted(distance, finest) ? distance.in(finest) : "under " + finest;
    }

    private static String digits(Length distance, MeasureStyle style) {
        MeasureStyle finest = style.toTheFinest();
        return isPrinted(distance, finest)
                ? distance.read(finest).text()
                : "under " + finest.step().read(finest).digits();
    }

    private static boolean isPrinted(Length distance, MeasureStyle style) {
        return distance.isZero()
                || distance.read(style).whole() > 0
                || distance.read(style).numerator() > 0;
    }

    /** {@code up and down}, or {@code across a slope}. */
    static String direction(Vector direction) {
        if (Math.abs(direction.x()) > STRAIGHT) {
            return Axis.X.words();
        }
        if (Math.abs(direction.y()) > STRAIGHT) {
            return Axis.Y.words();
        }
        return Math.abs(direction.z()) > STRAIGHT ? Axis.Z.words() : "across a slope";
    }
}
