package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/** Finds a density by the words in a stock's name. */
final class DensityByName {
    private static final String PANEL_WEIGHTS = "APA panel weight table, ± 15 % for real sheets (seen in a copy)";
    private static final String WOOD = "Wood Handbook FPL-GTR-190, table 5-3 and chapter 4";
    private static final double WATER = 62.4;

    /** Sheets of these words are not the softwood plywood of the weight table. */
    private static final List<String> OTHER_PLYWOOD =
            List.of("birch", "beech", "hardwood", "okoume", "poplar", "maple", "oak", "bamboo", "mahogany", "marine");

    /** Specific gravity at 12 % moisture by species; full names only, since "cedar" or "oak" alone names several. */
    private static final Map<String, Species> SPECIES = Map.ofEntries(
            species("douglas fir", 0.48, Sure.SEEN),
            species("western larch", 0.52, Sure.SEEN),
            species("western hemlock", 0.45, Sure.SEEN),
            species("engelmann spruce", 0.35, Sure.SEEN),
            species("ponderosa pine", 0.40, Sure.SEEN),
            species("old growth redwood", 0.40, Sure.SEEN),
            species("young growth redwood", 0.35, Sure.SEEN),
            species("sugar pine", 0.36, Sure.SEEN),
            species("shortleaf pine", 0.51, Sure.SEEN),
            species("western redcedar", 0.32, Sure.FROM_MEMORY),
            species("western red cedar", 0.32, Sure.FROM_MEMORY),
            species("eastern white pine", 0.35, Sure.FROM_MEMORY),
            species("loblolly pine", 0.51, Sure.FROM_MEMORY),
            species("sitka spruce", 0.40, Sure.SEEN),
            species("white oak", 0.68, Sure.FROM_MEMORY),
            species("white ash", 0.60, Sure.SEEN),
            species("black cherry", 0.50, Sure.SEEN),
            species("northern red oak", 0.63, Sure.FROM_MEMORY));

    private DensityByName() {}

    private enum Sure {
        SEEN(" (seen in a copy)"),
        FROM_MEMORY(" (from memory)");

        private final String words;

        Sure(String words) {
            this.words = words;
        }
    }

    private record Species(double gravity, Sure sure) {}

    private static Map.Entry<String, Species> species(String name, double gravity, Sure sure) {
        return Map.entry(name, new Species(gravity, sure));
    }

    static Optional<Figure<Density>> of(String stock) {
        Words words = Words.of(stock);
        if (words.have("plywood")) {
            return OTHER_PLYWOOD.stream().anyMatch(words::have) ? Optional.empty() : Optional.of(plywood(stock));
        }
        if (words.have("osb") || words.have("oriented strand board")) {
            return Optional.of(osb(stock));
        }
        Optional<GlazingKind> glazing = GlazingKind.named(stock);
        return glazing.isPresent() ? glazing.map(GlazingKind::density) : wood(words);
    }

    private static Figure<Density> plywood(String stock) {
        return Figure.of(
                Density.ofPoundsPerCubicFoot(36),
                "softwood plywood weighs 3.0 lb on a square foot for each inch of thickness",
                PANEL_WEIGHTS,
                given("stock", stock));
    }

    private static Figure<Density> osb(String stock) {
        return Figure.of(
                Density.ofPoundsPerCubicFoot(3.4 * 12),
                "oriented strand board weighs 3.3 to 3.5 lb on a square foot for each inch of thickness; the middle is taken",
                PANEL_WEIGHTS,
                given("stock", stock));
    }

    private static Optional<Figure<Density>> wood(Words words) {
        return SPECIES.entrySet().stream()
                .filter(species -> words.have(species.getKey()))
                .min(Map.Entry.comparingByKey())
                .map(species -> ofSpecies(species.getKey(), species.getValue()));
    }

    private static Figure<Density> ofSpecies(String name, Species wood) {
        return new Figure<>(
                Density.ofPoundsPerCubicFoot(WATER * wood.gravity * 1.12),
                new Reason(
                        "62.4 lb/ft³ times the wood's specific gravity times 1.12, at 12 % moisture",
                        List.of(given("wood", name), given("specific gravity", Ratio.of(wood.gravity))),
                        WOOD + wood.sure.words));
    }
}
