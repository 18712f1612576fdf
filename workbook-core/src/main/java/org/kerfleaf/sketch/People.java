package org.kerfleaf.sketch;

/** How many people the step needs that this is said in. */
public record People(Origin origin, int number) implements Declaration {
    public static People of(int number) {
        return new People(SketchRun.current().next(), SketchRun.atLeastOne("People", number));
    }
}
