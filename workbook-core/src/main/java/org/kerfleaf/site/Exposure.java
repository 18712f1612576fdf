package org.kerfleaf.site;

/** How open the ground is to the wind, by ASCE 7-16 26.7, with the constants of its table 26.11-1. */
public enum Exposure {
    /** Towns, suburbs, woods. */
    B("built up or wooded", 7.0, 1200),
    /** Open ground with few obstructions. */
    C("open ground", 9.5, 900),
    /** Flat ground or water, unbroken. */
    D("shore or flats", 11.5, 700);

    private final String words;
    private final double alpha;
    private final double gradientFeet;

    Exposure(String words, double alpha, double gradientFeet) {
        this.words = words;
        this.alpha = alpha;
        this.gradientFeet = gradientFeet;
    }

    public String words() {
        return words;
    }

    /** Kz at a height above grade; under 15 ft it is that of 15 ft. */
    double kz(double feet) {
        return 2.01 * StrictMath.pow(Math.max(feet, 15) / gradientFeet, 2 / alpha);
    }
}
