/**
 * Work and waiting, and on which day which step falls. Start at {@link org.kerfleaf.schedule.Schedule}; {@link
 * org.kerfleaf.schedule.Net} finds the times of work that must come one after the other, {@link org.kerfleaf.schedule.Diary}
 * its days. Times count from the start of the work; no clock is asked.
 */
package org.kerfleaf.schedule;
