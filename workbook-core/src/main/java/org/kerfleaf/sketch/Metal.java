package org.kerfleaf.sketch;

/** What a fastener is made of or coated with. */
public enum Metal {
    /** Nobody said. */
    NOT_SAID("metal not said"),
    /** Plated with a thin coat of zinc. */
    PLATED("plated"),
    /** Hot-dip galvanised, a thick coat of zinc. */
    HOT_DIP_GALVANISED("hot-dip galvanised"),
    /** Stainless steel. */
    STAINLESS("stainless");

    private final String words;

    Metal(String words) {
        this.words = words;
    }

    /** The word in a sentence. */
    public String words() {
        return words;
    }
}
