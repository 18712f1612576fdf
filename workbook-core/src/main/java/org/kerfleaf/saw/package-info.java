/** How the saws are set. Start at {@link org.kerfleaf.saw.SawSetting}. Angles are from square, as saws read. */
package org.kerfleaf.saw;
