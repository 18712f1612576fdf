package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.saw.CompoundMitre;
import org.kerfleaf.sketch.PartKind;

/**
 * A part as it is cut.
 *
 * @param letter its mark on drawings, labels and lists; I and O are skipped
 * @param name its name in the workbook, which is its identity
 * @param kind panel, board or pane
 * @param count how many are cut
 * @param pair whether half of them are the mirror image of the other half
 * @param stock the name of the stock it is cut from
 * @param material what the stock is, for people: {@code exterior plywood, sold as 3/4 in}
 * @param length along the grain, of the rectangle (or board) it is cut from, long point to long point
 * @param width across the grain
 * @param thickness by caliper, or dressed
 * @param grainMatters whether the grain may not turn on the sheet
 * @param area of one face, openings and holes taken out, of the outline with its slopes
 * @param edges edges that are not square
 * @param then what is done to it after cutting to size, in words: {@code opening “window” 13 x 15 in}
 * @param takenFromTheWork what to measure on the piece before cutting, if the list's size is not to be trusted
 * @param weight of one, if the stock's density is known
 */
public record PlannedPart(
        String letter,
        String name,
        PartKind kind,
        int count,
        boolean pair,
        String stock,
        String material,
        Figure<Length> length,
        Figure<Length> width,
        Figure<Length> thickness,
        boolean grainMatters,
        Figure<Area> area,
        List<PlannedEdge> edges,
        List<String> then,
        Optional<String> takenFromTheWork,
        Optional<Figure<Mass>> weight) {

    /**
     * An edge or end that is not cut square.
     *
     * @param name which edge, in words: {@code top}, {@code ridge}, {@code upper end}
     * @param cut bevel (blade tilted), mitre (table turned) or both
     * @param angle from square: the blade's tilt of a bevel, the table's scale of a mitre or compound mitre
     * @param tilt of the blade, where the table is turned too
     * @param shorter what the short face or short point lacks against the long one
     */
    public record PlannedEdge(
            String name, Cut cut, Figure<Angle> angle, Optional<Figure<Angle>> tilt, Figure<Length> shorter) {
        /** How the saw makes it. */
        public enum Cut {
            BEVEL("bevel"),
            MITRE("mitre"),
            COMPOUND("compound mitre");

            private final String words;

            Cut(String words) {
                this.words = words;
            }

            public String words() {
                return words;
            }
        }

        /** The blade tilted, the table square. */
        public static PlannedEdge bevel(String name, Figure<Angle> tilt, Figure<Length> shorter) {
            return new PlannedEdge(name, Cut.BEVEL, tilt, Optional.empty(), shorter);
        }

        /** The table turned, the blade upright. */
        public static PlannedEdge mitre(String name, Figure<Angle> scale, Figure<Length> shorter) {
            return new PlannedEdge(name, Cut.MITRE, scale, Optional.empty(), shorter);
        }

        /** The table turned and the blade tilted. */
        public static PlannedEdge compound(String name, CompoundMitre mitre, Figure<Length> shorter) {
            return new PlannedEdge(name, Cut.COMPOUND, mitre.mitre(), Optional.of(mitre.tilt()), shorter);
        }

        /** {@code 30°}; of a compound mitre {@code 8.5°, tilt 28.88°}. */
        public String angles(MeasureStyle style) {
            return angle.value().in(style)
                    + tilt.map(t -> ", blade tilted " + t.value().in(style)).orElse("");
        }
    }
}
