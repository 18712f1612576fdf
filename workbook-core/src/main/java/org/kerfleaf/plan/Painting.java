package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.Contact;
import org.kerfleaf.shape.Seams;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Where;

/**
 * Measures what is painted and what is caulked.
 *
 * <p>Counted are the two wide faces of panels, openings and holes taken out; edges are not. A wide face is outside if no
 * other piece of its build lies beyond it, and inside otherwise. What another piece of the build touches is hidden and
 * taken off. What is put together in a later step is not there yet.
 */
final class Painting {
    private final Sketch sketch;
    private final Sizing sizing;
    private final Assembly assembly;
    private final List<PlannedPart> parts;

    Painting(Sketch sketch, Sizing sizing, Assembly assembly, List<PlannedPart> parts) {
        this.sketch = sketch;
        this.sizing = sizing;
        this.assembly = assembly;
        this.parts = parts;
    }

    /** The area that one coat of this paints. */
    Figure<Area> area(Coat coat) {
        Area sum = Area.ZERO;
        List<String> words = new ArrayList<>();
        for (Coat.Faces faces : coat.faces()) {
            Area area = switch (faces.which()) {
                case INSIDE -> faces(coat, Side.INSIDE);
                case OUTSIDE -> faces(coat, Side.OUTSIDE);
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
        return part.face(Side.OUTSIDE).plus(part.face(Side.INSIDE)).times(count(name));
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

    private Area faces(Coat coat, Side side) {
        Area sum = Area.ZERO;
        for (List<Piece> build : assembly.builds()) {
            List<Piece> there = build.stream()
                    .filter(p -> isThere(p, coat.origin()))
                    .filter(this::isFixed)
                    .toList();
            for (Piece piece : there) {
                Optional<SizedPart> part = sizing.of(piece.part());
                if (part.isPresent() && part.get().said().kind() == PartKind.PANEL) {
                    sum = sum.plus(faces(part.get(), piece, there, side));
                }
            }
        }
        return sum;
    }

    /** Whether a piece is put in place in this step or an earlier one. */
    private static boolean isThere(Piece piece, Origin when) {
        return piece.placing().compareTo(when) < 0;
    }

    private boolean isFixed(Piece piece) {
        return !isHung(sketch, piece);
    }

    /** Doors hang over an opening and are painted by name: only what is fixed is one body with an inside and an outside. */
    static boolean isHung(Sketch sketch, Piece piece) {
        return sketch.placing(piece.placing()).stream()
                .flatMap(p -> p.where().stream())
                .anyMatch(w -> w instanceof Where.Over);
    }

    private Area faces(SizedPart part, Piece piece, List<Piece> build, Side wanted) {
        Axis through = part.standing().through();
        Area sum = Area.ZERO;
        for (boolean upper : List.of(true, false)) {
            Side side = isOutside(piece.box(), through, upper, build) ? Side.OUTSIDE : Side.INSIDE;
            if (side == wanted) {
                sum = sum.plus(part.face(side)).minus(hidden(piece, through, upper, build));
            }
        }
        return sum;
    }

    private static boolean isOutside(Box box, Axis axis, boolean upper, List<Piece> build) {
        Length face = upper ? box.high(axis) : box.low(axis);
        return build.stream()
                .map(Piece::box)
                .noneMatch(other -> upper
                        ? other.high(axis).isLongerThan(face)
                        : other.low(axis).isShorterThan(face));
    }

    private static Area hidden(Piece piece, Axis axis, boolean upper, List<Piece> build) {
        Area sum = Area.ZERO;
        for (Piece other : build) {
            Optional<Contact> contact = piece.box().contact(other.box());
            if (!other.equals(piece)
                    && contact.isPresent()
                    && contact.get().axis() == axis
                    && contact.get().above() == upper) {
                sum = sum.plus(contact.get().area());
            }
        }
        return sum;
    }

    /** The inside seams of everything put together before. */
    Figure<Length> insideSeams(Origin when) {
        Length sum = Length.ZERO;
        int pieces = 0;
        for (List<Piece> build : assembly.builds()) {
            List<Box> boxes = build.stream()
                    .filter(p -> isThere(p, when))
                    .filter(this::isFixed)
                    .map(Piece::box)
                    .toList();
            pieces += boxes.size();
            sum = sum.plus(new Seams(boxes).inside());
        }
        return Figure.of(
                sum,
                "inside corners along every contact that is walled in on all four sides",
                Reason.GEOMETRY,
                given("pieces in place", pieces));
    }
}
