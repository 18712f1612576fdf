/** What can hurt somebody, and the usual words against it. Start at {@link org.kerfleaf.caution.Cautions}. */
package org.kerfleaf.caution;
