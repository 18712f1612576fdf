/**
 * What the program and its child process say to each other: frames of a length and packed records. Start at
 * {@link org.kerfleaf.kernel.wire.Channel}; {@link org.kerfleaf.kernel.wire.Request} goes to the child,
 * {@link org.kerfleaf.kernel.wire.Report} comes back.
 */
package org.kerfleaf.kernel.wire;
