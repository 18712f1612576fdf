package org.kerfleaf.saw;

import static org.kerfleaf.reason.Given.given;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/** Where a saw gets into an opening, and where it stops: start holes of a jigsaw, plunge cuts of a circular saw. */
public final class Openings {
    private Openings() {}

    /**
     * The bit for a start hole: the corner's own if the corner is rounded, or else the jigsaw's blade and some room, to the next
     * usual bit. Common practice.
     *
     * @param radius of the opening's corners
     * @param blade how wide the jigsaw's blade is, if known
     * @param room 1/8 in or 3 mm
     * @param bits the step in which bits are sold: 1/16 in or 1 mm
     * @return empty if neither radius nor blade is known
     */
    public static Optional<Figure<Length>> startHole(Length radius, Optional<Length> blade, Length room, Length bits) {
        if (radius.isPositive()) {
            return Optional.of(Figure.of(
                    radius.times(2L),
                    "twice the corner radius, so that the bit makes the corner",
                    Reason.GEOMETRY,
                    given("corner radius", radius)));
        }
        return blade.map(wide -> Figure.of(
                wide.plus(room).roundedTo(bits, RoundingMode.CEILING),
                "blade + room, to the next bit",
                Reason.COMMON_PRACTICE,
                given("blade", wide),
                given("room", room)));
    }

    /** What is marked for a start hole: the bit, and its centre so far from both lines of the corner. */
    public static List<Reading> marks(Figure<Length> hole, String letter) {
        return List.of(
                new Reading("start hole, " + letter, hole),
                new Reading(
                        "its centre inside both lines, " + letter,
                        Figure.of(
                                hole.value().half(),
                                "half the hole, so that it touches both lines",
                                Reason.GEOMETRY,
                                given("hole", hole.value()))));
    }

    /**
     * A plunge cut: how long the cut is on the face that is up when the blade is down, and how much less it reaches on the other face at
     * each end.
     *
     * <p>With blade radius R, depth d and thickness t: 2·√(d(2R − d)), and √(d(2R − d)) − √((d − t)(2R − d + t)). (Geometry.)
     */
    public static List<Reading> plunge(Length blade, Length thickness) {
        Length depth = thickness.plus(SawAngles.PAST_THE_SHEET);
        double above = chord(blade, depth);
        double below = chord(blade, depth.minus(thickness));
        List<Reading> set = new ArrayList<>();
        set.add(new Reading(
                "shortest side to plunge",
                Figure.of(
                        Length.ofMillimetres(2 * above),
                        "2 · √(d(2R − d)), R half the blade, d its depth",
                        Reason.GEOMETRY,
                        given("blade", blade),
                        given("d", depth))));
        set.add(new Reading(
                "left uncut below at each end",
                Figure.of(
                        Length.ofMillimetres(above - below),
                        "√(d(2R − d)) − √((d − t)(2R − d + t))",
                        Reason.GEOMETRY,
                        given("blade", blade),
                        given("d", depth),
                        given("t", thickness))));
        return set;
    }

    /** Half of the chord that a blade makes, so deep below its edge, in millimetres. */
    private static double chord(Length blade, Length depth) {
        double d = depth.inMillimetres();
        return StrictMath.sqrt(Math.max(0, d * (blade.inMillimetres() - d)));
    }
}
