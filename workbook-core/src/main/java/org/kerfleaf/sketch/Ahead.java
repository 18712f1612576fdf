package org.kerfleaf.sketch;

/** Something to ask for or order before the first step. @group the work */
public record Ahead(Origin origin, String what, int workingDays) implements Declaration {
    /** @throws SketchException if it is not a day or more before */
    public Ahead {
        SketchRun.atLeastOne("Working days", workingDays);
    }
}
