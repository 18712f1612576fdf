package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.FinishedBuild;
import org.kerfleaf.shape.OpenFaces;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Where;

/**
 * Measures what is painted and what is caulked.
 *
 * <p>Counted are the two wide faces of panels, openings and holes taken out; edges are not. What another piece of the build
 * covers is taken off; what is put together in a later step is not there yet. Inside is what the finished build closes in.
 */
final class Painting {
    private final Sketch sketch;
    private final Sizing sizing;
    private final Assembly assembly;
    private final Bodies bodies;
    private final List<PlannedPart> parts;
    private List<Finished> finished;

    private record Finished(List<Piece> fixed, FinishedBuild solids) {}

    Painting(Sketch sketch, Sizing sizing, Assembly assembly, Bodies bodies, List<PlannedPart> parts) {
        this.sketch = sketch;
        this.sizing = sizing;
        this.assembly = assembly;
        this.bodies = bodies;
        this.parts = parts;
    }

    /** The area that one coat of this paints. */
    Figure<Area> area(Coat coat) {
        Area sum = Area.ZERO;
        List<String> words = new ArrayList<>();
        for (Coat.Faces faces : coat.faces()) {
            Area area = switch (faces.which()) {
                case INSIDE -> faces(coat, true);
                case OUTSIDE -> faces(coat, false);
                case BOTH_OF -> bothFaces(coat, faces.part().orElseThrow());
                case ENDS_OF -> bothEnds(coat, faces.part().orElseThrow());
            };
            words.add(
                    switch (faces.which()) {
                        case INSIDE -> "inside faces";
                        case OUTSIDE -> "outside faces";
                        case BOTH_OF -> "both faces of " + faces.part().orElseThrow();
                        case ENDS_OF -> "both ends of " + faces.part().orElseThrow();
                    });
            sum = sum.plus(area);
        }
        return Figure.of(
                sum,
                "%s; edges not counted, openings and hidden faces taken off".formatted(String.join(", ", words)),
                Reason.GEOMETRY);
    }

    private Area bothFaces(Coat coat, String name) {
        SizedPart part = sized(coat, name);
        return part.face(SheetSide.OUTSIDE).plus(part.face(SheetSide.INSIDE)).times(count(name));
    }

    private Area bothEnds(Coat coat, String name) {
        SizedPart part = sized(coat, name);
        return part.up().value().by(part.thickness().value()).times(2.0 * count(name));
    }

    private SizedPart sized(Coat coat, String name) {
        return sizing.of(name)
                .orElseThrow(() -> new Unplannable(
                        coat.origin(), "“%s” is painted, but its sizes are not known.".formatted(name)));
    }

    private int count(String name) {
        return parts.stream()
                .filter(p -> p.name().equals(name))
                .mapToInt(PlannedPart::count)
                .sum();
    }

    private Area faces(Coat coat, boolean inside) {
        Area sum = Area.ZERO;
        for (Finished build : finished()) {
            List<Piece> there = build.fixed().stream()
                    .filter(p -> isThere(p, coat.origin()))
                    .toList();
            OpenFaces open = build.solids().openFaces(solids(there));
            for (Piece piece : there) {
                boolean panel = sizing.of(piece.part())
                        .filter(s -> s.said().kind() == PartKind.PANEL)
                        .isPresent();
                sum = panel ? sum.plus(open.of(bodies.of(piece), inside)) : sum;
            }
        }
        return sum;
    }

    /** The builds as they are in the end, without what hangs. */
    private List<Finished> finished() {
        if (finished == null) {
            finished = assembly.builds().stream()
                    .map(build -> build.stream().filter(this::isFixed).toList())
                    .map(fixed -> new Finished(fixed, new FinishedBuild(solids(fixed))))
                    .toList();
        }
        return finished;
    }

    private List<PlacedSolid> solids(List<Piece> pieces) {
        return pieces.stream().map(bodies::of).toList();
    }

    /** Whether a piece is put in place in this step or an earlier one. */
    private static boolean isThere(Piece piece, Origin when) {
        return piece.placing().compareTo(when) < 0;
    }

    private boolean isFixed(Piece piece) {
        return bodies.has(piece) && !isHung(sketch, piece);
    }

    /** Doors hang over an opening and are painted by name: only what is fixed is one body with an inside and an outside. */
    static boolean isHung(Sketch sketch, Piece piece) {
        return sketch.placing(piece.placing()).stream()
                .flatMap(p -> p.where().stream())
                .anyMatch(w -> w instanceof Where.Over);
    }

    /** The inside seams of everything put together before, looked at in the finished build. */
    Figure<Length> insideSeams(Origin when) {
        Length sum = Length.ZERO;
        int pieces = 0;
        for (Finished build : finished()) {
            List<PlacedSolid> there = build.fixed().stream()
                    .filter(p -> isThere(p, when))
                    .map(bodies::of)
                    .toList();
            if (there.size() > 1) {
                pieces += there.size();
                sum = sum.plus(build.solids().seams().inside(there));
            }
        }
        return Figure.of(
                sum,
                "inside corners along every contact, where no sky is seen once the build is finished",
                Reason.GEOMETRY,
                given("pieces in place", pieces));
    }
}
