/**
 * Rain on a finished build, and where its water goes.
 *
 * <p>Start at {@link org.kerfleaf.rain.RainWalk}. Rain falls straight down on the solids of {@link org.kerfleaf.shape}; its water is
 * followed over their faces until it drips to the ground or cannot go on. Millimetres, in the frame of the build: z is up. Nothing
 * here knows what a solid is made of: that a wet face is the edge of a sheet is for the plan to say.
 */
package org.kerfleaf.rain;
