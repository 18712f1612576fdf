/**
 * What a maker declared, and nothing that follows from it.
 *
 * <p>Start at {@link org.kerfleaf.sketch.Sketch}: one flat list of {@link org.kerfleaf.sketch.Declaration}s in document
 * order. Parts are keyed by name, everything else by its {@link org.kerfleaf.sketch.Origin}; parts and placings refer to
 * each other by key. All types are immutable; every wither returns a new value with the same origin. A part's sizes and
 * features are kept as the list of {@link org.kerfleaf.sketch.Trait}s said of it, in the order said.
 */
package org.kerfleaf.sketch;
