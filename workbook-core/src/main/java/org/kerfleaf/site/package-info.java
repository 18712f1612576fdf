/**
 * Where it stands: hole, post, reach, wind. Everything structural here is an estimate.
 *
 * <p>{@link org.kerfleaf.site.PostHole} has the volumes and heights, {@link org.kerfleaf.site.Wind} the push of the wind,
 * {@link org.kerfleaf.site.Embedment} how deep a post must stand, {@link org.kerfleaf.site.WindLoad} both together,
 * {@link org.kerfleaf.site.Filling} what goes round the post;
 * {@link org.kerfleaf.site.SitePlan} is what the plan lists.
 */
package org.kerfleaf.site;
