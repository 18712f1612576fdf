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
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Trait;

/** Edges and ends that are not cut square: how far the blade tilts or the table turns, and what the short side lacks. */
final class Edges {
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
            String name = mitre.end().words() + " end, long point at "
                    + mitre.longAt().words();
            edges.add(mitre(name, said(mitre.scale()), width));
        }
        return edges;
    }

    private static Figure<Angle> said(Angle angle) {
        return Figure.of(angle, "from square, as said", Reason.THE_WORKBOOK);
    }
}
