package org.kerfleaf.kernel.reach;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What a workbook reaches for beyond the words, read from its bytecode; nothing of it has run.
 *
 * @param all every place, in the order of the workbook; empty if there is none
 * @param content a hash (SHA-256, 64 hexadecimal digits) of what the cells say. Another value for a size, other prose and
 *     another layout of the file leave it as it is; every other change of a cell makes it another, because a cell that
 *     does not reach for anything itself may still hand a file's name to one that does
 */
public record Reached(List<Reaching> all, String content) {
    public Reached {
        all = List.copyOf(all);
    }

    /** Whether there is nothing to allow. */
    public boolean isNothing() {
        return all.isEmpty();
    }

    /** For what, in a maker's words, each once: <em>files, the network</em>. */
    public String inWords() {
        return all.stream()
                .map(Reaching::reach)
                .sorted()
                .distinct()
                .map(Reach::words)
                .collect(Collectors.joining(", "));
    }
}
