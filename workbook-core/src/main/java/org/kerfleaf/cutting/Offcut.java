package org.kerfleaf.cutting;

import org.kerfleaf.measure.Length;

/**
 * A rectangle that is left over.
 *
 * @param keep whether it is large enough to keep for another job
 */
public record Offcut(Length x, Length y, Length length, Length width, boolean keep) {}
