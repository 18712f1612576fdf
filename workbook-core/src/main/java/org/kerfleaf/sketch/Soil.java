package org.kerfleaf.sketch;

/** The ground, by the classes of IBC table 1806.2. @group the place */
public enum Soil {
    /** Gravel. @example dig(across("10 in"), deep("44 in")).tampedBack(GRAVEL) */
    GRAVEL,
    /** Sand. @example dig(across("10 in"), deep("44 in")).tampedBack(SAND) */
    SAND,
    /** Clay. @example dig(across("10 in"), deep("44 in")).tampedBack(CLAY) */
    CLAY
}
