package org.kerfleaf.sketch;

/** How many coats. @group sealing and paint */
public record Coats(int number) {}
