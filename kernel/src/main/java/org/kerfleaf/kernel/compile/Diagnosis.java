package org.kerfleaf.kernel.compile;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
import org.kerfleaf.kernel.cell.CellProblem;

/** Says why a piece did not compile: the first thing wrong with itself, or else the name it waits for. */
final class Diagnosis {
    private static final Pattern LAST_WORD =
            Pattern.compile("([\\p{L}_$][\\w$]*)\\W*$", Pattern.UNICODE_CHARACTER_CLASS);

    private static final Comparator<CellProblem> PLACE =
            Comparator.comparingInt(CellProblem::line).thenComparingInt(CellProblem::column);

    private final JShell shell;
    private final Names names;
    private final Map<Piece, Refusal> refused;

    /** @param refused the pieces refused so far, which is all that stand above a piece when it is asked about */
    Diagnosis(JShell shell, Names names, Map<Piece, Refusal> refused) {
        this.shell = shell;
        this.names = names;
        this.refused = refused;
    }

    Optional<Refusal> of(Piece piece, List<Snippet> made) {
        for (Snippet snippet : made) {
            Status status = shell.status(snippet);
            if (status == Status.REJECTED) {
                return Optional.of(rejected(piece, snippet));
            }
            // An import that is said again further down is overwritten by that one, which changes nothing.
            if (status != Status.VALID && snippet instanceof DeclarationSnippet) {
                return Optional.of(unresolved(piece, snippet));
            }
        }
        if (made.isEmpty()) {
            return Optional.of(piece.refusal(0, "This makes no sense here."));
        }
        if (piece.isLive() && made.stream().anyMatch(snippet -> !hasValue(snippet))) {
            return Optional.of(piece.refusal(0, "Prose shows the value of one expression; this has none."));
        }
        return Optional.empty();
    }

    private static boolean hasValue(Snippet snippet) {
        return snippet.kind() == Snippet.Kind.EXPRESSION
                || snippet.subKind() == Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND;
    }

    private Refusal rejected(Piece piece, Snippet snippet) {
        Refusal waiting = null;
        for (Diag diag : shell.diagnostics(snippet).filter(Diag::isError).toList()) {
            Refusal refusal = of(piece, diag);
            if (refusal.waitsFor().isEmpty()) {
                return refusal;
            }
            waiting = first(waiting, refusal);
        }
        return waiting != null ? waiting : piece.refusal(0, "This makes no sense here.");
    }

    // The compiler looks at what stands in brackets before what stands in front of them.
    private static Refusal first(Refusal known, Refusal other) {
        return known == null || PLACE.compare(other.problem(), known.problem()) < 0 ? other : known;
    }

    private Refusal of(Piece piece, Diag diag) {
        String message = diag.getMessage(Locale.ROOT);
        int start = (int) diag.getStartPosition();
        int end = (int) diag.getEndPosition();
        String code = diag.getCode();
        if (code.startsWith("compiler.err.cant.resolve")) {
            Matcher word = LAST_WORD.matcher(piece.text().substring(Math.max(0, start), Math.max(start, end)));
            if (word.find()) {
                return notKnown(piece, word.group(1), start + word.start(1), message);
            }
        }
        int at = clamp(piece, place(piece, diag, message));
        String span = piece.text().substring(clamp(piece, start), clamp(piece, Math.max(start, end)));
        return refusal(piece, piece.problem(at, Wording.of(code, message, piece.text(), at, span)));
    }

    private static int place(Piece piece, Diag diag, String message) {
        String code = diag.getCode();
        int position = (int) diag.getPosition();
        if (code.startsWith("compiler.err.cant.apply")) {
            // Not the beginning of a chain of words, but the one that was given what it does not take.
            int word = Masked.indexOfWord(Masked.of(piece.text()), Wording.called(message), clamp(piece, position));
            return word < 0 ? (int) diag.getStartPosition() : word;
        }
        boolean between = code.startsWith("compiler.err.expected") || code.equals("compiler.err.premature.eof");
        return between ? position : (int) diag.getStartPosition();
    }

    private static int clamp(Piece piece, int offset) {
        return Math.max(0, Math.min(offset, piece.text().length()));
    }

    private Refusal unresolved(Piece piece, Snippet snippet) {
        List<String> missing =
                shell.unresolvedDependencies((DeclarationSnippet) snippet).toList();
        Refusal waiting = null;
        for (String one : missing) {
            String bare = one.replaceFirst("\\(.*", "");
            String name = bare.substring(bare.lastIndexOf(' ') + 1);
            Refusal refusal = notKnown(piece, name, piece.find(name), "");
            if (refusal.waitsFor().isEmpty()) {
                return refusal;
            }
            waiting = first(waiting, refusal);
        }
        return waiting != null ? waiting : rejected(piece, snippet);
    }

    private Refusal notKnown(Piece piece, String name, int at, String message) {
        boolean member = at > 0 && piece.text().substring(0, at).stripTrailing().endsWith(".");
        Optional<Piece> declaring = member ? Optional.empty() : names.declaring(name);
        if (declaring.isPresent() && declaring.get() != piece) {
            Piece other = declaring.get();
            if (names.orderOf(other) > names.orderOf(piece)) {
                return refusal(
                        piece,
                        piece.problem(
                                at,
                                "“%s” is said further down, in line %d. Move that above this."
                                        .formatted(name, other.line())));
            }
            if (refused.containsKey(other)) {
                return waits(piece, at, other);
            }
        }
        return refusal(piece, piece.problem(at, notKnownWords(piece, name, at, member, message)));
    }

    private String notKnownWords(Piece piece, String name, int at, boolean member, String message) {
        String after = piece.text().substring(clamp(piece, at + name.length())).stripLeading();
        if (piece.text().substring(0, at).isBlank() && after.matches("(?s)=[^=].*")) {
            return Vocabulary.hasType(name)
                    ? "A name is missing: “%s” only says what kind of thing it is. Write: %s name = ..."
                            .formatted(name, name)
                    : "Nothing is called “%s” yet. To name it so, write: var %s = ...".formatted(name, name);
        }
        String meant = Nearest.to(name, known(piece, at, after.startsWith("(")))
                .map(near -> " Did you mean “%s”?".formatted(near))
                .orElse("");
        return Wording.notKnown(name, member, message) + meant;
    }

    private Refusal waits(Piece piece, int at, Piece other) {
        return waits(piece, at, other, names, refused);
    }

    /** The refusal of a piece that is right by itself: it waits for the name at the root, where something is wrong. */
    static Refusal waits(Piece piece, int at, Piece other, Names names, Map<Piece, Refusal> refused) {
        Piece root = Optional.ofNullable(refused.get(other))
                .flatMap(Refusal::waitsFor)
                .flatMap(names::declaring)
                .orElse(other);
        return new Refusal(
                piece.live(),
                Optional.of(root.called()),
                piece.problem(at, "Waits for “%s”, line %d.".formatted(root.called(), root.line())));
    }

    private List<String> known(Piece piece, int at, boolean called) {
        return shell.sourceCodeAnalysis().completionSuggestions(piece.text().substring(0, at), at, new int[1]).stream()
                .map(Suggestion::continuation)
                .filter(word -> word.contains("(") == called)
                .map(word -> word.replaceFirst("(?U)\\W.*", ""))
                .filter(word -> !word.isEmpty())
                .distinct()
                .toList();
    }

    private static Refusal refusal(Piece piece, CellProblem problem) {
        return new Refusal(piece.live(), Optional.empty(), problem);
    }
}
