package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.shape.Vector;

/**
 * Something that rain finds on the finished build.
 *
 * @param number it has in the drawing, from 1
 * @param parts the names of the parts it is on, each once
 * @param where on them, in words: {@code back edge}; empty where the parts say it
 * @param much how long all its places are together; empty for a trap
 * @param words what happens there, in one sentence
 * @param advice what would help; empty where what was said already helps
 * @param at a point of each of its places, in the build
 */
public record RainMark(
        int number,
        Kind kind,
        List<String> parts,
        String where,
        Optional<Figure<Length>> much,
        String words,
        String advice,
        List<Vector> at) {
    public RainMark {
        parts = List.copyOf(parts);
        at = List.copyOf(at);
    }

    /** What it is that rain finds. */
    public enum Kind {
        EDGE("edge facing up"),
        LEDGE("level ledge"),
        SEAM("open seam"),
        TRAP("trap"),
        DRIP("no drip groove");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Whether something should be done about it. */
    public boolean isOpen() {
        return !advice.isEmpty();
    }

    /** {@code Roof to Rake trim}, {@code Lid stile, back end}. */
    public String title() {
        String names = String.join(kind == Kind.SEAM || kind == Kind.DRIP ? " to " : ", ", parts);
        return where.isEmpty() ? names : names + ", " + where;
    }
}
