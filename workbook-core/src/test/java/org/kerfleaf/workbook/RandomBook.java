package org.kerfleaf.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** Composes workbook files by chance, line by line, out of everything that has ever made a Markdown file difficult. */
final class RandomBook {
    private static final List<String> WORDS = List.of(
            "glue",
            "the",
            "roof",
            "\uD83E\uDE9A",
            "\u00e9b\u00e8ne",
            "*planed*",
            "**twice**",
            "`${code}`",
            "\\${kept}",
            "${width}",
            "${ t.half() }",
            "${say(\"}\")}",
            "*${a * b}*",
            "[see ${ridge}](there)",
            "<b>",
            "&amp;",
            "$5",
            "${open",
            "1.",
            "-",
            ">",
            "a\tb",
            "\u2028",
            "~~",
            "```",
            "\\");
    private static final List<String> CODE = List.of(
            "int a = 1;",
            "",
            "",
            "  var b = a;",
            "\tc();",
            " \t ",
            "    ",
            "/* ${no} */",
            "\"\uD83E\uDE9A\"",
            "> quoted",
            "- item",
            "# heading",
            "```",
            "~~~",
            "````",
            "~~~~~",
            " ```",
            "   ~~~  ",
            "    ```",
            "\t```",
            "``` java",
            "`````` ",
            "x\u2028y",
            "<div>",
            "    indented",
            "\u0000",
            "1. one");
    private static final List<String> INFOS =
            List.of("java", "java id=roof hidden", " java", "java\tx", "view", "view", "", "text", "javascript");
    private static final int MOST_DEPTH = 3;

    private final RandomGenerator random;
    private final List<String> marks;

    RandomBook(long seed) {
        random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        marks = pick(List.of(
                List.of("\n"), List.of("\n"), List.of("\r\n"), List.of("\n", "\r\n"), List.of("\n", "\r\n", "\r")));
    }

    /** A failing case as it should be read in a message. */
    static String shown(long seed, String file) {
        return "seed %d, file:%n%s".formatted(seed, shown(file));
    }

    static String shown(String text) {
        return text.replace("\uFEFF", "<BOM>")
                .replace("\r", "<CR>")
                .replace("\t", "<TAB>")
                .replace("\0", "<NUL>");
    }

    static String[] linesOf(String text) {
        return text.split("\r\n|\n|\r", -1);
    }

    RandomGenerator random() {
        return random;
    }

    <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private boolean oneIn(int n) {
        return random.nextInt(n) == 0;
    }

    /** A whole file, in most cases with a cell in it. */
    String file() {
        List<String> lines = blocks(0, 2 + random.nextInt(7));
        var text = new StringBuilder(oneIn(4) ? "\uFEFF" : "");
        for (int i = 0; i < lines.size(); i++) {
            boolean bare = i == lines.size() - 1 && oneIn(2);
            text.append(lines.get(i)).append(bare ? "" : pick(marks));
        }
        return text.toString();
    }

    /** A new text for a cell. */
    String cellText() {
        List<String> lines = codeLines();
        String text = String.join(oneIn(4) ? "\r\n" : "\n", lines);
        return oneIn(4) ? text + "\n" : text;
    }

    private List<String> blocks(int depth, int count) {
        var lines = new ArrayList<String>();
        for (int i = 0; i < count; i++) {
            lines.addAll(block(depth));
            if (!oneIn(4)) {
                lines.add(oneIn(6) ? "  " : "");
            }
        }
        return lines;
    }

    private List<String> block(int depth) {
        int kind = depth == 0 && oneIn(4) ? 0 : random.nextInt(depth < MOST_DEPTH ? 10 : 6);
        return switch (kind) {
            case 0 -> List.of("#".repeat(1 + random.nextInt(4)) + " " + (oneIn(3) ? "Build steps" : words()));
            case 1 -> paragraph();
            case 2, 3, 4, 5 -> fence();
            case 6, 7 -> listItem(depth);
            default -> quote(depth);
        };
    }

    private String words() {
        var words = new ArrayList<String>();
        for (int i = 1 + random.nextInt(5); i > 0; i--) {
            words.add(pick(WORDS));
        }
        return String.join(" ", words);
    }

    private List<String> paragraph() {
        var lines = new ArrayList<String>();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            lines.add((oneIn(8) ? "   " : "") + words());
        }
        return lines;
    }

    private List<String> codeLines() {
        var lines = new ArrayList<String>();
        for (int i = random.nextInt(6); i > 0; i--) {
            lines.add(pick(CODE));
        }
        return lines;
    }

    private List<String> fence() {
        String indent = " ".repeat(oneIn(4) ? random.nextInt(5) : 0);
        String fence = pick(List.of("`", "~")).repeat(3 + random.nextInt(4));
        var lines = new ArrayList<String>();
        lines.add(indent + fence + pick(INFOS));
        codeLines().forEach(line -> lines.add((oneIn(6) ? "" : indent) + line));
        if (!oneIn(10)) {
            lines.add(
                    " ".repeat(oneIn(6) ? 2 : 0) + fence + (oneIn(6) ? fence.charAt(0) : "") + (oneIn(8) ? " \t" : ""));
        }
        return lines;
    }

    private List<String> listItem(int depth) {
        String marker = pick(List.of("- ", "* ", "+   ", "1. ", "10) ", "-\t", " - ", "1.\t"));
        int width = 0;
        for (char c : marker.toCharArray()) {
            width += c == '\t' ? 4 - width % 4 : 1;
        }
        String indent = oneIn(6) ? "\t" : " ".repeat(width);
        List<String> inner = blocks(depth + 1, 1 + random.nextInt(3));
        var lines = new ArrayList<String>();
        for (String line : inner) {
            boolean blank = line.isBlank() && !oneIn(3);
            lines.add(lines.isEmpty() ? marker + line : blank ? line : indent + line);
        }
        return lines;
    }

    private List<String> quote(int depth) {
        var lines = new ArrayList<String>();
        for (String line : blocks(depth + 1, 1 + random.nextInt(3))) {
            String mark = pick(List.of("> ", "> ", "> ", ">", ">\t", "  > "));
            lines.add(line.isEmpty() ? mark.stripTrailing() : mark + line);
        }
        return lines;
    }
}
