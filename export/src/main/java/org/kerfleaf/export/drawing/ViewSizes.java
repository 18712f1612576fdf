package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

/**
 * What a maker measures in a view: overall sizes, openings that look that way with their height over the foot, the length of a part
 * that is drawn broken, and the maker's own sizes where a span of the build is as long. No length twice along an axis.
 */
final class ViewSizes {
    /** Two places nearer than this are one, in millimetres. */
    private static final double SAME = 0.01;

    private final View view;
    private final List<PlacedPart> placed;
    private final List<Measure> sizes = new ArrayList<>();

    private ViewSizes(List<PlacedPart> placed, View view) {
        this.placed = placed;
        this.view = view;
    }

    /**
     * The sizes for a view.
     *
     * @param given in other views of the same sheet: not given again
     */
    static List<Measure> of(Plan plan, List<PlacedPart> placed, Broken broken, View view, List<Measure> given) {
        ViewSizes all = new ViewSizes(placed, view);
        all.sizes.addAll(given);
        Bounds hull =
                placed.stream().map(p -> p.solid().bounds()).reduce(Bounds::and).orElseThrow();
        all.axes().forEach(axis -> all.add(axis, Broken.of(axis, hull.low()), Broken.of(axis, hull.high())));
        if (!broken.isNowhere()) {
            all.brokenParts(broken);
        }
        all.openings();
        plan.sizes().stream()
                .filter(size -> size.value() instanceof Length)
                .map(size -> (Length) size.value())
                .filter(Length::isPositive)
                .forEach(all::own);
        return all.sizes.subList(given.size(), all.sizes.size());
    }

    private List<Axis> axes() {
        return List.of(Axis.values()).stream()
                .filter(axis -> Math.abs(Broken.of(axis, view.toEye())) < 0.5)
                .toList();
    }

    private void add(Axis axis, double from, double to) {
        boolean given = sizes.stream()
                .anyMatch(s -> s.axis() == axis && Math.abs(s.size().inMillimetres() - (to - from)) < SAME);
        if (!given && to - from > SAME && axes().contains(axis)) {
            sizes.add(new Measure(axis, Length.ofMillimetres(from), Length.ofMillimetres(to)));
        }
    }

    private void brokenParts(Broken broken) {
        for (PlacedPart part : placed) {
            Bounds box = part.solid().bounds();
            double low = Broken.of(broken.axis(), box.low());
            double high = Broken.of(broken.axis(), box.high());
            if (low < broken.from() && high > broken.to()) {
                add(broken.axis(), low, high);
            }
        }
    }

    private void openings() {
        for (PlacedPart part : placed) {
            PlacedSolid solid = part.solid();
            boolean looksHere = Math.abs(solid.pose().w().dot(view.toEye())) > 1 - 1e-9;
            Outline outline = solid.solid().outline();
            for (String name : looksHere ? outline.openings() : List.<String>of()) {
                if (!PartWords.isHole(outline.opening(name))) {
                    opening(solid, outline.opening(name).bounds());
                }
            }
        }
    }

    private void opening(PlacedSolid solid, Bounds local) {
        Bounds box = Bounds.of(
                List.of(solid.pose().toWorld(local.low()), solid.pose().toWorld(local.high())));
        for (Axis axis : axes()) {
            add(axis, Broken.of(axis, box.low()), Broken.of(axis, box.high()));
            if (axis == Axis.Z) {
                add(axis, Broken.of(axis, solid.bounds().low()), Broken.of(axis, box.low()));
            }
        }
    }

    // ---- the maker's own -----------------------------------------------------------------------------------------

    private void own(Length size) {
        double mm = size.inMillimetres();
        // A size of an opening is given where that looks, and nowhere else by chance.
        boolean known = isOfOpening(mm)
                || sizes.stream().anyMatch(s -> Math.abs(s.size().inMillimetres() - mm) < SAME);
        for (Axis axis : known ? List.<Axis>of() : axes()) {
            Optional<double[]> span = between(axis, mm).or(() -> ofOne(axis, mm));
            if (span.isPresent()) {
                add(axis, span.get()[0], span.get()[1]);
                return;
            }
        }
    }

    private boolean isOfOpening(double size) {
        return placed.stream()
                .map(part -> part.solid().solid().outline())
                .flatMap(outline ->
                        outline.openings().stream().map(outline::opening).filter(opening -> !PartWords.isHole(opening)))
                .map(opening -> opening.bounds().sizes())
                .anyMatch(wide -> Math.abs(wide.x() - size) < SAME || Math.abs(wide.y() - size) < SAME);
    }

    /** Clear between two pieces of one part. */
    private Optional<double[]> between(Axis axis, double size) {
        for (PlacedPart a : placed) {
            for (PlacedPart b : placed) {
                double from = Broken.of(axis, a.solid().bounds().high());
                double to = Broken.of(axis, b.solid().bounds().low());
                boolean faces = a.solid().part().equals(b.solid().part())
                        && isFlat(a.solid(), axis, from)
                        && isFlat(b.solid(), axis, to);
                if (faces && Math.abs(to - from - size) < SAME) {
                    return Optional.of(new double[] {from, to});
                }
            }
        }
        return Optional.empty();
    }

    /** From a flat end of a piece to one of its corners. */
    private Optional<double[]> ofOne(Axis axis, double size) {
        for (PlacedPart part : placed) {
            double low = Broken.of(axis, part.solid().bounds().low());
            boolean fits = isFlat(part.solid(), axis, low)
                    && corners(part.solid()).anyMatch(c -> Math.abs(Broken.of(axis, c) - low - size) < SAME);
            if (fits) {
                return Optional.of(new double[] {low, low + size});
            }
        }
        return Optional.empty();
    }

    /** The corners of its outside; the walls of openings and pockets are named after these, with a space. */
    private static Stream<Vector> corners(PlacedSolid solid) {
        return solid.faces().stream()
                .filter(face -> !face.name().contains(" "))
                .flatMap(face -> face.corners().stream());
    }

    private static boolean isFlat(PlacedSolid solid, Axis axis, double at) {
        return solid.faces().stream().anyMatch(face -> isFlat(face, axis, at));
    }

    private static boolean isFlat(Face face, Axis axis, double at) {
        return Math.abs(Broken.of(axis, face.normal())) > 1 - 1e-9
                && Math.abs(Broken.of(axis, face.frame().origin()) - at) < SAME;
    }
}
