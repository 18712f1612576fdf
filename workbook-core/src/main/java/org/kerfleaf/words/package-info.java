/** The words a cell uses, imported into every cell. Start at {@link org.kerfleaf.words.Words}. */
package org.kerfleaf.words;
