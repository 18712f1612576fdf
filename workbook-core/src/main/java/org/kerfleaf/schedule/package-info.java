/** Work hours and waiting. Start at {@link org.kerfleaf.schedule.Schedule}. */
package org.kerfleaf.schedule;
