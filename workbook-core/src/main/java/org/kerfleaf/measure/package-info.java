/**
 * Lengths, angles, areas, volumes and masses as a maker writes and reads them.
 *
 * <p>Start at {@link org.kerfleaf.measure.Length}. Lengths are counted in nanometres, so inch fractions down to
 * 1/64&nbsp;in and millimetres are both exact; everything that is not a length is a value class around one number in
 * one unit named by its accessor. {@link org.kerfleaf.measure.MeasureStyle} says how a workbook prints them.
 */
package org.kerfleaf.measure;
