/**
 * Bars, painted on the drawing package's ink: horizontal, longest first, told apart by hatching, the value printed at the
 * right. Start at {@link org.kerfleaf.export.chart.Bars} and {@link org.kerfleaf.export.chart.SheetUse}.
 */
package org.kerfleaf.export.chart;
