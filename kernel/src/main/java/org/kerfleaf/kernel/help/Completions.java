package org.kerfleaf.kernel.help;

import java.util.List;

/**
 * What can stand at a place, the likeliest first: what is of the wanted type, then the workbook's own names, then words.
 *
 * @param from where the text that it replaces begins in the cell, in characters from 0
 * @param to where that ends
 */
public record Completions(int from, int to, List<Completion> all) {
    public Completions {
        all = List.copyOf(all);
    }
}
