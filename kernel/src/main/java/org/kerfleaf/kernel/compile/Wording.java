package org.kerfleaf.kernel.compile;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Puts what the compiler says into a maker's words. */
final class Wording {
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
     * @param span the maker's text that it marks
     */
    static String of(String code, String message, String span) {
        String key = code.replaceFirst("^compiler\\.err\\.", "");
        if (key.startsWith("expected")) {
            return missing(message);
        }
        return switch (key) {
            case "prob.found.req" -> wanted(message);
            case "cant.apply.symbol", "cant.apply.symbols", "cant.apply.diamond.1" -> arguments(message);
            case "operator.cant.be.applied.1" -> operator(message);
            case "unclosed.str.lit" -> "A \" is missing: the text in quotes does not end in this line.";
            case "unclosed.text.block" -> "A \"\"\" is missing: the text in quotes does not end.";
            case "unclosed.comment" -> "The comment does not end: */ is missing.";
            case "premature.eof" -> "The cell ends in the middle: a ) or } is missing, or the rest of the line.";
            case "illegal.start.of.expr", "illegal.start.of.type", "illegal.start.of.stmt" ->
                "Something is missing before this, or this is too much.";
            case "not.stmt" -> "This alone says nothing. A word is missing, or a . or ( is in the wrong place.";
            case "illegal.char" -> "“%s” cannot stand here.".formatted(span.strip());
            case "already.defined" -> "“%s” has its value already.".formatted(lastWord(span));
            default -> plain(message);
        };
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
        return "%s has no “%s”.".formatted(capital(aType(type)), name);
    }

    private static String missing(String message) {
        Matcher quoted = Pattern.compile("'(.+?)'").matcher(message);
        String wanted = quoted.results().map(match -> match.group(1)).collect(Collectors.joining(" or "));
        if (!wanted.isEmpty()) {
            return "“%s” is missing here.".formatted(wanted);
        }
        return message.contains("<identifier>") ? "A name is missing here." : plain(message);
    }

    private static String wanted(String message) {
        Matcher types = CONVERTED.matcher(message);
        return types.find()
                ? "%s is wanted here, not %s.".formatted(capital(aType(types.group(2))), aType(types.group(1)))
                : plain(message.replaceFirst("incompatible types: ", ""));
    }

    private static String arguments(String message) {
        Matcher one = REQUIRED.matcher(message);
        Matcher called = CALLED.matcher(message);
        if (one.find() && called.find()) {
            return "“%s” takes %s, not %s."
                    .formatted(shortName(called.group(1)), types(one.group(1)), types(one.group(2)));
        }
        Matcher many = NO_SUITABLE.matcher(message);
        if (many.find()) {
            String choices = CANDIDATE
                    .matcher(message)
                    .results()
                    .map(match -> types(match.group(1)))
                    .distinct()
                    .collect(Collectors.joining("; or "));
            return "“%s” takes %s, not %s.".formatted(shortName(many.group(1)), choices, types(many.group(2)));
        }
        return plain(message);
    }

    private static String operator(String message) {
        Matcher operands = OPERANDS.matcher(message);
        if (!operands.find()) {
            return plain(message);
        }
        String sign = operands.group(1);
        String instead = switch (sign) {
            case "+" -> " Say a.plus(b).";
            case "-" -> " Say a.minus(b).";
            case "*" -> " Say a.times(2).";
            case "/" -> " Say a.dividedBy(2).";
            default -> "";
        };
        return "“%s” does not go between %s and %s.%s"
                .formatted(sign, aType(operands.group(2)), aType(operands.group(3)), instead);
    }

    private static String types(String list) {
        String inside = list.strip();
        if (inside.isEmpty() || inside.startsWith("no arg") || inside.startsWith("compiler.misc.no.args")) {
            return "nothing in its brackets";
        }
        List<String> each =
                Arrays.stream(inside.split(",(?![^<]*>)")).map(Wording::aType).toList();
        return String.join(", ", each);
    }

    /** A type with its article, as a maker would say it. */
    static String aType(String name) {
        String plain = shortName(name.strip());
        return switch (plain) {
            case "String", "CharSequence" -> "a text in quotes";
            case "String..." -> "texts in quotes";
            case "int", "long", "short", "byte", "Integer", "Long" -> "a whole number";
            case "double", "float", "Double", "Float" -> "a number";
            case "boolean", "Boolean" -> "true or false";
            case "void" -> "nothing";
            case "<null>", "<nulltype>" -> "null";
            default ->
                plain.endsWith("...")
                        ? "any number of " + plain.substring(0, plain.length() - 3)
                        : ("AEIOUaeiou".indexOf(plain.charAt(0)) >= 0 ? "an " : "a ") + plain;
        };
    }

    /** Names without their packages. */
    private static String shortName(String name) {
        return name.replaceAll("(?:[\\w$]+\\.)+(?=\\w)", "");
    }

    private static String lastWord(String span) {
        return span.strip().replaceFirst("(?s).*\\W(?=\\w+\\W*$)", "");
    }

    private static String plain(String message) {
        String first = shortName(message.strip().lines().findFirst().orElse("This makes no sense here."));
        return capital(first) + (first.endsWith(".") ? "" : ".");
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
