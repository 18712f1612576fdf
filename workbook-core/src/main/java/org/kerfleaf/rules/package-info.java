/**
 * Checks: each a rule with a name, inputs, result, margin, advice and its source.
 *
 * <p>A check is a static function with plain inputs, in the class of its part of the trade: {@link
 * org.kerfleaf.rules.StockChecks}, {@link org.kerfleaf.rules.SawChecks}, {@link org.kerfleaf.rules.JointChecks}, {@link
 * org.kerfleaf.rules.PartChecks}, {@link org.kerfleaf.rules.DoorChecks}, {@link org.kerfleaf.rules.GlazingChecks}, {@link
 * org.kerfleaf.rules.SiteChecks}, {@link org.kerfleaf.rules.WeatherChecks} and their neighbours. {@link org.kerfleaf.rules.Check} is what the plan lists. The first argument is always what
 * the rule is held against; empty if the rule's name says it all. To add a check: a function, its rule in the Javadoc, a test
 * on both sides of the line.
 */
package org.kerfleaf.rules;
