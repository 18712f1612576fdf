package org.kerfleaf.kernel.reach;

/** What a cell may reach for beyond the words, grouped as a maker would tell it. */
public enum Reach {
    FILES("files"),
    NETWORK("the network"),
    PROCESSES("other programs"),
    REFLECTION("reflection, a way around this list"),
    NATIVE("native code"),
    THREADS("threads"),
    ENVIRONMENT("the computer's settings"),
    EXIT("ending the process"),
    OTHER("other things");

    private final String words;

    Reach(String words) {
        this.words = words;
    }

    /** As it is told: <em>files</em>, <em>the network</em>. */
    public String words() {
        return words;
    }
}
