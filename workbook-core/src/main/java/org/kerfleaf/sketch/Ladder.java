package org.kerfleaf.sketch;

/** The step that this is said in needs a ladder. @group the work */
public record Ladder(Origin origin) implements Declaration {}
