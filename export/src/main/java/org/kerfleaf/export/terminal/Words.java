package org.kerfleaf.export.terminal;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines. */
final class Words {
    private Words() {}

    static String counted(int number, String one) {
        return "%d %s%s".formatted(number, one, number == 1 ? "" : "s");
    }

    /** Words, a mixed number and its unit being one: 7 15/16 in must never stand as 7 and, a line below, 15/16 in. */
    private static List<String> units(String text) {
        List<String> units = new ArrayList<>();
        for (String word : text.strip().split("\\s+")) {
            int last = units.size() - 1;
            boolean belongs = last >= 0 && belongs(units.get(last), word);
            if (belongs) {
                units.set(last, units.get(last) + " " + word);
            } else {
                units.add(word);
            }
        }
        return units;
    }

    private static boolean belongs(String before, String word) {
        boolean fraction = before.matches(".*[0-9]") && word.matches("[0-9]+/[0-9]+.*");
        boolean unit = before.matches(".*[0-9]") && word.matches("(in|mm|lb|kg|h|min|%)\\W*");
        return fraction || unit;
    }

    /** Lines of at most that many letters, broken between words, within a word only if it is longer than a line. */
    static List<String> broken(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : units(text)) {
            String left = word;
            if (line.length() > 0 && line.length() + 1 + left.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (left.length() > width) {
                lines.add(left.substring(0, width));
                left = left.substring(width);
            }
            line.append(line.length() > 0 ? " " : "").append(left);
        }
        lines.add(line.toString());
        return lines;
    }
}
