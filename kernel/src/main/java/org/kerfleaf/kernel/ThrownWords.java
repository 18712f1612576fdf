package org.kerfleaf.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.compile.CompiledUnit;
import org.kerfleaf.kernel.compile.CompiledWorkbook;
import org.kerfleaf.kernel.wire.Thrown;

/** Says in a maker's words what a cell threw, and where. */
final class ThrownWords {
    private static final Pattern QUOTED = Pattern.compile("“([^”]+)”");
    private static final Pattern PAST =
            Pattern.compile("^(.+?) can be .*; “?(.+?)”? is (?:past the rule|none of them)");
    private static final Pattern NULL_NAME = Pattern.compile("because \"(?:[\\w$.]*\\.)?([\\w$]+)\" is null");
    private static final Pattern INDEX = Pattern.compile("Index (-?\\d+) out of bounds for length (\\d+)");
    private static final Pattern INPUT = Pattern.compile("For input string: \"(.*?)\"");

    private ThrownWords() {}

    /** The problem, in the cell that ran; where another cell's method failed, the words name its line too. */
    static CellProblem problem(CompiledWorkbook compiled, CompiledUnit ran, Thrown thrown) {
        String words = words(thrown);
        boolean first = true;
        String elsewhere = "";
        for (Thrown.Frame frame : thrown.frames()) {
            Optional<CompiledUnit> owner = compiled.owner(frame.className());
            if (owner.isEmpty()) {
                continue;
            }
            CellProblem there = at(owner.get(), frame.line(), thrown, words + elsewhere, first);
            if (there.cell() == ran.unit().cell()) {
                return there;
            }
            if (first) {
                elsewhere = " It happened in line %d.".formatted(there.line());
            }
            first = false;
        }
        return ran.problem(words + elsewhere);
    }

    private static CellProblem at(CompiledUnit owner, int line, Thrown thrown, String words, boolean innermost) {
        if (innermost && thrown.quoted().isPresent()) {
            return owner.problemInText(line, thrown.quoted().get(), thrown.column(), words);
        }
        if (innermost && thrown.ours()) {
            return owner.problemAtOneOf(line, meant(words), words);
        }
        Matcher nullName = NULL_NAME.matcher(thrown.message().orElse(""));
        return innermost && nullName.find()
                ? owner.problemAtName(line, nullName.group(1), words)
                : owner.problemInLine(line, words);
    }

    // The texts that a message of the vocabulary is about, the best first.
    private static List<String> meant(String words) {
        List<String> texts = new ArrayList<>();
        Matcher past = PAST.matcher(words);
        if (past.find()) {
            texts.add(past.group(2));
            texts.add(past.group(1));
        }
        QUOTED.matcher(words).results().map(match -> match.group(1)).forEach(texts::add);
        return texts;
    }

    private static String words(Thrown thrown) {
        String message = thrown.message().orElse("");
        if (thrown.ours() && !message.isBlank()) {
            return message;
        }
        return switch (thrown.type()) {
            case "java.lang.StackOverflowError" -> "This calls itself without end.";
            case "java.lang.ArithmeticException" ->
                message.equals("/ by zero")
                        ? "This divides by zero."
                        : message.endsWith("overflow") ? "The number grows too large here." : sentence(message);
            case "java.lang.NullPointerException" ->
                group(NULL_NAME, message)
                        .map(name -> "“%s” has no value here.".formatted(name))
                        .orElse("Something has no value here.");
            case "java.lang.NumberFormatException" ->
                group(INPUT, message)
                        .map(text -> "“%s” is no number.".formatted(text))
                        .orElse("This is no number.");
            case "java.lang.IndexOutOfBoundsException",
                    "java.lang.ArrayIndexOutOfBoundsException",
                    "java.lang.StringIndexOutOfBoundsException" -> index(message);
            case "java.lang.ClassCastException" -> "The value here is of another kind than the one asked for.";
            case "java.lang.UnsupportedOperationException" ->
                "This list cannot be changed. A new ArrayList<>(list) can.";
            case "java.nio.file.NoSuchFileException", "java.io.FileNotFoundException" ->
                "There is no “%s” here. Cells run in an empty folder of their own; a path from the root on would be right."
                        .formatted(message.replaceFirst(" \\(.*", ""));
            case "java.util.ConcurrentModificationException" -> "The list is changed while it is gone through.";
            case "java.util.NoSuchElementException" -> "There is none of it here.";
            default -> other(thrown.type(), message);
        };
    }

    private static Optional<String> group(Pattern pattern, String message) {
        Matcher match = pattern.matcher(message);
        return match.find() ? Optional.of(match.group(1)) : Optional.empty();
    }

    private static String index(String message) {
        Matcher match = INDEX.matcher(message);
        if (match.find() && match.group(2).equals("0")) {
            return "There is none of it here.";
        }
        return match.reset().find()
                ? "There is no number %s here: there are %s, counted from 0.".formatted(match.group(1), match.group(2))
                : sentence(message);
    }

    // IllegalStateException becomes "Illegal state".
    private static String other(String type, String message) {
        String bare = type.replaceFirst(".*[.$]", "").replaceFirst("(Exception|Error)$", "");
        String spaced = bare.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(java.util.Locale.ROOT);
        return message.isBlank()
                ? "This stopped: %s.".formatted(spaced.isBlank() ? "no reason given" : spaced)
                : sentence(message);
    }

    private static String sentence(String message) {
        return message.isBlank()
                ? "This stopped, and gives no reason."
                : message.endsWith(".") ? message : message + ".";
    }
}
