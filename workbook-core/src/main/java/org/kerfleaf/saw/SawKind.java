package org.kerfleaf.saw;

/** The tools whose settings are listed, in that order, and which face is up on each. */
public enum SawKind {
    /** Its teeth leave the wood upward, so the face below stays clean. */
    CIRCULAR_SAW("circular saw", "good face down"),
    /** Its teeth enter the wood from above. */
    TABLE_SAW("table saw", "good face up"),
    /** As a circular saw, unless its blade is made to cut on the down stroke. */
    JIGSAW("jigsaw", "good face down, unless the blade cuts on the down stroke"),
    /** Its teeth enter the wood from above. */
    MITRE_SAW("mitre saw", "good face up"),
    /** It lies on the face that is cut into. */
    ROUTER("router", "the face that is cut into up");

    private final String words;
    private final String faceUp;

    SawKind(String words, String faceUp) {
        this.words = words;
        this.faceUp = faceUp;
    }

    public String words() {
        return words;
    }

    /** Which face is up: {@code good face down}. */
    public String faceUp() {
        return faceUp;
    }
}
