package org.kerfleaf.sketch;

/** The ground, by the classes of IBC table 1806.2. */
public enum Soil {
    GRAVEL,
    SAND,
    CLAY
}
