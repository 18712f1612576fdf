package org.kerfleaf.sketch;

/** Something to ask for or order before the first step. @group the work */
public record Ahead(Origin origin, String what, int workingDays) implements Declaration {}
