package org.kerfleaf.kernel.compile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Who declares which name in a workbook. The first to declare a name has it. */
final class Names {
    /** What the compiler itself calls a value without a name, or a class. */
    private static final Pattern NUMBERED = Pattern.compile("(?<![\\w$])\\$\\w*");

    private final List<Piece> pieces;
    private final Map<Piece, Integer> order = new LinkedHashMap<>();

    Names(List<Piece> pieces) {
        this.pieces = pieces;
        pieces.forEach(piece -> order.put(piece, order.size()));
    }

    /** The place of a piece in the document, live values last. */
    int orderOf(Piece piece) {
        return order.get(piece);
    }

    /** The first piece that declares a name. */
    Optional<Piece> declaring(String name) {
        return pieces.stream()
                .filter(piece ->
                        piece.names().stream().anyMatch(one -> one.name().equals(name)))
                .findFirst();
    }

    /** All names of the workbook. */
    List<String> all() {
        return pieces.stream()
                .flatMap(piece -> piece.names().stream())
                .map(Declared::name)
                .distinct()
                .toList();
    }

    /** Refuses a piece that declares a name which is taken, says one that is none, or is a comment without an end. */
    Optional<Refusal> refuse(Piece piece) {
        if (Masked.openComment(piece.text()) == 0) {
            return Optional.of(piece.refusal(0, "The comment does not end: */ is missing."));
        }
        Matcher numbered = NUMBERED.matcher(Masked.of(piece.text()));
        if (numbered.find()) {
            return Optional.of(piece.refusal(
                    numbered.start(), "“%s” is no name. Give the value a name.".formatted(numbered.group())));
        }
        return piece.names().stream()
                .flatMap(name -> taken(piece, name).stream().map(words -> piece.refusal(name.offset(), words)))
                .findFirst();
    }

    private Optional<String> taken(Piece piece, Declared name) {
        if (name.kind() == Declared.Kind.METHOD && Vocabulary.hasMethod(name.name())
                || name.kind() == Declared.Kind.TYPE && Vocabulary.hasType(name.name())) {
            return Optional.of("“%s” is a word of the workbook's own. Another name would be right, like “%s”."
                    .formatted(name.name(), own(name)));
        }
        return pieces.stream()
                .filter(other -> order.get(other) <= order.get(piece))
                .flatMap(other -> other.names().stream()
                        .filter(one -> other != piece || one.offset() < name.offset())
                        .filter(name::clashesWith)
                        .map(one -> (name.kind() == Declared.Kind.VARIABLE
                                        ? "“%s” has its value already, in line %d. One name, one value."
                                        : "“%s” is said already, in line %d. One name, one thing.")
                                .formatted(
                                        name.name(),
                                        other.problem(one.offset(), "").line())))
                .findFirst();
    }

    private static String own(Declared name) {
        String my = name.kind() == Declared.Kind.TYPE ? "My" : "my";
        return my + Character.toUpperCase(name.name().charAt(0)) + name.name().substring(1);
    }
}
