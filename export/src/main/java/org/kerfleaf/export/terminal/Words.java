package org.kerfleaf.export.terminal;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines. */
final class Words {
    private Words() {}

    static String counted(int number, String one) {
        return "%d %s%s".formatted(number, one, number == 1 ? "" : "s");
    }

    /** Lines of at most that many letters, broken between words, within a word only if it is longer than a line. */
    static List<String> broken(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
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
