package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;

/** The marks of parts: A to Z without I and O, then AA, AB and so on. */
final class Letters {
    private static final String USED = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private Letters() {}

    static List<String> first(int many) {
        List<String> letters = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            letters.add(letter(i));
        }
        return letters;
    }

    private static String letter(int index) {
        int rest = index / USED.length();
        return (rest == 0 ? "" : letter(rest - 1)) + USED.charAt(index % USED.length());
    }
}
