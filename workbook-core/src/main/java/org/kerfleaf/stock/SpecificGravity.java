package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/** How dense a wood is by the names of the trade, as the formulas for fasteners take it: weight oven-dry, against water. */
public final class SpecificGravity {
    private static final String NDS = "NDS 2018 tables 12.3.3A and 12.3.3B, assigned specific gravity (from memory)";

    /** Combinations of species as lumber is graded and sold by them; the longer name before the one it contains. */
    private static final Map<String, Double> ASSIGNED = new LinkedHashMap<>();

    static {
        ASSIGNED.put("douglas fir larch", 0.50);
        ASSIGNED.put("southern pine", 0.55);
        ASSIGNED.put("hem fir", 0.43);
        ASSIGNED.put("spruce pine fir", 0.42);
        ASSIGNED.put("western cedars", 0.36);
        ASSIGNED.put("redwood open grain", 0.37);
        ASSIGNED.put("redwood close grain", 0.44);
        ASSIGNED.put("red oak", 0.67);
        ASSIGNED.put("white oak", 0.73);
    }

    private SpecificGravity() {}

    /**
     * Of the wood that a name speaks of: {@code spruce-pine-fir}, {@code exterior plywood}, {@code ponderosa pine}. Where the NDS
     * assigns none the handbook's figure for clear wood at 12 % moisture stands in. Empty if the name says no wood, or several.
     */
    public static Optional<Figure<Ratio>> named(String wood) {
        Words words = Words.of(wood);
        if (words.have("osb") || words.have("oriented strand board")) {
            return Optional.of(assigned(wood, 0.50));
        }
        if (words.have("plywood")) {
            return DensityByName.OTHER_PLYWOOD.stream().anyMatch(words::have)
                    ? Optional.empty()
                    : Optional.of(assigned(wood, 0.42));
        }
        Optional<Double> sold = ASSIGNED.entrySet().stream()
                .filter(entry -> words.have(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
        return sold.map(gravity -> assigned(wood, gravity))
                .or(() -> WoodSpecies.in(words)
                        .map(species -> Figure.of(
                                Ratio.of(species.gravity()),
                                "specific gravity of clear wood at 12 % moisture",
                                species.source(),
                                given("wood", species.words()))));
    }

    private static Figure<Ratio> assigned(String wood, double gravity) {
        return Figure.of(Ratio.of(gravity), "specific gravity assigned to the wood", NDS, given("wood", wood));
    }
}
