package org.kerfleaf.export.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;

/**
 * A standard scale of drawings (ISO 5455 and the trade's own): {@code times} millimetres of the thing are one of paper.
 *
 * @param times how many times smaller the drawing is
 */
public record Scale(int times) {
    private static final int[] STANDARD = {1, 2, 4, 5, 8, 10, 12, 16, 20, 24, 32, 40, 48, 64, 80, 100, 200};

    /** Scales that a rule graduated in inches has, as inches of paper for a foot. */
    private static final Map<Integer, String> OF_THE_TRADE = Map.of(
            1, "12", 2, "6", 4, "3", 8, "1 1/2", 12, "1", 16, "3/4", 24, "1/2", 32, "3/8", 48, "1/4", 64, "3/16");

    /** All standard scales, the largest drawing first. */
    static List<Scale> standard() {
        return Arrays.stream(STANDARD).mapToObj(Scale::new).toList();
    }

    /** The scale of the smallest drawing there is. */
    static Scale smallest() {
        return new Scale(STANDARD[STANDARD.length - 1]);
    }

    /** The largest standard scale at which a rectangle fits; the smallest there is if none does. */
    public static Scale fitting(Length wide, Length high, double paperWide, double paperHigh) {
        for (int times : STANDARD) {
            Scale scale = new Scale(times);
            if (scale.paper(wide) <= paperWide && scale.paper(high) <= paperHigh) {
                return scale;
            }
        }
        return new Scale(STANDARD[STANDARD.length - 1]);
    }

    /** The largest whole scale at which a rectangle fits, standard or not: for pictures that nobody measures. */
    static Scale filling(Length wide, Length high, double paperWide, double paperHigh) {
        double times = Math.max(wide.inMillimetres() / paperWide, high.inMillimetres() / paperHigh);
        return new Scale(Math.max(1, (int) Math.ceil(times)));
    }

    /** How long that is on paper, in millimetres. */
    public double paper(Length length) {
        return length.inMillimetres() / times;
    }

    /** {@code scale 1:16}, in inches also {@code 3/4 in is 1 ft}. */
    public String words(LengthUnit unit) {
        String trade = unit == LengthUnit.INCHES ? OF_THE_TRADE.get(times) : null;
        return "scale 1:" + times + (trade == null ? "" : ", " + trade + " in is 1 ft");
    }
}
