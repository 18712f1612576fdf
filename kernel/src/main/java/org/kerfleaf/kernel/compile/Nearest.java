package org.kerfleaf.kernel.compile;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that was probably meant. */
public final class Nearest {
    private Nearest() {}

    /**
     * The nearest word, if at most a third of its letters differ; of equally near ones the one with the same first letter,
     * then the one as long, then the first by alphabet. Of a single letter nothing can be said.
     */
    public static Optional<String> to(String word, Collection<String> known) {
        if (word.length() < 2) {
            return Optional.empty();
        }
        return known.stream()
                .filter(one -> !one.equals(word))
                .filter(one -> distance(word, one) <= Math.max(1, Math.max(word.length(), one.length()) / 3))
                .min(Comparator.<String>comparingInt(one -> distance(word, one))
                        .thenComparing(one -> one.charAt(0) != word.charAt(0))
                        .thenComparing(one -> Math.abs(one.length() - word.length()))
                        .thenComparing(one -> one));
    }

    // Damerau-Levenshtein (optimal string alignment): letters added, left out, changed or swapped. Case alone counts
    // one.
    static int distance(String one, String other) {
        if (one.equalsIgnoreCase(other)) {
            return one.equals(other) ? 0 : 1;
        }
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[][] cost = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    cost[i][j] = i + j;
                    continue;
                }
                int changed = cost[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                cost[i][j] = Math.min(changed, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + 1);
                }
            }
        }
        return cost[a.length()][b.length()];
    }
}
