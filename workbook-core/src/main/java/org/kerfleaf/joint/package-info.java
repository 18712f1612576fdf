/**
 * Fasteners: how thick and how long, how many, what holes they need, how far they reach, what they hold.
 *
 * <p>Start at {@link org.kerfleaf.joint.WoodScrew}; {@link org.kerfleaf.joint.FastenerLine} says how many and where along a
 * contact, {@link org.kerfleaf.joint.DrillSizes} which bits, {@link org.kerfleaf.joint.BoltLength} how long a bolt, and
 * {@link org.kerfleaf.joint.HardwareLine} is what the plan lists. {@link org.kerfleaf.joint.DrivenFastener} is one in its place in
 * the build, {@link org.kerfleaf.joint.Marking} what is marked on a part for it before.
 */
package org.kerfleaf.joint;
