package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.shape.Gap;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Where;

/** Looks whether what was said to rest on something really touches all of it. */
final class Resting {
    private final Sketch sketch;
    private final Assembly assembly;
    private final Bodies bodies;
    private final MeasureStyle style;
    private final Problems problems;

    Resting(Sketch sketch, Assembly assembly, Bodies bodies, MeasureStyle style, Problems problems) {
        this.sketch = sketch;
        this.assembly = assembly;
        this.bodies = bodies;
        this.style = style;
        this.problems = problems;
    }

    void look() {
        for (Placing placing : sketch.all(Placing.class)) {
            for (Where where : placing.where()) {
                if (where instanceof Where.RestsOn rests) {
                    look(placing.origin(), assembly.of(placing.origin()), rests.supports());
                } else if (where instanceof Where.RestsIn in) {
                    look(placing.origin(), assembly.of(placing.origin()), List.of(in.ring()));
                }
            }
        }
        for (Mount mount : sketch.all(Mount.class)) {
            look(mount.origin(), assembly.buildOf(mount.what()), mount.restsOn());
        }
    }

    /** Every piece that carries must be touched by one that rests. */
    private void look(Origin said, List<Piece> resting, List<Origin> supports) {
        List<Piece> upper = resting.stream().filter(bodies::has).toList();
        for (Origin key : supports) {
            for (Piece under : assembly.of(key)) {
                if (!upper.isEmpty() && bodies.has(under)) {
                    apart(upper, under).ifPresent(words -> problems.add(said, words));
                }
            }
        }
    }

    private Optional<String> apart(List<Piece> upper, Piece under) {
        List<Gap> gaps = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Piece piece : upper) {
            Touching pair = bodies.touching(piece, under);
            if (pair.clash().isPresent()) {
                return Optional.of("“%s” rests on “%s”, but they are in one place: %s of both."
                        .formatted(
                                piece.part(),
                                under.part(),
                                Clashes.size(pair.clash().get(), style)));
            }
            if (pair.isAny()) {
                return Optional.empty();
            }
            gaps.add(pair.gap().orElseThrow());
            names.add(piece.part());
        }
        Gap nearest = gaps.stream().min(Comparator.comparing(Gap::size)).orElseThrow();
        return Optional.of("“%s” rests on “%s”, but they are %s apart, %s."
                .formatted(
                        names.get(gaps.indexOf(nearest)),
                        under.part(),
                        nearest.size().in(style),
                        Clashes.direction(nearest.direction())));
    }
}
