package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.joint.DrillSizes;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Bolt;
import org.kerfleaf.sketch.Fastener;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Screw;

/** What a marking drawing says: whose it is, which face lies up and which way round, and what to drill. */
final class MarkingWords {
    /** A direction this much upward is said by top and bottom. */
    private static final double RISES = 0.15;

    private static final double LIES = 0.7;

    private final PieceNames names;
    private final MeasureStyle style;

    MarkingWords(PieceNames names, MeasureStyle style) {
        this.names = names;
        this.style = style;
    }

    /**
     * The drawing of one face.
     *
     * @param alike the pieces it is drawn for
     * @param mirrored those that are its mirror image
     * @param more whether the part has drawings of other faces
     */
    Marking marking(PlannedPart part, MarkedFace face, List<Piece> alike, List<Piece> mirrored, boolean more) {
        int all = names.equals(part.name()).size();
        String which = alike.size() + mirrored.size() < all
                ? ", " + names(Stream.concat(alike.stream(), mirrored.stream()).toList())
                : "";
        String side = more ? ", " + lyingFace(part, face) : "";
        return new Marking(
                part.name(),
                part.letter() + " " + part.name() + which + side,
                face.drawn(),
                face.up(),
                face.guides(),
                face.holes(),
                faceUp(part, face),
                hand(alike, mirrored, all),
                String.join(" ", face.fasteners().stream().map(this::drill).toList()));
    }

    // ---- which face, which way round ----------------------------------------------------------------------------

    private static String faceUp(PlannedPart part, MarkedFace face) {
        String words = lyingFace(part, face);
        return "%s%s up; in the drawing %s is up, %s right."
                .formatted(
                        words.substring(0, 1).toUpperCase(java.util.Locale.ROOT),
                        words.substring(1),
                        towards(face.upper()),
                        towards(face.right()));
    }

    /** A wall has an OUTSIDE and an INSIDE; what lies flat an upper and a lower face; of a board one says where the face looks. */
    private static String lyingFace(PlannedPart part, MarkedFace face) {
        Vector out = face.out();
        if (face.isEdge()) {
            return "edge at " + towards(out);
        }
        if (part.kind() == PartKind.BOARD) {
            return "face at " + towards(out);
        }
        if (Math.abs(out.z()) > LIES) {
            return out.z() > 0 ? "upper face" : "lower face";
        }
        return face.up() == SheetSide.INSIDE ? "INSIDE" : "OUTSIDE";
    }

    private static String towards(Vector way) {
        if (Math.abs(way.z()) > LIES || Math.abs(way.z()) > RISES && Math.abs(way.y()) < LIES) {
            return way.z() > 0 ? "the top" : "the bottom";
        }
        if (Math.abs(way.y()) > Math.abs(way.x())) {
            return way.y() > 0 ? "the back" : "the front";
        }
        return way.x() > 0 ? "the build’s right" : "the build’s left";
    }

    // ---- which hand ---------------------------------------------------------------------------------------------

    private String hand(List<Piece> alike, List<Piece> mirrored, int all) {
        if (!mirrored.isEmpty()) {
            String twin = mirrored.size() == 1 ? " one is its mirror image." : " ones are its mirror images.";
            return "Drawn for the " + names(alike) + " one; the " + names(mirrored) + twin;
        }
        if (alike.size() < 2) {
            return "";
        }
        return alike.size() == 2 ? "Mark both alike." : "Mark all " + alike.size() + " alike.";
    }

    private String names(List<Piece> pieces) {
        List<String> words = new ArrayList<>(pieces.stream().map(names::word).toList());
        String last = words.remove(words.size() - 1);
        return words.isEmpty() ? last : String.join(", ", words) + " and " + last;
    }

    // ---- what to drill ------------------------------------------------------------------------------------------

    private String drill(Fastener fastener) {
        if (fastener instanceof Screw screw) {
            return "At each cross, for No. %d screws: clearance hole %s, head sunk %s; in the part below, pilot hole %s (soft wood or plywood)."
                    .formatted(
                            screw.gauge(),
                            size(DrillSizes.clearance(screw.gauge())),
                            WoodScrew.COUNTERSINK.in(style),
                            size(DrillSizes.pilot(screw.gauge(), DrillSizes.Wood.SOFT)));
        }
        return fastener instanceof Bolt bolt
                ? "At each cross: hole " + bolt.diameter().in(style) + " through everything the bolt binds."
                : "At each cross: a finish nail "
                        + fastener.said().orElseThrow().in(style) + " long.";
    }

    private String size(Optional<Figure<Length>> bit) {
        return bit.map(b -> b.value().in(style)).orElse("not known for this gauge");
    }
}
