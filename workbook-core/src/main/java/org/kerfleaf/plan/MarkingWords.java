package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.kerfleaf.joint.DrillSizes;
import org.kerfleaf.joint.FastenerSetting;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Bolt;
import org.kerfleaf.sketch.Fastener;
import org.kerfleaf.sketch.Lag;
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
     * @param drawn what it is drawn for, all alike
     * @param twins those that are its mirror image
     * @param more whether the part has drawings of other faces
     */
    Marking marking(PlannedPart part, List<MarkedFace> drawn, List<MarkedFace> twins, boolean more) {
        MarkedFace face = drawn.get(0);
        List<Piece> alike = pieces(drawn);
        List<Piece> mirrored = pieces(twins);
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
                faceUp(part, drawn),
                hand(alike, mirrored, all),
                String.join(" ", face.drilling()));
    }

    private static List<Piece> pieces(List<MarkedFace> faces) {
        return faces.stream().map(MarkedFace::piece).distinct().toList();
    }

    // ---- which face, which way round ----------------------------------------------------------------------------

    /** Which face lies up, and what is at the drawing's top and right; said of all pieces that are drawn, so only what they share. */
    private static String faceUp(PlannedPart part, List<MarkedFace> alike) {
        List<String> said = new ArrayList<>();
        said.add(shared(alike, face -> lyingFace(part, face) + " up").orElse("the face it is driven from up"));
        shared(alike, face -> towards(face.upper()) + " at the top").ifPresent(said::add);
        shared(alike, face -> towards(face.right()) + " at the right").ifPresent(said::add);
        String words = String.join(", ", said) + ".";
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static Optional<String> shared(List<MarkedFace> alike, Function<MarkedFace, String> words) {
        List<String> all = alike.stream().map(words).distinct().toList();
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    /** A wall has an OUTSIDE and an INSIDE; what lies flat an upper and a lower face; of a board one says where the face looks. */
    private static String lyingFace(PlannedPart part, MarkedFace face) {
        Vector out = face.out();
        if (face.isEdge() || part.kind() == PartKind.BOARD) {
            return (face.isEdge() ? "edge at " : "face at ") + side(out);
        }
        if (Math.abs(out.z()) > LIES) {
            return out.z() > 0 ? "upper face" : "lower face";
        }
        return face.up() == SheetSide.INSIDE ? "INSIDE" : "OUTSIDE";
    }

    /** What rises a little along a slope is told by top and bottom. */
    private static String towards(Vector way) {
        boolean rises = Math.abs(way.z()) > RISES && Math.abs(way.y()) < LIES;
        return rises ? side(Vector.Z.times(way.z())) : side(way);
    }

    private static String side(Vector way) {
        double x = Math.abs(way.x());
        double y = Math.abs(way.y());
        if (Math.abs(way.z()) > Math.max(x, y)) {
            return way.z() > 0 ? "the top" : "the bottom";
        }
        if (y > x) {
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

    /** What is drilled for a contact's fasteners, from the face they are driven from. */
    String drill(DrivenContact contact, FastenerSetting setting) {
        Fastener fastener = contact.driver().said();
        if (fastener instanceof Screw screw && !contact.joint().said().drilled()) {
            return "At each small cross: a No. %d screw, driven without a hole.".formatted(screw.gauge());
        }
        if (fastener instanceof Screw screw) {
            return "At each small cross, for No. %d screws: clearance hole %s, head sunk %s; in the part below, pilot hole %s (%s)."
                    .formatted(
                            screw.gauge(),
                            size(setting.clearance()),
                            WoodScrew.COUNTERSINK.in(style),
                            size(setting.pilot()),
                            DrillSizes.Wood.of(setting.gravity().map(Figure::value))
                                    .words());
        }
        if (fastener instanceof Lag) {
            return "At each small cross, for lag screws: hole %s through this part; in the part below, hole %s."
                    .formatted(size(setting.clearance()), size(setting.pilot()));
        }
        return fastener instanceof Bolt bolt
                ? "At each small cross: hole " + bolt.diameter().in(style) + " through everything the bolt binds."
                : "At each small cross: a finish nail "
                        + fastener.said().orElseThrow().in(style) + " long.";
    }

    private String size(Optional<Figure<Length>> bit) {
        return bit.map(b -> b.value().in(style)).orElse("not known");
    }
}
