/** Checks: each a rule with a name, inputs, result, margin, advice and its source. Start at {@link org.kerfleaf.rules.Check}. */
package org.kerfleaf.rules;
