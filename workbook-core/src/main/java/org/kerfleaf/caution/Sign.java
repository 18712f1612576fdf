package org.kerfleaf.caution;

/** Mandatory signs of ISO 7010 (white on a blue disc), meanings in own words. Codes seen in a copy. */
public enum Sign {
    M003("Ear protection"),
    M004("Eye protection"),
    M008("Sturdy shoes"),
    M009("Gloves"),
    M011("Wash your hands"),
    M016("Mask"),
    M021("Unplug before you change anything");

    private final String words;

    Sign(String words) {
        this.words = words;
    }

    /** What to do, as printed beside the sign. */
    public String words() {
        return words;
    }
}
