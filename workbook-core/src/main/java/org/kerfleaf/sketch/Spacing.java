package org.kerfleaf.sketch;

import org.kerfleaf.measure.Length;

/** How far apart fasteners stand at most. @group joints */
public record Spacing(Length atMost) {}
