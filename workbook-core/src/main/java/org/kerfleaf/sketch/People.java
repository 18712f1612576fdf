package org.kerfleaf.sketch;

/** How many people the step needs that this is said in. */
public record People(Origin origin, int number) implements Declaration {}
