package org.kerfleaf.kernel.help;

import java.util.List;

/**
 * What the word at a place takes and means.
 *
 * @param signatures the ways to say it, the likeliest here first
 * @param parameter in which parameter of the first the place is, from 0; -1 if it is in none
 */
public record WordHelp(List<Signature> signatures, int parameter) {
    public WordHelp {
        signatures = List.copyOf(signatures);
    }
}
