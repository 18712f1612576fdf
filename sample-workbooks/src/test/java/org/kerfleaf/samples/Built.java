package org.kerfleaf.samples;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Touching;

/** Looks at the placed pieces of a plan, and tries a sample at sizes drawn at random from its own ranges. */
final class Built {
    private static final int SETS = 50;

    private final Plan plan;

    Built(Plan plan) {
        this.plan = plan;
    }

    /** The sizes of {@value #SETS} variants: each size somewhere in its range, to 1/16 in, 1 mm or 1/4 degree. */
    static List<Map<String, String>> variants(Plan plan, long seed) {
        Random random = new Random(seed);
        return IntStream.range(0, SETS).mapToObj(i -> variant(plan, random)).toList();
    }

    private static Map<String, String> variant(Plan plan, Random random) {
        Map<String, String> sizes = new LinkedHashMap<>();
        for (Plan.PlannedSize size : plan.sizes()) {
            if (size.value() instanceof Length) {
                long step = plan.style().unit() == org.kerfleaf.measure.LengthUnit.INCHES ? 1_587_500 : 1_000_000;
                long least = ((Length) size.least().orElseThrow()).nanometres() / step;
                long most = ((Length) size.most().orElseThrow()).nanometres() / step;
                long nanometres = (least + (long) (random.nextDouble() * (most - least + 1))) * step;
                sizes.put(size.label(), nanometres / 1e6 + " mm");
            } else if (size.value() instanceof Angle) {
                double least = ((Angle) size.least().orElseThrow()).inDegrees();
                double most = ((Angle) size.most().orElseThrow()).inDegrees();
                sizes.put(size.label(), least + Math.floor(random.nextDouble() * (most - least) * 4) / 4 + " deg");
            }
        }
        return sizes;
    }

    /** The value of a length that a maker may change, in millimetres. */
    double size(String label) {
        return plan.sizes().stream()
                .filter(s -> s.label().equals(label))
                .map(s -> ((Length) s.value()).inMillimetres())
                .findFirst()
                .orElseThrow();
    }

    /** The pieces of a part, in the order they were placed. */
    List<PlacedSolid> pieces(String part) {
        return plan.placed().stream()
                .map(PlacedPart::solid)
                .filter(s -> s.part().equals(part))
                .toList();
    }

    PlacedSolid piece(String part) {
        return pieces(part).get(0);
    }

    Face face(String part, String name) {
        return piece(part).face(name);
    }

    /** What every piece of one part and every piece of another share, in square millimetres, pair by pair where they touch. */
    List<Double> contacts(String one, String other) {
        List<Double> areas = new ArrayList<>();
        for (PlacedSolid a : pieces(one)) {
            for (PlacedSolid b : pieces(other)) {
                Touching pair = Touching.between(a, b);
                if (!pair.touches().isEmpty()) {
                    areas.add(pair.area().squareMillimetres());
                }
            }
        }
        return areas;
    }

    /** All pairs of pieces in one place. */
    List<Touching> clashes() {
        return Touching.all(plan.placed().stream().map(PlacedPart::solid).toList()).stream()
                .filter(t -> t.clash().isPresent())
                .toList();
    }
}
