package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;

/**
 * What is painted face by face, by when, and what stays bare.
 *
 * @param faces every face with its coats, in the order of the coats
 * @param order by when a face is to be painted, for every face that a later step closes in
 * @param bare faces that are glued after their piece was painted
 */
public record Paintwork(List<CoatedFace> faces, List<PaintBy> order, List<Bare> bare) {
    /** Nothing is painted. */
    public static final Paintwork NONE = new Paintwork(List.of(), List.of(), List.of());

    public Paintwork {
        faces = List.copyOf(faces);
        order = List.copyOf(order);
        bare = List.copyOf(bare);
    }

    /**
     * One face of a part, coated.
     *
     * @param step it is coated in, 0 above the first
     * @param face in words: {@code inside face}, {@code cut ends}
     * @param pieces how many pieces of the part have it
     * @param area of all of them together, one coat
     * @param with the paints, first coat first
     * @param coats how many coats of all paints together
     */
    public record CoatedFace(
            int step, String part, String face, int pieces, Figure<Area> area, List<String> with, int coats) {
        public CoatedFace {
            with = List.copyOf(with);
        }
    }

    /**
     * By when a face is to be painted.
     *
     * @param closedIn the step after which no brush comes to it
     * @param by what is put in place in that step and closes it
     * @param painted the step it is painted in, as said; empty if no coat comes to it
     * @param inTime whether that is before it is closed in
     */
    public record PaintBy(String part, String face, int closedIn, String by, OptionalInt painted, boolean inTime) {
        /** {@code before step 7, in which Roof closes it in}. */
        public String when() {
            return closedIn > 0
                    ? "before step %d, in which %s closes it in".formatted(closedIn, by)
                    : "before %s closes it in".formatted(by);
        }

        /** {@code painted in step 6}, {@code painted in step 9, too late}, {@code no coat comes to it}. */
        public String done() {
            String late = inTime ? "" : ", too late";
            return painted.isEmpty()
                    ? "no coat comes to it"
                    : (painted.getAsInt() > 0 ? "painted in step " + painted.getAsInt() : "painted") + late;
        }
    }

    /**
     * A face that is glued after its piece was painted, and is kept bare for it.
     *
     * @param glued the step in which it is glued
     * @param to what
     * @param area of all its contacts
     * @param across how wide the widest of them is
     * @param painted the coat's step
     * @param masked whether the coat was said to leave it bare; empty for an edge, which no coat is counted on
     */
    public record Bare(
            String part,
            String face,
            int painted,
            int glued,
            List<String> to,
            Area area,
            Length across,
            Optional<Boolean> masked) {
        public Bare {
            to = List.copyOf(to);
        }

        /** {@code until Roof is glued to it in step 7, strips up to 23/32 in wide}. */
        public String until(MeasureStyle style) {
            return "until %s is glued to it%s, strips up to %s wide"
                    .formatted(String.join(", ", to), glued > 0 ? " in step " + glued : "", across.in(style));
        }
    }
}
