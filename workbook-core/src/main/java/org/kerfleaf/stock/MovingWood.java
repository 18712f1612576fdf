package org.kerfleaf.stock;

import java.util.Optional;

/**
 * How much wood moves across its grain: shrinkage from green to oven-dry (Wood Handbook FPL-GTR-190, table 4-3) and the
 * coefficients of dimensional change for each percent of moisture between 6 and 14 % (table 13-5), radial and tangential.
 *
 * <p>The coefficients are the table's own five places. Where the shrinkage is known they are what it gives by
 * {@code C = (S/F) / (100 − S·(1 − 10/F))}, F the fibre saturation, but for green ash, which is therefore left out. Full names
 * only, since "cedar" or "oak" alone names several woods.
 */
enum MovingWood {
    WESTERN_REDCEDAR("western redcedar", 2.4, 5.0, 0.00111, 0.00234, 22, Sure.FROM_MEMORY),
    WESTERN_RED_CEDAR("western red cedar", 2.4, 5.0, 0.00111, 0.00234, 22, Sure.FROM_MEMORY),
    DOUGLAS_FIR("douglas fir", 4.8, 7.6, 0.00165, 0.00267, 30, Sure.SEEN),
    OLD_GROWTH_REDWOOD("old growth redwood", 2.6, 4.4, 0.00120, 0.00205, 22, Sure.FROM_MEMORY),
    YOUNG_GROWTH_REDWOOD("young growth redwood", 2.2, 4.9, 0.00101, 0.00229, 22, Sure.FROM_MEMORY),
    EASTERN_WHITE_PINE("eastern white pine", 2.1, 6.1, 0.00071, 0.00212, 30, Sure.FROM_MEMORY),
    PONDEROSA_PINE("ponderosa pine", 3.9, 6.2, 0.00133, 0.00216, 30, Sure.FROM_MEMORY),
    LOBLOLLY_PINE("loblolly pine", 4.8, 7.4, 0.00165, 0.00259, 30, Sure.FROM_MEMORY),
    BALDCYPRESS("baldcypress", 3.8, 6.2, 0.00130, 0.00216, 30, Sure.FROM_MEMORY),
    SITKA_SPRUCE("sitka spruce", 4.3, 7.5, 0.00148, 0.00263, 30, Sure.FROM_MEMORY),
    WHITE_FIR("white fir", 3.3, 7.0, 0.00112, 0.00245, 30, Sure.FROM_MEMORY),
    NORTHERN_WHITE_CEDAR("northern white cedar", 2.2, 4.9, 0.00101, 0.00229, 22, Sure.FROM_MEMORY),
    EASTERN_REDCEDAR("eastern redcedar", 3.1, 4.7, 0.00106, 0.00162, 30, Sure.FROM_MEMORY),
    INCENSE_CEDAR("incense cedar", 3.3, 5.2, 0.00112, 0.00180, 30, Sure.FROM_MEMORY),
    PORT_ORFORD_CEDAR("port orford cedar", 4.6, 6.9, 0.00158, 0.00241, 30, Sure.FROM_MEMORY),
    YELLOW_CEDAR("yellow cedar", 2.8, 6.0, 0.00095, 0.00208, 30, Sure.FROM_MEMORY),
    WHITE_OAK("white oak", 5.2, 10.2, 0.00180, 0.00365, 30, Sure.SEEN),
    RED_OAK("red oak", 0, 0, 0.00158, 0.00369, 30, Sure.SEEN),
    BLACK_WALNUT("black walnut", 5.5, 7.8, 0.00190, 0.00274, 30, Sure.SEEN),
    BLACK_CHERRY("black cherry", 3.7, 7.1, 0.00126, 0.00248, 30, Sure.SEEN),
    WHITE_ASH("white ash", 4.9, 7.8, 0.00169, 0.00274, 30, Sure.SEEN),
    SWEETGUM("sweetgum", 5.3, 10.2, 0.00183, 0.00365, 30, Sure.SEEN),
    QUAKING_ASPEN("quaking aspen", 3.5, 6.7, 0.00119, 0.00234, 30, Sure.SEEN),
    AMERICAN_BEECH("american beech", 5.5, 11.9, 0.00190, 0.00431, 30, Sure.SEEN);

    private final String words;
    private final double radialShrinkage;
    private final double tangentialShrinkage;
    private final double radial;
    private final double tangential;
    private final double saturation;
    private final Sure sure;

    MovingWood(
            String words,
            double radialShrinkage,
            double tangentialShrinkage,
            double radial,
            double tangential,
            double saturation,
            Sure sure) {
        this.words = words;
        this.radialShrinkage = radialShrinkage;
        this.tangentialShrinkage = tangentialShrinkage;
        this.radial = radial;
        this.tangential = tangential;
        this.saturation = saturation;
        this.sure = sure;
    }

    /** The wood a name speaks of; empty if none, or if it speaks of several. */
    static Optional<MovingWood> in(Words name) {
        return name.only(values(), wood -> wood.words);
    }

    String words() {
        return words;
    }

    /** For each percent of moisture between 6 and 14 %. */
    double coefficient(boolean alongTheRings) {
        return alongTheRings ? tangential : radial;
    }

    /** From green to oven-dry, in percent; empty where the tables list none for this wood. */
    Optional<Double> shrinkage(boolean alongTheRings) {
        double shrinkage = alongTheRings ? tangentialShrinkage : radialShrinkage;
        return shrinkage > 0 ? Optional.of(shrinkage) : Optional.empty();
    }

    /** The moisture in percent above which it moves no more. */
    double saturation() {
        return saturation;
    }

    String source() {
        return "Wood Handbook FPL-GTR-190, tables 4-3 and 13-5 (" + sure.words() + ")";
    }
}
