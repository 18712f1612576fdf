package org.kerfleaf.export.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.kerfleaf.measure.MeasureStyle;

/** Tells the words of a cell as plain text. */
public final class VocabularyText {
    private static final String INDENT = "    ";

    private VocabularyText() {}

    /** Words that belong together. */
    public record Group(String name, List<Said> words) {}

    /**
     * One word.
     *
     * @param group the name of its group
     * @param of what it is said of, in a maker's words; empty if a cell can begin with it
     * @param sentence what it means, in one sentence
     * @param forms the ways to say it
     * @param example as a cell could hold it
     * @param next what can be said of its value
     */
    public record Said(
            String name,
            String group,
            String of,
            String sentence,
            List<Form> forms,
            String example,
            List<String> next) {}

    /**
     * One way to say a word.
     *
     * @param written as it is written: {@code wide(length)}
     * @param gives what its value is, in a maker's words
     * @param text what it means
     * @param parameters what stands in its brackets, one line each
     * @param refuses when it refuses, one line each
     */
    public record Form(String written, String gives, String text, List<String> parameters, List<String> refuses) {}

    /**
     * Words group by group, each with its sentence and example.
     *
     * @param around the cell that the examples speak of, shown at the end
     * @param columns how many letters a line may have, within the bounds of {@link TerminalText}
     */
    public static String of(List<Group> groups, String around, int columns) {
        List<Section> sections = new ArrayList<>();
        for (Group group : groups) {
            String counted = Words.counted(group.words().size(), "word");
            sections.add(new Section(capital(group.name()), counted, true, page -> words(page, group.words())));
        }
        sections.add(new Section(
                "Around the examples", "", true, page -> around.lines().forEach(line -> code(page, "", line))));
        return told(sections, columns);
    }

    /** One name in full: every thing it is said of, every way to say it. */
    public static String inFull(List<Said> words, int columns) {
        List<Section> sections = new ArrayList<>();
        for (Said word : words) {
            sections.add(new Section(title(word), capital(word.group()), true, page -> inFull(page, word)));
        }
        return told(sections, columns);
    }

    private static String told(List<Section> sections, int columns) {
        int width = Math.max(TerminalText.NARROWEST, Math.min(TerminalText.WIDEST, columns));
        Page page = new Page(MeasureStyle.INCHES, width, false);
        for (int at = 0; at < sections.size(); at++) {
            page.section(sections.get(at), (double) at / Math.max(1, sections.size() - 1));
        }
        // A section begins with a blank line, a page does not.
        return page.text().substring(1);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String title(Said word) {
        return word.of().isEmpty() ? word.name() : ".%s, said of %s".formatted(word.name(), word.of());
    }

    private static void words(Page page, List<Said> words) {
        String of = "";
        for (Said word : words) {
            if (word != words.get(0)) {
                page.blank();
            }
            if (!word.of().equals(of)) {
                page.line("Said of " + word.of());
                page.blank();
                of = word.of();
            }
            String dot = of.isEmpty() ? "" : ".";
            String forms = word.forms().stream()
                    .map(form -> dot + form.written())
                    .distinct()
                    .collect(Collectors.joining(" or "));
            page.paragraph(forms);
            page.hanging(INDENT, word.sentence());
            code(page, INDENT, word.example());
        }
    }

    private static void inFull(Page page, Said word) {
        String dot = word.of().isEmpty() ? "" : ".";
        for (Form form : word.forms()) {
            page.paragraph(dot + form.written() + " gives " + form.gives());
            page.hanging(INDENT, form.text());
            form.parameters().forEach(one -> page.hanging(INDENT, one));
            form.refuses().forEach(one -> page.hanging(INDENT, "Refuses " + one));
            page.blank();
        }
        page.line("For example");
        code(page, INDENT, word.example());
        if (!word.next().isEmpty()) {
            page.blank();
            page.paragraph("Of that can be said "
                    + word.next().stream().map(next -> "." + next).collect(Collectors.joining(", ")));
        }
        page.blank();
        page.paragraph("What the example speaks of stands at the end of: kerfleaf words");
    }

    /** Code, a statement to a line; what is too long goes on further in, from a dot if there is one, else from a blank. */
    private static void code(Page page, String indent, String code) {
        for (String statement : code.split("(?<=;) (?=\\S)")) {
            String left = indent + statement;
            while (left.length() > page.width()) {
                int at = lastBreak(left, page.width());
                page.line(left.substring(0, at));
                left = indent + INDENT + left.substring(at).strip();
            }
            page.line(left);
        }
    }

    private static int lastBreak(String line, int width) {
        boolean quoted = false;
        int depth = 0;
        int dot = 0;
        int blank = width;
        int text = line.length() - line.stripLeading().length();
        for (int at = text + 1; at < width; at++) {
            char c = line.charAt(at);
            quoted ^= c == '"';
            depth += quoted ? 0 : c == '(' ? 1 : c == ')' ? -1 : 0;
            if (!quoted && c == ' ') {
                blank = at;
            } else if (!quoted && depth == 0 && c == '.' && line.charAt(at - 1) == ')') {
                dot = at;
            }
        }
        return dot > 0 ? dot : blank;
    }
}
