/** What it costs as bought and as used, and against a bought kit. Start at {@link org.kerfleaf.cost.Cost}. */
package org.kerfleaf.cost;
