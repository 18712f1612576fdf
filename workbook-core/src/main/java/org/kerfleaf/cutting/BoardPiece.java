package org.kerfleaf.cutting;

import org.kerfleaf.measure.Length;

/** What to cut from boards: a length, so many times. */
public record BoardPiece(String part, Length length, int count) {}
