package org.kerfleaf.sketch;

/**
 * Something in the sketch that does not make sense.
 *
 * @param origin the cell that said it
 * @param words what is wrong, with the values, and what would be right
 */
public record Problem(Origin origin, String words) {}
