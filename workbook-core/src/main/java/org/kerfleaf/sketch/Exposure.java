package org.kerfleaf.sketch;

/** How open the ground is to the wind: surface roughness B, C and D of ASCE 7-16 26.7. @group the place */
public enum Exposure {
    /** Towns, suburbs, woods. @example site().wind("115 mph", BUILT_UP) */
    BUILT_UP("built up or wooded"),
    /** Open ground with few obstructions. @example site().wind("115 mph", OPEN_GROUND) */
    OPEN_GROUND("open ground"),
    /** Flat ground or water, unbroken. @example site().wind("115 mph", SHORE) */
    SHORE("shore or flats");

    private final String words;

    Exposure(String words) {
        this.words = words;
    }

    /** As a sentence says it. */
    public String words() {
        return words;
    }
}
