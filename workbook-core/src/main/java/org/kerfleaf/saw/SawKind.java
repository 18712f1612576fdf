package org.kerfleaf.saw;

/** The saws of a workbook, in the order their settings are listed. */
public enum SawKind {
    CIRCULAR_SAW("circular saw"),
    TABLE_SAW("table saw"),
    JIGSAW("jigsaw"),
    MITRE_SAW("mitre saw");

    private final String words;

    SawKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
