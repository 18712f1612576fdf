/**
 * What cells reach for beyond the words. Start at {@link org.kerfleaf.kernel.reach.ReachList}, the list of what asks for
 * nothing; {@link org.kerfleaf.kernel.reach.Reached} is what a workbook reaches for beyond it. A list is no jail: it says what
 * the code names, and whoever allows a workbook lets it do what any program can.
 */
package org.kerfleaf.kernel.reach;
