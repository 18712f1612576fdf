package org.kerfleaf.stock;

import java.util.Optional;

/**
 * Clear wood at 12 % moisture: Wood Handbook FPL-GTR-190, tables 5-3a and 5-3b. Full names only, since "cedar" or "oak" alone
 * names several woods.
 */
enum WoodSpecies {
    DOUGLAS_FIR("douglas fir", 0.48, 1.95, Sure.SEEN),
    WESTERN_LARCH("western larch", 0.52, 1.87, Sure.SEEN),
    WESTERN_HEMLOCK("western hemlock", 0.45, 1.63, Sure.SEEN),
    ENGELMANN_SPRUCE("engelmann spruce", 0.35, 1.30, Sure.SEEN),
    PONDEROSA_PINE("ponderosa pine", 0.40, 1.29, Sure.SEEN),
    OLD_GROWTH_REDWOOD("old growth redwood", 0.40, 1.34, Sure.SEEN),
    YOUNG_GROWTH_REDWOOD("young growth redwood", 0.35, 1.10, Sure.SEEN),
    SUGAR_PINE("sugar pine", 0.36, 1.19, Sure.SEEN),
    SHORTLEAF_PINE("shortleaf pine", 0.51, 1.75, Sure.SEEN),
    WESTERN_REDCEDAR("western redcedar", 0.32, 1.11, Sure.FROM_MEMORY),
    WESTERN_RED_CEDAR("western red cedar", 0.32, 1.11, Sure.FROM_MEMORY),
    EASTERN_WHITE_PINE("eastern white pine", 0.35, 1.24, Sure.FROM_MEMORY),
    LOBLOLLY_PINE("loblolly pine", 0.51, 1.79, Sure.FROM_MEMORY),
    SITKA_SPRUCE("sitka spruce", 0.40, 1.57, Sure.FROM_MEMORY),
    WHITE_OAK("white oak", 0.68, 1.78, Sure.FROM_MEMORY),
    WHITE_ASH("white ash", 0.60, 1.74, Sure.SEEN),
    BLACK_CHERRY("black cherry", 0.50, 1.49, Sure.SEEN),
    NORTHERN_RED_OAK("northern red oak", 0.63, 1.82, Sure.FROM_MEMORY);

    private final String words;
    private final double gravity;
    private final double millionPsi;
    private final Sure sure;

    WoodSpecies(String words, double gravity, double millionPsi, Sure sure) {
        this.words = words;
        this.gravity = gravity;
        this.millionPsi = millionPsi;
        this.sure = sure;
    }

    /** The species a name speaks of; empty if none, or if it speaks of several. */
    static Optional<WoodSpecies> in(Words name) {
        return name.only(values(), species -> species.words);
    }

    String words() {
        return words;
    }

    double gravity() {
        return gravity;
    }

    double millionPsi() {
        return millionPsi;
    }

    String source() {
        return "Wood Handbook FPL-GTR-190, table 5-3 (" + sure.words() + ")";
    }
}
