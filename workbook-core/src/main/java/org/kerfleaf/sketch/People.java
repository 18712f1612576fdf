package org.kerfleaf.sketch;

/** How many people the step needs that this is said in. @group the work */
public record People(Origin origin, int number) implements Declaration {
    /** So many people. @throws SketchException if fewer than one */
    public static People of(int number) {
        return new People(SketchRun.current().next(), SketchRun.atLeastOne("People", number));
    }
}
