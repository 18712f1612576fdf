/** Paint, caulk and glue: areas, lengths, cans. Start at {@link org.kerfleaf.finish.FinishLine}. */
package org.kerfleaf.finish;
