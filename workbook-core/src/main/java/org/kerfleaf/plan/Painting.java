package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
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
import org.kerfleaf.sketch.Trait;
import org.kerfleaf.sketch.Where;

/**
 * Measures what is painted and what is caulked.
 *
 * <p>Counted are the two wide faces of panels, openings and holes taken out; edges are where they are said. What another piece of the build
 * covers is taken off; what is put together in a later step is not there yet. Inside is what the finished build closes in.
 */
final class Painting {
    /** How much more an edge of a sheet or end grain drinks than a face: makers say two to three times. {@code Common practice, no source}. */
    static final double EDGES_DRINK = 2;

    private final Sketch sketch;
    private final Sizing sizing;
    private final Assembly assembly;
    private final Bodies bodies;
    private final List<PlannedPart> parts;
    private final GluedLater glued;
    private List<Finished> finished;

    /** A build as it is in the end. */
    record Finished(List<Piece> fixed, FinishedBuild solids) {}

    Painting(
            Sketch sketch,
            Sizing sizing,
            Assembly assembly,
            Bodies bodies,
            List<PlannedPart> parts,
            List<PlannedJoint> joints) {
        this.sketch = sketch;
        this.sizing = sizing;
        this.assembly = assembly;
        this.bodies = bodies;
        this.parts = parts;
        this.glued = new GluedLater(joints);
    }

    /** What is glued after it was painted. */
    GluedLater glued() {
        return glued;
    }

    /** The area that one coat of this paints. */
    Figure<Area> area(Coat coat) {
        List<String> words = coat.faces().stream()
                .map(faces -> switch (faces.which()) {
                    case INSIDE -> "inside faces";
                    case OUTSIDE -> "outside faces";
                    case BOTH_OF -> "both faces of " + faces.part().orElseThrow();
                    case UNDERSIDE_OF -> "the underside of " + faces.part().orElseThrow();
                    case ENDS_OF -> "both ends of " + faces.part().orElseThrow();
                    case EDGES_OF -> "edges of " + faces.part().orElseThrow() + ", counted twice for what they drink";
                })
                .toList();
        boolean edges = coat.faces().stream().anyMatch(faces -> faces.which() == Coat.Which.EDGES_OF);
        Area sum = coated(coat).stream().map(Coated::drinks).reduce(Area.ZERO, Area::plus);
        return Figure.of(
                sum,
                "%s; %s, openings and hidden faces taken off"
                        .formatted(String.join(", ", words), edges ? "no other edges counted" : "edges not counted"),
                edges
                        ? "geometry; that edges drink twice as much is common practice (makers say two to three times), no source"
                        : Reason.GEOMETRY);
    }

    /** Everything that one coat of this paints, face by face. */
    List<Coated> coated(Coat coat) {
        List<Coated> coated = new ArrayList<>();
        for (Coat.Faces faces : coat.faces()) {
            coated.addAll(
                    switch (faces.which()) {
                        case INSIDE -> inSight(coat, true);
                        case OUTSIDE -> inSight(coat, false);
                        case BOTH_OF ->
                            faces(coat, faces.part().orElseThrow(), List.of(SheetSide.OUTSIDE, SheetSide.INSIDE));
                        case UNDERSIDE_OF -> underside(coat, faces.part().orElseThrow());
                        case ENDS_OF -> bothEnds(coat, faces.part().orElseThrow());
                        case EDGES_OF -> edges(coat, faces.part().orElseThrow());
                    });
        }
        return coat.masked() ? coated.stream().map(this::masked).toList() : coated;
    }

    private Coated masked(Coated coated) {
        return coated.less(glued.masked(coated));
    }

    /** Pieces in place show what nothing covers; those that hang, or are not in place yet, show both faces whole. */
    private List<Coated> faces(Coat coat, String name, List<SheetSide> sides) {
        List<Coated> coated = new ArrayList<>();
        int there = 0;
        for (Finished build : finished()) {
            for (List<Coated> piece : inSight(coat, build, p -> p.part().equals(name))) {
                piece.stream()
                        .filter(c -> sides.contains(c.side().orElseThrow()))
                        .forEach(coated::add);
                there++;
            }
        }
        SizedPart part = sized(coat, name);
        int loose = count(name) - there;
        for (SheetSide side : sides) {
            if (loose > 0) {
                Area area = part.face(side).times(loose);
                coated.add(Coated.face(coat, name, side, loose, area, Optional.empty(), Optional.empty()));
            }
        }
        return coated;
    }

    private List<Coated> underside(Coat coat, String name) {
        sized(coat, name);
        if (!hasUnderside(name)) {
            throw new Unplannable(
                    coat.origin(), "“%s” stands upright and has no underside. Say facesOf(...) of it.".formatted(name));
        }
        return faces(coat, name, List.of(SheetSide.OUTSIDE));
    }

    private boolean hasUnderside(String name) {
        return sizing.of(name)
                .filter(p -> p.standing() == Standing.LIES || p.standing() == Standing.SLOPES)
                .filter(p -> p.said().trait(Trait.RingOf.class).isEmpty())
                .isPresent();
    }

    /** A wide face in words. */
    String words(String part, SheetSide side) {
        boolean inner = side == SheetSide.INSIDE;
        return hasUnderside(part) ? inner ? "upper face" : "underside" : inner ? "inside face" : "outside face";
    }

    private List<Coated> bothEnds(Coat coat, String name) {
        SizedPart part = sized(coat, name);
        Area area = part.up().value().by(part.thickness().value()).times(2.0 * count(name));
        return List.of(Coated.narrow(coat, name, Coated.ENDS, count(name), area));
    }

    /** Edges of pieces in place less what others cover; those that hang, or are not in place yet, show all of theirs. */
    private List<Coated> edges(Coat coat, String name) {
        Area sum = Area.ZERO;
        int there = 0;
        for (Finished build : finished()) {
            List<Piece> now = build.fixed().stream()
                    .filter(p -> isThere(p, coat.origin()))
                    .toList();
            for (Piece piece : now) {
                if (piece.part().equals(name)) {
                    sum = sum.plus(build.solids().openEdges(bodies.of(piece), solids(now)));
                    there++;
                }
            }
        }
        Area whole = sized(coat, name).solid().edgeArea();
        sum = sum.plus(whole.times(Math.max(0, count(name) - there)));
        return List.of(Coated.narrow(coat, name, Coated.EDGES, count(name), sum));
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

    private List<Coated> inSight(Coat coat, boolean inside) {
        return finished().stream()
                .flatMap(build -> inSight(coat, build, this::isPanel).stream())
                .flatMap(List::stream)
                .filter(c -> c.place().orElseThrow().inside() == inside)
                .toList();
    }

    /** What a coat finds open, piece by piece, of those pieces that are in place. */
    private List<List<Coated>> inSight(Coat coat, Finished build, Predicate<Piece> which) {
        List<Piece> there =
                build.fixed().stream().filter(p -> isThere(p, coat.origin())).toList();
        OpenFaces open = build.solids().openFaces(solids(there));
        return there.stream()
                .filter(which)
                .map(piece -> open.places(bodies.of(piece)).stream()
                        .map(place -> Coated.face(
                                coat,
                                piece.part(),
                                place.side(),
                                1,
                                place.area(),
                                Optional.of(piece),
                                Optional.of(place)))
                        .toList())
                .toList();
    }

    private boolean isPanel(Piece piece) {
        return sizing.of(piece.part())
                .filter(s -> s.said().kind() == PartKind.PANEL)
                .isPresent();
    }

    /** The builds as they are in the end, without what hangs. */
    List<Finished> finished() {
        if (finished == null) {
            finished = assembly.builds().stream()
                    .map(build -> build.stream().filter(this::isFixed).toList())
                    .map(fixed -> new Finished(fixed, new FinishedBuild(solids(fixed))))
                    .toList();
        }
        return finished;
    }

    /** The open places of all panels of a build, once everything is in place. */
    Map<Piece, List<OpenFaces.Place>> open(Finished build) {
        OpenFaces open = build.solids().openFaces(solids(build.fixed()));
        Map<Piece, List<OpenFaces.Place>> places = new LinkedHashMap<>();
        build.fixed().stream().filter(this::isPanel).forEach(piece -> places.put(piece, open.places(bodies.of(piece))));
        return places;
    }

    List<PlacedSolid> solids(List<Piece> pieces) {
        return pieces.stream().map(bodies::of).toList();
    }

    /** Whether a piece is put in place in this step or an earlier one. */
    static boolean isThere(Piece piece, Origin when) {
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
