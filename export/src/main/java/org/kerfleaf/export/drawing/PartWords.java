package org.kerfleaf.export.drawing;

import java.util.List;
import org.kerfleaf.joint.GuideLine;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.shape.Cut;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.OutlineEdge;
import org.kerfleaf.shape.Pocket;
import org.kerfleaf.shape.Vector;

/** What a part's marking drawing says below it: face, hand, holes, depths and bevels. */
final class PartWords {
    private static final Style STYLE = Style.CAPTION;
    private static final double SAME = 0.1;

    private PartWords() {}

    /** @param unsaid guide lines that are not named in the drawing */
    static Rich of(Marking marking, List<GuideLine> unsaid, Lettering lettering) {
        MeasureStyle measures = lettering.measures();
        Rich words = Rich.of(marking.faceUp(), STYLE);
        if (!marking.hand().isEmpty()) {
            words = words.plus(" " + marking.hand(), STYLE);
        }
        Outline outline = marking.solid().outline();
        for (String name : outline.openings()) {
            if (isHole(outline.opening(name))) {
                Length across = outline.opening(name).wide();
                words = words.plus(" Hole, " + name + ": ", STYLE)
                        .plusNearest(across, measures, STYLE)
                        .plus(".", STYLE);
            }
        }
        for (Pocket pocket : marking.solid().pockets()) {
            words = words.plus(" From the " + pocket.side() + ", " + pocket.name() + ": ", STYLE)
                    .plusNearest(pocket.depth(), measures, STYLE)
                    .plus(" deep.", STYLE);
        }
        for (Cut cut : marking.solid().cuts()) {
            words = words.plus(" " + cut.name() + " bevelled " + cut.tilt().in(measures) + " from square.", STYLE);
        }
        for (GuideLine line : unsaid) {
            boolean level = Math.abs(line.from().y() - line.to().y()) < SAME;
            Vector low = marking.outline().bounds().low();
            double at = level ? line.from().y() - low.y() : line.from().x() - low.x();
            words = words.plus(level ? " Line " : " Upright line ", STYLE)
                    .plusNearest(Length.ofMillimetres(at), measures, STYLE)
                    .plus(level ? " up: " : " from the left: ", STYLE)
                    .plus(line.words() + ".", STYLE);
        }
        return marking.drilling().isEmpty() ? words : words.plus(" " + marking.drilling(), STYLE);
    }

    /** Whether an opening is a full circle. */
    static boolean isHole(Outline opening) {
        double turned = opening.edges().stream().mapToDouble(OutlineEdge::sweep).sum();
        return opening.edges().stream().allMatch(OutlineEdge::isArc) && Math.abs(turned - 2 * StrictMath.PI) < 1e-6;
    }
}
