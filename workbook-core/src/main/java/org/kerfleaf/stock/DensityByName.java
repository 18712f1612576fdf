package org.kerfleaf.stock;

import static org.kerfleaf.reason.Given.given;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.reason.Figure;

/** Finds a density by the words in a stock's name. */
final class DensityByName {
    private static final String PANEL_WEIGHTS = "APA panel weight table, ± 15 % for real sheets (seen in a copy)";
    private static final double WATER = 62.4;

    /** Sheets of these words are not the softwood plywood of the weight table. */
    static final List<String> OTHER_PLYWOOD =
            List.of("birch", "beech", "hardwood", "okoume", "poplar", "maple", "oak", "bamboo", "mahogany", "marine");

    private DensityByName() {}

    static Optional<Figure<Density>> of(String stock) {
        Words words = Words.of(stock);
        if (words.have("plywood")) {
            return OTHER_PLYWOOD.stream().anyMatch(words::have) ? Optional.empty() : Optional.of(plywood(stock));
        }
        if (words.have("osb") || words.have("oriented strand board")) {
            return Optional.of(osb(stock));
        }
        if (words.have("aluminium") || words.have("aluminum")) {
            return Optional.of(Figure.of(
                    Density.ofKilogramsPerCubicMetre(2700),
                    "aluminium weighs 2.7 kg in a litre",
                    "handbook value (from memory)",
                    given("stock", stock)));
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
        return WoodSpecies.in(words)
                .map(wood -> Figure.of(
                        Density.ofPoundsPerCubicFoot(WATER * wood.gravity() * 1.12),
                        "62.4 lb/ft³ times the wood's specific gravity times 1.12, at 12 % moisture",
                        wood.source(),
                        given("wood", wood.words()),
                        given("specific gravity", Ratio.of(wood.gravity()))));
    }
}
