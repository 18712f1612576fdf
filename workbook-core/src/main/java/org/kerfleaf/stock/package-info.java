/** What shops sell: dressed sizes, sheet thicknesses and their limits, densities. Each table names its standard. */
package org.kerfleaf.stock;
