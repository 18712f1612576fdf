package org.kerfleaf.stock;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** A stock's name as plain words, so that whole words are found and halves of words are not. */
record Words(String spaced) {
    static Words of(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}/]+", " ");
        return new Words(" " + plain.strip() + " ");
    }

    boolean have(String phrase) {
        return spaced.contains(" " + phrase + " ");
    }

    /** The only one of all whose words these have; empty if there is none, or if they speak of several. */
    <T> Optional<T> only(T[] all, Function<T, String> words) {
        List<T> found = Arrays.stream(all).filter(one -> have(words.apply(one))).toList();
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }
}
