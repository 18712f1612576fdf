package org.kerfleaf.sketch;

import org.kerfleaf.measure.Length;

/** A diameter. @group shapes */
public record Across(Length length) {}
