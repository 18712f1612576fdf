/** What it costs as bought and as used, and against a bought kit. Start at {@link org.kerfleaf.cost.CostSheet}. */
package org.kerfleaf.cost;
