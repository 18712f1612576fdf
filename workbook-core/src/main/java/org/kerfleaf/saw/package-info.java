/**
 * How the saws are set. Angles are from square, as saws read.
 *
 * <p>Start at {@link org.kerfleaf.saw.SawSetUps}, which groups cuts so that each setting is made once;
 * {@link org.kerfleaf.saw.SawAngles} has the angles and depths, {@link org.kerfleaf.saw.Openings} and
 * {@link org.kerfleaf.saw.Routing} what jigsaw, plunge cut and router need, {@link org.kerfleaf.saw.SawSetting} is what the
 * plan lists.
 */
package org.kerfleaf.saw;
