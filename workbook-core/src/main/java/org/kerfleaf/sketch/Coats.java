package org.kerfleaf.sketch;

/** How many coats. */
public record Coats(int number) {}
