package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.saw.CompoundMitre;
import org.kerfleaf.saw.SawAngles;
import org.kerfleaf.sketch.Meets;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Trait;

/** Edges and ends that are not cut square: how far the blade tilts or the table turns, and what the short side lacks. */
final class Edges {
    /** A cut that is neither tilted nor turned. */
    static final Figure<Angle> SQUARE = Figure.of(Angle.ZERO, "a square cut", Reason.GEOMETRY);

    private Edges() {}

    /** The blade tilted. */
    static PlannedEdge bevel(String name, Figure<Angle> tilt, Length thickness) {
        return PlannedEdge.bevel(name, tilt, SawAngles.bevelShorter(thickness, tilt.value()));
    }

    /** The table turned. */
    static PlannedEdge mitre(String name, Figure<Angle> scale, Length width) {
        return PlannedEdge.mitre(name, scale, SawAngles.mitreShorter(width, scale.value()));
    }

    /** Both at once. */
    static PlannedEdge compound(String name, CompoundMitre mitre, Length width) {
        return PlannedEdge.compound(
                name, mitre, SawAngles.mitreShorter(width, mitre.mitre().value()));
    }

    /** What a part's own words saw off square. */
    static List<PlannedEdge> said(Part part, Length width, Length thickness) {
        List<PlannedEdge> edges = new ArrayList<>();
        for (Trait.Bevelled bevel : part.traits(Trait.Bevelled.class)) {
            String name =
                    bevel.edge().words() + ", long point " + bevel.longOn().words();
            edges.add(bevel(name, said(bevel.tilt()), thickness));
        }
        for (Trait.Mitred mitre : part.traits(Trait.Mitred.class)) {
            edges.add(mitred(mitre, width, thickness));
        }
        return edges;
    }

    private static PlannedEdge mitred(Trait.Mitred mitre, Length width, Length thickness) {
        String end = mitre.end().words() + " end, long point ";
        String at = "at " + mitre.longAt().words();
        CompoundMitre cut = cut(mitre.meets());
        if (cut.tilt().value().isZero()) {
            return mitre(where(mitre.meets()) + end + at, cut.mitre(), width);
        }
        return cut.mitre().value().isZero()
                ? bevel(end + "outside", cut.tilt(), thickness)
                : compound(end + at + ", outside", cut, width);
    }

    private static String where(Meets meets) {
        return switch (meets.kind()) {
            case POST -> "at the post: ";
            case UNDERSIDE -> "under what it carries: ";
            default -> "";
        };
    }

    /** Scale and tilt for an end, by what it meets. */
    static CompoundMitre cut(Meets meets) {
        return switch (meets.kind()) {
            case SCALE -> upright(said(meets.one()));
            case CORNER ->
                meets.other().isZero()
                        ? upright(SawAngles.mitreScale(meets.one()))
                        : CompoundMitre.ofCorner(Angle.RIGHT.minus(meets.other()), meets.one());
            case PEAK -> upright(SawAngles.peakBevel(meets.one(), meets.other()));
            case EAVE -> new CompoundMitre(SQUARE, SawAngles.eaveTilt());
            case PLUMB_EAVE -> new CompoundMitre(SawAngles.plumbEave(meets.one()), SawAngles.eaveTilt());
            case POST -> upright(SawAngles.braceAtPost(meets.one()));
            case UNDERSIDE -> upright(SawAngles.braceUnder(meets.one()));
        };
    }

    private static CompoundMitre upright(Figure<Angle> scale) {
        return new CompoundMitre(scale, SQUARE);
    }

    private static Figure<Angle> said(Angle angle) {
        return Figure.of(angle, "from square, as said", Reason.THE_WORKBOOK);
    }
}
