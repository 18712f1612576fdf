package org.kerfleaf.sketch;

import org.kerfleaf.measure.Length;

/** A diameter. */
public record Across(Length length) {}
