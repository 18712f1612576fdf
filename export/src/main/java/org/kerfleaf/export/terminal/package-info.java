/**
 * The plan as plain text for a terminal. Start at {@link org.kerfleaf.export.terminal.TerminalText}.
 *
 * <p>No line is longer than asked for, there are no colours and no control signs; the text can be piped, searched and
 * kept. Every section begins with a heavy rule that a saw has passed through: the slot stands as far along the rule as
 * the section stands in the whole. In tables wholes stand right and fractions left, so that sizes compare at a glance.
 */
package org.kerfleaf.export.terminal;
