package org.kerfleaf.words;

/** The vocabulary. */
public final class Words {
    private Words() {}
}
