package org.kerfleaf.saw;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;

/**
 * One set-up of one saw, and the cuts that are made with it before it is changed.
 *
 * @param saw which saw, in words: {@code circular saw}, {@code mitre saw}, {@code jigsaw}
 * @param parts letters of the parts it cuts
 * @param cut which cut, in words: {@code top edge, long point inside}
 * @param tilt of the blade from square
 * @param scale the mitre scale's number, which reads from square; empty for other saws
 * @param bladeDepth below the base, along the tilt; empty for a mitre saw
 * @param straightedge how far the straightedge stands from the line; empty if not clamped or not known
 * @param notes what to watch, in one sentence
 */
public record SawSetting(
        String saw,
        List<String> parts,
        String cut,
        Figure<Angle> tilt,
        Optional<Figure<Angle>> scale,
        Optional<Figure<Length>> bladeDepth,
        List<Straightedge> straightedge,
        String notes) {
    public SawSetting {
        parts = List.copyOf(parts);
        straightedge = List.copyOf(straightedge);
    }

    /** A distance from the line to the straightedge, and where the straightedge lies: {@code left of the saw, on the keep side}. */
    public record Straightedge(String where, Figure<Length> distance) {}
}
