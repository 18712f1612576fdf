package org.kerfleaf.kernel.compile;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Puts what the compiler says into a maker's words. */
final class Wording {
    private static final Pattern QUOTED = Pattern.compile("'(.+?)'");
    private static final Pattern LOCATION =
            Pattern.compile("of type ([\\w.$<>\\[\\]]+)|location: (?:class|interface) ([\\w.$]+)");
    private static final Pattern CONVERTED =
            Pattern.compile("([\\w.$<>\\[\\], ?]+) cannot be converted to ([\\w.$<>\\[\\], ?]+)");
    private static final Pattern REQUIRED = Pattern.compile("required: *(.*)\\n *found: *(.*)");
    private static final Pattern CANDIDATE =
            Pattern.compile("(?:method|constructor) [\\w.$<>]+\\((.*?)\\) is not applicable");
    private static final Pattern NO_SUITABLE = Pattern.compile("no suitable \\w+ found for ([\\w.$]+)\\((.*?)\\)\\n");
    private static final Pattern CALLED = Pattern.compile("(?:method|constructor) ([\\w.$]+)");
    private static final Pattern OPERANDS =
            Pattern.compile("operator '?([^'\\s]+)'?\\s+first type: *(.*)\\n *second type: *(.*)");

    private Wording() {}

    /**
     * The words for one of javac's errors.
     *
     * @param code javac's key of the message
     * @param message its text
     * @param text the piece it is about
     * @param at where in the piece it points
     * @param span the maker's text that it marks
     */
    static String of(String code, String message, String text, int at, String span) {
        String key = code.replaceFirst("^compiler\\.err\\.", "");
        if (key.startsWith("expected")) {
            return missing(message, text, at);
        }
        return switch (key) {
            case "prob.found.req" -> wanted(message);
            case "cant.apply.symbol", "cant.apply.symbols", "cant.apply.diamond.1" -> arguments(message);
            case "operator.cant.be.applied.1" -> operator(message, span);
            case "unclosed.str.lit" -> "A \" is missing: the text in quotes does not end in this line.";
            case "unclosed.text.block" -> "A \"\"\" is missing: the text in quotes does not end.";
            case "unclosed.comment" -> "The comment does not end: */ is missing.";
            case "unclosed.char.lit" -> "Text stands between double quotes, \"like this\".";
            case "premature.eof" -> "The cell ends in the middle: a ) or } is missing, or the rest of the line.";
            case "illegal.start.of.expr", "illegal.start.of.type", "illegal.start.of.stmt", "illegal.dot" ->
                Syntax.hint(text, at, "").orElse("Something is missing before this, or this is too much.");
            case "not.stmt" ->
                Syntax.hint(text, at, "")
                        .orElse("This alone says nothing. A word is missing, or a . or ( is in the wrong place.");
            case "illegal.char" -> character(text, at);
            case "missing.ret.stmt" -> "It gives no value at its end: a return is missing.";
            case "cant.infer.local.var.type" ->
                "What kind of thing this is cannot be seen. Say it in place of var: Length, Part ...";
            case "doesnt.exist" -> "There is no such thing to import.";
            case "already.defined" -> "“%s” has its value already.".formatted(lastWord(span));
            default -> plain(message);
        };
    }

    private static String character(String text, int at) {
        String one = at < text.length() ? text.substring(at, text.offsetByCodePoints(at, 1)) : "";
        return "“”„‟″".contains(one) && !one.isEmpty()
                ? "%s is no quote that cells know. Write \" instead.".formatted(one)
                : "“%s” cannot stand here.".formatted(one);
    }

    /** The words for a name that nobody knows. */
    static String notKnown(String name, boolean member, String message) {
        if (!member) {
            return "Nothing is called “%s”.".formatted(name);
        }
        Matcher location = LOCATION.matcher(message);
        if (!location.find()) {
            return "There is no “%s” here.".formatted(name);
        }
        String type = location.group(1) != null ? location.group(1) : location.group(2);
        return "%s has no “%s”.".formatted(capital(TypeWords.of(type)), name);
    }

    private static String missing(String message, String text, int at) {
        List<String> wanted =
                QUOTED.matcher(message).results().map(match -> match.group(1)).toList();
        // A bracket that is open is what a maker has to close; that a comma could go on is of no use here.
        String first = wanted.contains(")") ? ")" : String.join(" or ", wanted);
        String plain = !first.isEmpty()
                ? "“%s” is missing here.".formatted(first)
                : message.contains("<identifier>") ? "A name is missing here." : plain(message);
        return Syntax.hint(text, at, first.isEmpty() ? "?" : first).orElse(plain);
    }

    private static String wanted(String message) {
        if (message.contains("lossy conversion")) {
            return "A whole number is wanted here, not one with a point.";
        }
        Matcher types = CONVERTED.matcher(message);
        return types.find()
                ? "%s is wanted here, not %s."
                        .formatted(capital(TypeWords.wanted(types.group(2))), TypeWords.of(types.group(1)))
                : "This is of another kind than what is wanted here.";
    }

    private static String arguments(String message) {
        if (message.startsWith("constructor ") || message.contains("no suitable constructor")) {
            return "This does not make one. Begin with its word, like panel(\"Floor\", ply).";
        }
        Matcher one = REQUIRED.matcher(message);
        if (one.find()) {
            return takes(called(message), TypeWords.wantedList(one.group(1)), TypeWords.list(one.group(2)));
        }
        Matcher many = NO_SUITABLE.matcher(message);
        if (many.find()) {
            String choices = CANDIDATE
                    .matcher(message)
                    .results()
                    .map(match -> TypeWords.wantedList(match.group(1)))
                    .distinct()
                    .collect(Collectors.joining(", or "));
            return takes(called(message), choices, TypeWords.list(many.group(2)));
        }
        return plain(message);
    }

    private static String takes(String word, String wanted, String found) {
        return "“%s” takes %s; here it has %s.".formatted(word, wanted, found);
    }

    /** The word that was given what it does not take, as the message calls it. */
    static String called(String message) {
        Matcher many = NO_SUITABLE.matcher(message);
        if (many.find()) {
            return TypeWords.shortName(many.group(1));
        }
        Matcher one = CALLED.matcher(message);
        return one.find() ? TypeWords.shortName(one.group(1)) : "This";
    }

    private static String operator(String message, String span) {
        Matcher operands = OPERANDS.matcher(message);
        if (!operands.find()) {
            return plain(message);
        }
        String sign = operands.group(1);
        String one = TypeWords.of(operands.group(2));
        String other = TypeWords.of(operands.group(3));
        return "“%s” does not go between %s and %s.%s".formatted(sign, one, other, instead(sign, one, span));
    }

    private static String instead(String sign, String one, String span) {
        Matcher simple =
                Pattern.compile("([\\w.]+) *\\Q" + sign + "\\E *([\\w.]+)").matcher(span.strip());
        boolean numberFirst = one.equals("a whole number") || one.equals("a number with a point");
        String left = simple.matches() ? simple.group(1) : numberFirst ? "2" : "a";
        String right = simple.matches() ? simple.group(2) : numberFirst ? "a" : "b";
        return switch (sign) {
            case "+" -> " Say %s.plus(%s).".formatted(left, right);
            case "-" -> " Say %s.minus(%s).".formatted(left, right);
            case "*" -> " Say %s.times(%s).".formatted(numberFirst ? right : left, numberFirst ? left : right);
            case "/" -> " Say %s.dividedBy(%s).".formatted(left, right);
            case "<" -> " Say %s.compareTo(%s) < 0.".formatted(left, right);
            case ">" -> " Say %s.compareTo(%s) > 0.".formatted(left, right);
            default -> "";
        };
    }

    private static String lastWord(String span) {
        return span.strip().replaceFirst("(?s).*\\W(?=\\w+\\W*$)", "");
    }

    private static String plain(String message) {
        String first = TypeWords.shortName(message.strip().lines().findFirst().orElse("This makes no sense here."));
        return capital(first) + (first.endsWith(".") ? "" : ".");
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
