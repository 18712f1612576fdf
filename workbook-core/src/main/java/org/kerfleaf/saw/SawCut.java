package org.kerfleaf.saw;

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
 * @param tilt of the blade from square
 * @param scale of a mitre saw, from square; empty for other saws
 */
public record SawCut(
        String letter,
        SawKind saw,
        String words,
        Length thickness,
        Figure<Angle> tilt,
        Optional<Figure<Angle>> scale) {}
