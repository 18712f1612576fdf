package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.joint.FastenerLine;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.ClearLine;
import org.kerfleaf.shape.Touch;

/**
 * Fasteners in line along a contact.
 *
 * @param across where the line runs, from the contact frame's origin, in millimetres
 * @param along where they stand on it, in order, in millimetres
 */
record FastenerRow(double across, List<Double> along) {
    /** Moves are tried in these steps. */
    static final Length STEP = Length.ofSixtyFourths(1);

    /** Two rows stand on a contact wider than this: an end distance from each edge, and one between them. */
    private static final Length TWO_ROWS = FastenerLine.END_DISTANCE.times(2);

    FastenerRow {
        along = List.copyOf(along);
    }

    /** Along the longer middle, no two further apart than said. */
    static FastenerRow every(Touch place, Length every) {
        return new FastenerRow(
                place.across().half().inMillimetres(),
                millimetres(FastenerLine.positions(place.along(), FastenerLine.END_DISTANCE, every)));
    }

    /** So many along the longer middle; three or more on a contact wide in both directions stand in two rows, as corners do. */
    static List<FastenerRow> pattern(Touch place, int many, Length end) {
        if (many < 3 || !place.across().isLongerThan(TWO_ROWS)) {
            return List.of(row(place, place.across().half(), many, end));
        }
        Length edge = place.across().dividedBy(4).min(FastenerLine.END_DISTANCE);
        return List.of(
                row(place, edge, (many + 1) / 2, end), row(place, place.across().minus(edge), many / 2, end));
    }

    /** So many side by side across the contact, each in the middle of its length. */
    static List<FastenerRow> abreast(Touch place, int many, Length end) {
        double middle = place.along().half().inMillimetres();
        return FastenerLine.spread(place.across(), end, many).stream()
                .map(at -> new FastenerRow(at.inMillimetres(), List.of(middle)))
                .toList();
    }

    private static FastenerRow row(Touch place, Length across, int many, Length end) {
        return new FastenerRow(across.inMillimetres(), millimetres(FastenerLine.spread(place.along(), end, many)));
    }

    private static List<Double> millimetres(List<Length> lengths) {
        return lengths.stream().map(Length::inMillimetres).toList();
    }

    /** Each at its place or, where an opening or a hole is in the way, at the nearest that is free; empty if one finds none. */
    Optional<FastenerRow> onWood(Driver driver) {
        List<ClearLine.Span> free = free(driver);
        double apart = spacing() / 2;
        double length = driver.place().along().inMillimetres();
        List<Double> found = new ArrayList<>();
        for (double wanted : along) {
            Optional<Double> place = nearest(
                    wanted,
                    length,
                    at -> free.stream().anyMatch(s -> s.holds(at))
                            && found.stream().allMatch(other -> Math.abs(other - at) >= apart)
                            && driver.at(at, across).isPresent());
            if (place.isEmpty()) {
                return Optional.empty();
            }
            found.add(place.get());
        }
        return Optional.of(new FastenerRow(across, found.stream().sorted().toList()));
    }

    /** Whether all of it stands on wood, where it should. */
    boolean isOnWood(Driver driver) {
        List<ClearLine.Span> free = free(driver);
        return along.stream()
                .allMatch(at -> free.stream().anyMatch(s -> s.holds(at))
                        && driver.at(at, across).isPresent());
    }

    /** The edge distance is kept, or half of the contact where it is narrower. */
    private List<ClearLine.Span> free(Driver driver) {
        double room = Math.min(across, driver.place().across().inMillimetres() - across);
        return ClearLine.of(driver.place(), across, Math.min(driver.edge(), room));
    }

    /** How far neighbours stand from one another; nothing for one alone. */
    private double spacing() {
        return along.size() < 2 ? 0 : along.get(1) - along.get(0);
    }

    private interface Place {
        boolean isFree(double at);
    }

    private static Optional<Double> nearest(double wanted, double length, Place place) {
        double step = STEP.inMillimetres();
        for (double off = 0; off <= length; off += step) {
            for (double at : new double[] {wanted - off, wanted + off}) {
                if (at >= 0 && at <= length && place.isFree(at)) {
                    return Optional.of(at);
                }
            }
        }
        return Optional.empty();
    }

    /** Its first moved by one distance and its last by another, the others between them in proportion. */
    FastenerRow moved(double first, double last) {
        double from = along.get(0);
        double run = along.get(along.size() - 1) - from;
        return new FastenerRow(
                across,
                along.stream()
                        .map(at -> at + first + (run == 0 ? 0 : (at - from) / run * (last - first)))
                        .toList());
    }
}
