package org.kerfleaf.saw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;

/**
 * One kind of cut on one part, before it is grouped with others of the same setting.
 *
 * @param letter of the part
 * @param saw that makes it
 * @param words which cut: {@code top edge, long point inside}
 * @param thickness of the part
 * @param width of what lies across a mitre saw; the thickness for other saws
 * @param tilt of the blade from square
 * @param scale of a mitre saw, from square; empty for other saws
 * @param meetsItsLike whether two such ends come together, so that an error of the setting counts twice
 * @param set further numbers of this cut
 * @param notes what to watch at it
 */
public record SawCut(
        String letter,
        SawKind saw,
        String words,
        Length thickness,
        Length width,
        Figure<Angle> tilt,
        Optional<Figure<Angle>> scale,
        boolean meetsItsLike,
        List<Reading> set,
        String notes) {
    public SawCut {
        set = List.copyOf(set);
    }

    /** A cut without a scale. */
    public static SawCut of(String letter, SawKind saw, String words, Length thickness, Figure<Angle> tilt) {
        return new SawCut(letter, saw, words, thickness, thickness, tilt, Optional.empty(), false, List.of(), "");
    }

    /** A cut across a piece so wide, on a mitre saw whose table is turned. */
    public SawCut scaled(Figure<Angle> turned, Length wide) {
        return new SawCut(letter, saw, words, thickness, wide, tilt, Optional.of(turned), meetsItsLike, set, notes);
    }

    /** A cut that meets another like it. */
    public SawCut meetingItsLike() {
        return new SawCut(letter, saw, words, thickness, width, tilt, scale, true, set, notes);
    }

    /** With further numbers. */
    public SawCut with(List<Reading> readings) {
        List<Reading> more = new ArrayList<>(set);
        more.addAll(readings);
        return new SawCut(letter, saw, words, thickness, width, tilt, scale, meetsItsLike, more, notes);
    }

    /** With what to watch, in whole sentences. */
    public SawCut noting(String sentences) {
        return new SawCut(letter, saw, words, thickness, width, tilt, scale, meetsItsLike, set, sentences);
    }
}
