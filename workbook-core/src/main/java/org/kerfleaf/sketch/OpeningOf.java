package org.kerfleaf.sketch;

/** An opening of a part, by name. */
public record OpeningOf(String part, String opening) {}
