package org.kerfleaf.cutting;

/**
 * How few would do.
 *
 * @param stock the stock's name
 * @param bought how many the layouts use
 * @param fewest a number below which it is impossible
 * @param proven whether nothing cheaper exists: {@code bought == fewest}, or, where several lengths are sold, no cheaper mix
 * @param because the proof, or what is not ruled out, in one sentence
 */
public record StockBound(String stock, int bought, int fewest, boolean proven, String because) {}
