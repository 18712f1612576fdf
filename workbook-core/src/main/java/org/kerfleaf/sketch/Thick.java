package org.kerfleaf.sketch;

import org.kerfleaf.measure.Length;

/** A thickness. */
public record Thick(Length length) {}
