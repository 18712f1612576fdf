package org.kerfleaf.kernel;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.ProseSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.workbook.Cell;
import org.kerfleaf.workbook.LiveValue;
import org.kerfleaf.workbook.Workbook;

/** A workbook's text that somebody edits without knowing Java: what is broken is mostly mended soon. */
final class EditedText {
    private static final int MOST_OPEN = 5;
    private static final Pattern WORD = Pattern.compile("[A-Za-z_]\\w*");
    private static final Pattern NUMBER = Pattern.compile("\\d+");
    private static final Pattern SIGN = Pattern.compile("[(){}.;,=\"<>+]");
    private static final Pattern DECLARED = Pattern.compile("(?m)^\\s*[A-Za-z_<>]+\\s+(\\w+)\\s*[=(]");

    /** Cells to add: right ones, wrong ones, and such as change what names mean further down. */
    private static final List<String> MORE = List.of(
            "Length added = length(\"1 in\");",
            "var more = added.plus(width);",
            "int width = 3;",
            "Part floor = panel(\"Floor\", ply);",
            "int twice(long n) { return 1; }",
            "Object twice(Object n) { return n; }",
            "int n() { return m() + 1; }\nint m() { return 2; }\nvar nm = n();",
            "import java.util.function.*;\nSupplier<Length> later = () -> width;",
            "import java.awt.*;",
            "record Stream(int n) {}",
            "record Leg(int n) {}",
            "Leg none;",
            "int x = $1;",
            "for (int i = 0; i < 2; i++) { panel(\"P\" + i, ply); }",
            "width = length(\"3 in\");",
            "int bad = ;",
            "var a = b;",
            "var b = a;",
            "/* no end",
            "enum Wood { OAK, ASH, PINE }",
            "class Made { static int n = 3; int m() { return n; } }",
            "var made = new Made().m();",
            "interface Wide { default Length wide() { return width; } }",
            "class Wider implements Wide {}\nvar wider = new Wider().wide();",
            "");

    private final RandomGenerator random;
    private final Deque<State> before = new ArrayDeque<>();
    private State now;

    private record State(List<String> cells, List<String> live) {}

    EditedText(RandomGenerator random, List<String> cells, List<String> live) {
        this.random = random;
        this.now = new State(List.copyOf(cells), List.copyOf(live));
    }

    static EditedText of(RandomGenerator random, Workbook sample) {
        return new EditedText(
                random,
                sample.cells().stream().map(Cell::text).toList(),
                sample.liveValues().stream().map(LiveValue::expression).toList());
    }

    WorkbookSource source() {
        List<CellSource> cells = new ArrayList<>();
        int line = 2;
        for (String text : now.cells) {
            cells.add(new CellSource(cells.size(), text, line, cells.size() / 3));
            line += text.split("\n", -1).length + 2;
        }
        List<ProseSource> live = new ArrayList<>();
        for (String expression : now.live) {
            live.add(new ProseSource(live.size(), expression, line++));
        }
        return new WorkbookSource("Edited", List.of(new Sketch.Step(1, "Cut")), cells, live);
    }

    /** Makes one edit, or takes the last one back. */
    void edit() {
        boolean undo = !before.isEmpty() && (before.size() >= MOST_OPEN || random.nextInt(100) < 42);
        if (undo) {
            now = before.pop();
            if (!before.isEmpty() && random.nextInt(8) == 0) {
                now = before.pop();
            }
            return;
        }
        before.push(now);
        List<String> cells = new ArrayList<>(now.cells);
        List<String> live = new ArrayList<>(now.live);
        if (cells.isEmpty() || random.nextInt(12) == 0) {
            cells.add(random.nextInt(cells.size() + 1), pick(MORE));
        } else if (!live.isEmpty() && random.nextInt(12) == 0) {
            live.set(random.nextInt(live.size()), inLine(pick(live)));
        } else {
            int at = random.nextInt(cells.size());
            switch (random.nextInt(5)) {
                case 0 -> wholeCell(cells, at);
                case 1 -> wholeLine(cells, at);
                default -> cells.set(at, inLine(cells.get(at)));
            }
        }
        now = new State(List.copyOf(cells), List.copyOf(live));
    }

    private void wholeCell(List<String> cells, int at) {
        int other = random.nextInt(cells.size());
        switch (random.nextInt(4)) {
            case 0 -> cells.remove(at);
            case 1 -> cells.add(other, cells.remove(at));
            case 2 -> cells.add(other, cells.get(at));
            default -> rename(cells, at);
        }
    }

    /** A name that is declared here gets another one, sometimes wherever it stands. */
    private void rename(List<String> cells, int at) {
        List<MatchResult> names = DECLARED.matcher(cells.get(at)).results().toList();
        if (names.isEmpty()) {
            return;
        }
        String name = pick(names).group(1);
        if (random.nextBoolean()) {
            cells.set(at, cells.get(at).replaceFirst("\\b" + name + "\\b", name + "2"));
        } else {
            cells.replaceAll(text -> text.replaceAll("\\b" + name + "\\b", name + "2"));
        }
    }

    private void wholeLine(List<String> cells, int at) {
        List<String> lines = new ArrayList<>(List.of(cells.get(at).split("\n", -1)));
        int line = random.nextInt(lines.size());
        switch (random.nextInt(4)) {
            case 0 -> lines.remove(line);
            case 1 -> lines.add(random.nextInt(lines.size()), lines.remove(line));
            case 2 -> lines.add(random.nextInt(lines.size() + 1), pick(MORE));
            default -> {
                String moved = lines.remove(line);
                int other = random.nextInt(cells.size());
                if (other != at) {
                    cells.set(other, cells.get(other) + "\n" + moved);
                }
            }
        }
        cells.set(at, String.join("\n", lines));
    }

    private String inLine(String text) {
        return switch (random.nextInt(7)) {
            case 0 -> change(text, NUMBER, "1" + random.nextInt(30));
            case 1 -> change(text, SIGN, "");
            case 2 -> change(text, SIGN, pick(List.of("(", ")", ".", ";", "\"", "}", "((")));
            case 3 -> change(text, WORD, pick(List.of("int", "var", "Length", "width", "panel", "Part", "floor")));
            case 4 ->
                change(
                        text,
                        WORD,
                        pick(WORD.matcher(text + " t").results().toList()).group());
            default -> misspelt(text);
        };
    }

    private String misspelt(String text) {
        List<MatchResult> words = WORD.matcher(text).results().toList();
        if (words.isEmpty()) {
            return text + "x";
        }
        MatchResult word = pick(words);
        int at = word.start() + random.nextInt(word.group().length());
        return text.substring(0, at) + text.substring(at + 1);
    }

    private String change(String text, Pattern what, String to) {
        List<MatchResult> found = what.matcher(text).results().toList();
        if (found.isEmpty()) {
            return text + to;
        }
        MatchResult one = pick(found);
        return text.substring(0, one.start()) + to + text.substring(one.end());
    }

    private <T> T pick(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    @Override
    public String toString() {
        return String.join("\n---\n", now.cells) + "\n--- prose: " + now.live;
    }
}
