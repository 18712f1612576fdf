package org.kerfleaf.saw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.measure.Length;
import org.kerfleaf.saw.SawSetting.Guide;
import org.kerfleaf.saw.SawSetting.NumberedCut;

/** The numbered cuts of all sheets, by thickness and then by the size they are set to, so that each size is set once. */
public final class SheetGuides {
    private final Straightedges straightedges;
    private final Map<Length, Map<Length, List<NumberedCut>>> cuts = new LinkedHashMap<>();

    SheetGuides(Straightedges straightedges) {
        this.straightedges = straightedges;
    }

    /** One cut of a sheet so thick, set so far from the edge of the piece in hand. */
    public void add(Length thickness, Length set, NumberedCut cut) {
        cuts.computeIfAbsent(thickness, t -> new LinkedHashMap<>())
                .computeIfAbsent(set, s -> new ArrayList<>())
                .add(cut);
    }

    /** For sheets so thick, in the order of each size's first cut. */
    List<Guide> of(Length thickness) {
        return cuts.getOrDefault(thickness, Map.of()).entrySet().stream()
                .map(set -> new Guide(set.getKey(), set.getValue(), straightedges.fromEdge(set.getKey())))
                .toList();
    }
}
