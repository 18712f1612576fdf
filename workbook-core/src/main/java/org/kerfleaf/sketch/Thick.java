package org.kerfleaf.sketch;

import org.kerfleaf.measure.Length;

/** A thickness. @group shapes */
public record Thick(Length length) {}
