package org.kerfleaf.kernel.compile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A name that a piece declares, read from its text so that it is known also where the text does not compile.
 *
 * @param name the name
 * @param kind what it names
 * @param parameters the types of a method's parameters as written, else empty
 * @param offset where it stands in the piece
 */
public record Declared(String name, Kind kind, String parameters, int offset) {
    /** What a name names. */
    public enum Kind {
        VARIABLE,
        METHOD,
        TYPE
    }

    private static final int UNICODE = Pattern.UNICODE_CHARACTER_CLASS;
    private static final String MODIFIERS =
            "(?:(?:final|public|private|protected|static|abstract|sealed|non-sealed|strictfp|@\\w+)\\s+)*+";
    private static final Pattern TYPE =
            Pattern.compile("\\s*" + MODIFIERS + "(?:class|interface|enum|record|@interface)\\s+([\\w$]+)", UNICODE);
    private static final Pattern OTHER = Pattern.compile(
            "\\s*" + MODIFIERS
                    + "(?:<[^()=;]*?>\\s*)?(?<type>[\\p{L}_][\\w$]*(?:\\s*\\.\\s*[\\w$]+)*)\\s*(?:<[^()=;]*>)?\\s*(?:\\[\\s*]\\s*)*"
                    + "(?<=[\\s>\\]])(?<name>[\\p{L}_][\\w$]*)\\s*(?:\\[\\s*]\\s*)*(?<next>[(=;,]|$|\\n)",
            UNICODE);
    private static final Set<String> NOT_A_TYPE = Set.of(
            "return",
            "throw",
            "new",
            "else",
            "import",
            "package",
            "assert",
            "yield",
            "case",
            "goto",
            "break",
            "continue");

    /** The names that one well-formed piece declares. */
    public static List<Declared> in(String piece) {
        return at(Masked.of(piece), 0);
    }

    /** The names that a stretch of text seems to declare, whatever is wrong with it: one look at every line. */
    static List<Declared> inBroken(String text) {
        String masked = Masked.of(text);
        List<Declared> all = new ArrayList<>();
        for (int begin = 0; begin >= 0 && begin < masked.length(); ) {
            for (Declared one : at(masked, begin)) {
                if (all.stream().noneMatch(known -> known.offset == one.offset)) {
                    all.add(one);
                }
            }
            int end = masked.indexOf('\n', begin);
            begin = end < 0 ? -1 : end + 1;
        }
        return all;
    }

    private static List<Declared> at(String masked, int begin) {
        Matcher type = TYPE.matcher(masked).region(begin, masked.length());
        if (type.lookingAt()) {
            return List.of(new Declared(type.group(1), Kind.TYPE, "", type.start(1)));
        }
        Matcher other = OTHER.matcher(masked).region(begin, masked.length()).useTransparentBounds(true);
        if (!other.lookingAt() || NOT_A_TYPE.contains(other.group("type"))) {
            return List.of();
        }
        if (other.group("next").equals("(")) {
            String parameters = parameterTypes(masked, other.end());
            return List.of(new Declared(other.group("name"), Kind.METHOD, parameters, other.start("name")));
        }
        List<Declared> names = new ArrayList<>();
        names.add(new Declared(other.group("name"), Kind.VARIABLE, "", other.start("name")));
        moreVariables(masked, other.start("next"), names);
        return names;
    }

    private static final Pattern NAME_AFTER_COMMA =
            Pattern.compile(",\\s*([\\p{L}_][\\w$]*)\\s*(?=[=,;\\[]|$)", UNICODE);

    private static void moreVariables(String masked, int from, List<Declared> names) {
        int depth = 0;
        for (int i = from; i < masked.length(); i++) {
            char c = masked.charAt(i);
            depth += "([{".indexOf(c) >= 0 ? 1 : ")]}".indexOf(c) >= 0 ? -1 : 0;
            if (c == ';' && depth == 0) {
                return;
            }
            Matcher next = NAME_AFTER_COMMA.matcher(masked).region(i, masked.length());
            if (c == ',' && depth == 0 && next.lookingAt()) {
                names.add(new Declared(next.group(1), Kind.VARIABLE, "", next.start(1)));
            }
        }
    }

    private static String parameterTypes(String masked, int from) {
        int end = masked.indexOf(')', from);
        String inside = masked.substring(from, end < 0 ? masked.length() : end);
        return Arrays.stream(inside.split(",(?![^<]*>)"))
                .map(one -> one.strip()
                        .replaceFirst("^(?:final\\s+|@\\w+\\s+)*", "")
                        .replaceFirst("(?U)\\s*[\\w$]+$", "")
                        .replaceAll("\\s+", " "))
                .collect(Collectors.joining(", "));
    }

    /** Whether both cannot be in one workbook. */
    boolean clashesWith(Declared other) {
        return kind == other.kind && name.equals(other.name) && parameters.equals(other.parameters);
    }
}
