/**
 * Properties checked against many made-up cases, the same ones on every machine.
 *
 * <p>Start at {@link org.kerfleaf.testing.Property}; {@link org.kerfleaf.testing.Draw} has the cases most tests need.
 */
package org.kerfleaf.testing;
