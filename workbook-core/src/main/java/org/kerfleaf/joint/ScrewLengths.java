package org.kerfleaf.joint;

import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;

/** The lengths and gauges wood screws are usually sold in. Common practice, no source: a shop may have others. */
public final class ScrewLengths {
    private static final NavigableSet<Length> INCHES =
            set(32, 40, 48, 64, 80, 96, 104, 112, 128, 144, 160, 192, 224, 256);
    private static final NavigableSet<Length> MILLIMETRES =
            List.of(12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100).stream()
                    .map(mm -> Length.ofMillimetres(mm.longValue()))
                    .collect(Collectors.toCollection(TreeSet::new));
    private static final NavigableSet<Integer> GAUGES = new TreeSet<>(List.of(4, 6, 8, 10, 12, 14));

    private ScrewLengths() {}

    private static NavigableSet<Length> set(long... sixtyFourths) {
        NavigableSet<Length> lengths = new TreeSet<>();
        for (long count : sixtyFourths) {
            lengths.add(Length.ofSixtyFourths(count));
        }
        return lengths;
    }

    /** The shortest screw sold that is at least this long; empty beyond 4 in or 100 mm. */
    public static Optional<Length> atLeast(Length length, LengthUnit unit) {
        return Optional.ofNullable((unit == LengthUnit.INCHES ? INCHES : MILLIMETRES).ceiling(length));
    }

    /** The longest screw sold that is at most this long; empty under 1/2 in or 12 mm. */
    public static Optional<Length> atMost(Length length, LengthUnit unit) {
        return Optional.ofNullable((unit == LengthUnit.INCHES ? INCHES : MILLIMETRES).floor(length));
    }

    /** Every gauge in every length sold. */
    static List<WoodScrew> all(LengthUnit unit) {
        return (unit == LengthUnit.INCHES ? INCHES : MILLIMETRES)
                .stream()
                        .flatMap(length -> GAUGES.stream().map(gauge -> new WoodScrew(gauge, length)))
                        .toList();
    }

    /** The thickest gauge sold whose shank is no thicker than this; empty under No. 4. */
    public static Optional<Integer> gaugeUpTo(Length diameter) {
        return GAUGES.descendingSet().stream()
                .filter(gauge -> !WoodScrew.diameter(gauge).value().isLongerThan(diameter))
                .findFirst();
    }
}
