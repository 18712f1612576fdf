package org.kerfleaf.joint;

import java.time.Duration;
import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.reason.Figure;

/**
 * A joint with glue.
 *
 * @param step the build step that glues it, 0 above the first
 * @param joint what is glued to what: {@code Back to Floor}
 * @param glue the name on its bottle
 * @param area of all its contacts
 * @param grams how much glue that takes
 * @param closing how long spreading it and driving or clamping takes, for the piece that takes longest
 * @param openTime how long the glue stays open, if it was said
 * @param clamps how many, where nothing is driven that draws it tight; zero where something is
 */
public record GluedJoint(
        int step,
        String joint,
        String glue,
        Figure<Area> area,
        Figure<Mass> grams,
        Figure<Duration> closing,
        Optional<Duration> openTime,
        Figure<Integer> clamps) {}
