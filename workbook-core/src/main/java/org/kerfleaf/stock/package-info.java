/**
 * What shops sell: dressed sizes, sheet thicknesses and their limits, densities, glazing. Each table names its standard.
 *
 * <p>Start at {@link org.kerfleaf.stock.DressedSize} for lumber, {@link org.kerfleaf.stock.SheetThickness} and
 * {@link org.kerfleaf.stock.SheetTolerance} for sheets, {@link org.kerfleaf.stock.Density} for weights and
 * {@link org.kerfleaf.stock.PaneSize} for panes. What no table holds is empty, never guessed.
 */
package org.kerfleaf.stock;
