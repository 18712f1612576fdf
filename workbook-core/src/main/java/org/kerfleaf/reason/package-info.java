/**
 * Figures that can say why: {@link org.kerfleaf.reason.Figure} is a value with the
 * {@link org.kerfleaf.reason.Reason} it follows from. Every number the plan derives is one.
 */
package org.kerfleaf.reason;
