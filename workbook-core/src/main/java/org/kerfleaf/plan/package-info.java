/**
 * The plan: everything that follows from a sketch. {@link org.kerfleaf.plan.Planner} makes it,
 * {@link org.kerfleaf.plan.Plan} is the value that exporters read.
 *
 * <p>The plan is a pure function of the sketch, the day and the choices made for planning: no clock, no random number,
 * no order of a hash. Where data is missing the plan says so; nothing is filled in silently.
 */
package org.kerfleaf.plan;
