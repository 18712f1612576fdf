package org.kerfleaf.sketch;

/** What a fastener is made of or coated with. */
public enum Metal {
    NOT_SAID("metal not said"),
    PLATED("plated"),
    HOT_DIP_GALVANISED("hot-dip galvanised"),
    STAINLESS("stainless");

    private final String words;

    Metal(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
