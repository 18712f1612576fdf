/** Where it stands: hole, post, reach. Start at {@link org.kerfleaf.site.SitePlan}. Everything structural here is an estimate. */
package org.kerfleaf.site;
