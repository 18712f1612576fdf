package org.kerfleaf.sketch;

/** All parts are cut in the step that this is said in. @group the work */
public record CutAll(Origin origin) implements Declaration {}
