package org.kerfleaf.kernel.reach;

/** Says of a workbook that reaches for more than the words whether its owner has allowed it. */
@FunctionalInterface
public interface Trust {
    /** Nothing beyond the words runs. */
    Trust WORDS_ONLY = reached -> false;

    /** Everything runs, whatever it reaches for. */
    Trust EVERYTHING = reached -> true;

    /** Asked before a run that reaches for something; never asked for one that does not. */
    boolean allows(Reached reached);
}
