package org.kerfleaf.stock;

import java.util.Locale;

/** A stock's name as plain words, so that whole words are found and halves of words are not. */
record Words(String spaced) {
    static Words of(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}/]+", " ");
        return new Words(" " + plain.strip() + " ");
    }

    boolean have(String phrase) {
        return spaced.contains(" " + phrase + " ");
    }
}
