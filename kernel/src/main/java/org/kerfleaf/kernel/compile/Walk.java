package org.kerfleaf.kernel.compile;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kerfleaf.kernel.compile.Evaluated.Seen;

/**
 * Brings a session to a workbook's text. It goes through the pieces from the top and evaluates those that are new and those
 * that would see something else now than they saw: what a piece says is looked up in everything above it, as it came out.
 * While a piece is evaluated nothing below it that it names is there, just as in a new session. Where that does not make
 * the same as a new session, there is no result.
 */
final class Walk {
    private final CompileSession session;
    private final List<Piece> pieces;
    private final Set<Piece> refused;
    private final Map<Piece, Evaluated> same = new HashMap<>();
    private final Map<Piece, Evaluated> replaceable = new HashMap<>();
    private final Map<Piece, Evaluated> done = new LinkedHashMap<>();
    private final Set<Evaluated> standing = new HashSet<>();
    private boolean exact;

    /** @param refused pieces that are not evaluated at all */
    Walk(CompileSession session, List<Piece> pieces, Set<Piece> refused) {
        this.session = session;
        this.pieces = pieces;
        this.refused = refused;
    }

    /** What became of every piece that is not refused; nothing if only a new session tells. */
    Optional<Map<Piece, Evaluated>> go() {
        boolean fresh = session.alive().isEmpty();
        match();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            if (!refused.contains(piece)) {
                if (!fresh && importsChanged(piece)) {
                    return Optional.empty();
                }
                Evaluated one = keepOrEvaluate(piece, i);
                done.put(piece, one);
                standing.add(one);
            }
        }
        exact = comesToTheSame();
        return fresh || exact ? Optional.of(done) : Optional.empty();
    }

    /** Whether what the session holds now is a base from which edits come to what a new session comes to. */
    boolean isExact() {
        return exact;
    }

    // What is there already is matched by its text; what is gone is dropped, unless a new text of the same name
    // replaces it.
    private void match() {
        Map<String, Deque<Evaluated>> byText = new HashMap<>();
        session.alive()
                .forEach(one -> byText.computeIfAbsent(key(one.piece()), text -> new ArrayDeque<>())
                        .add(one));
        Set<Evaluated> gone = new HashSet<>(session.alive());
        List<Piece> fresh = new ArrayList<>();
        for (Piece piece : pieces) {
            Deque<Evaluated> found = byText.get(key(piece));
            if (refused.contains(piece)) {
                continue;
            }
            if (found == null || found.isEmpty()) {
                fresh.add(piece);
            } else {
                Evaluated one = found.remove();
                same.put(piece, one);
                gone.remove(one);
            }
        }
        for (Piece piece : fresh) {
            gone.stream()
                    .filter(one -> isReplacedBy(one, piece))
                    .findFirst()
                    .ifPresent(one -> replaceable.put(piece, one));
            gone.remove(replaceable.get(piece));
        }
        for (Evaluated one : List.copyOf(session.alive())) {
            if (gone.contains(one)) {
                session.drop(one);
            }
        }
    }

    private static String key(Piece piece) {
        return (piece.isLive() ? "prose " : "cell ") + piece.text();
    }

    /** Whether the session takes the piece for a new text of that one, and the piece does not speak of its own value. */
    private static boolean isReplacedBy(Evaluated one, Piece piece) {
        if (one.snippets().size() != 1
                || one.piece().names().size() != 1
                || piece.names().size() != 1) {
            return false;
        }
        Declared name = piece.names().get(0);
        return one.piece().names().get(0).clashesWith(name)
                && (name.kind() != Declared.Kind.VARIABLE
                        || !Mention.in(piece.text()
                                        .substring(name.offset() + name.name().length()))
                                .contains(new Mention(name.name(), false)));
    }

    private boolean importsChanged(Piece piece) {
        Evaluated before = same.get(piece);
        return piece.isImport() && (before == null || !session.alive().contains(before))
                || before != null && !before.seen().imports().equals(imports())
                || before == null
                        && session.alive().stream().anyMatch(one -> one.piece().isImport() && !standing.contains(one));
    }

    private List<String> imports() {
        return done.keySet().stream().filter(Piece::isImport).map(Piece::text).toList();
    }

    private Evaluated keepOrEvaluate(Piece piece, int place) {
        Evaluated before = same.get(piece);
        Set<Mention> words = before != null ? before.words() : Mention.in(piece.text());
        boolean kept = before != null && session.alive().contains(before) && session.isAsLeft(before);
        Seen seen = new Seen(imports(), above(words), kept && before.isForward() ? below(words, place) : List.of());
        if (kept && before.seen().equals(seen)) {
            return before;
        }
        hideBelow(words, before, replaceable.get(piece));
        Evaluated old = before != null ? before : replaceable.get(piece);
        if (old != null && (!session.alive().contains(old) || !isReplacedBy(old, piece))) {
            session.drop(old);
            old = null;
        }
        Evaluated one = session.evaluate(piece, words, seen, old);
        return one.isForward() && seen.below().isEmpty() ? session.sawBelow(one, below(words, place)) : one;
    }

    private List<String> above(Set<Mention> words) {
        List<String> above = new ArrayList<>();
        for (Evaluated one : done.values()) {
            if (!Collections.disjoint(session.gives(one), words)) {
                above.add(session.usable(one));
            }
        }
        return above;
    }

    private List<String> below(Set<Mention> words, int place) {
        return pieces.subList(place + 1, pieces.size()).stream()
                .filter(piece -> piece.names().stream()
                        .anyMatch(name ->
                                words.stream().anyMatch(word -> word.name().equals(name.name()))))
                .map(Piece::text)
                .toList();
    }

    private void hideBelow(Set<Mention> words, Evaluated before, Evaluated old) {
        for (Evaluated one : List.copyOf(session.alive())) {
            if (!standing.contains(one)
                    && one != before
                    && one != old
                    && !Collections.disjoint(session.gives(one), words)) {
                session.drop(one);
            }
        }
    }

    /**
     * Whether a new session would have come to the same: nothing changed behind a piece's back, nothing was compiled
     * against a class that is gone, and nobody used what was still waiting for something further down.
     */
    private boolean comesToTheSame() {
        List<Evaluated> all = List.copyOf(done.values());
        for (int i = 0; i < all.size(); i++) {
            Evaluated one = all.get(i);
            if (one.isForward()
                    ? isUsedWhileWaiting(one, i, all)
                    : !session.states(one.snippets()).equals(one.states())) {
                return false;
            }
        }
        return !session.hasStale(all);
    }

    private boolean isUsedWhileWaiting(Evaluated forward, int place, List<Evaluated> all) {
        int complete = place;
        for (int i = place + 1; i < all.size(); i++) {
            if (!Collections.disjoint(session.gives(all.get(i)), forward.words())) {
                complete = i;
            }
        }
        Set<Mention> given = session.gives(forward);
        return complete > place
                && all.subList(0, complete).stream()
                        .anyMatch(other -> other != forward && !Collections.disjoint(other.words(), given));
    }
}
