package org.kerfleaf.measure;

import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A place in a text that is being read. The text is read in lower case with one sign for each thing people write in
 * several (spaces, primes, dashes, division strokes), character for character, so that columns stay those of the text.
 */
final class TextCursor {
    /** No measure is longer; what is gets refused before anything is counted in it. */
    private static final int LONGEST = 120;

    private static final String WRITTEN = "′’‘´`ʹ″”“„ʺ⁄∕‐‑‒–−∶º˚";
    private static final String READ = "''''''\"\"\"\"\"//-----:°°";

    private static final Pattern SPACES = Pattern.compile(" *");
    private static final Pattern WORD = Pattern.compile("[^ ]{1,20}");

    private final String text;
    private final String plain;
    private final String wanted;
    private int at;

    /** @param wanted what a good text looks like, for the message when this one is not */
    TextCursor(String text, String wanted) {
        this.text = Objects.requireNonNull(text, "text");
        this.wanted = wanted;
        this.plain = plain(text);
        if (text.length() > LONGEST) {
            at = LONGEST;
            throw stop("this is longer than any measure, which has %d letters at most".formatted(LONGEST));
        }
        skipSpaces();
        if (atEnd()) {
            throw stopAt(0, "there is nothing to read");
        }
    }

    static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (char letter : text.toCharArray()) {
            int sign = WRITTEN.indexOf(letter);
            boolean space = Character.isSpaceChar(letter) || Character.isWhitespace(letter);
            plain.append(sign >= 0 ? READ.charAt(sign) : space ? ' ' : Character.toLowerCase(letter));
        }
        return plain.toString();
    }

    int at() {
        return at;
    }

    void goBackTo(int earlier) {
        at = earlier;
    }

    boolean atEnd() {
        return at == plain.length();
    }

    /** The next sign, or NUL at the end. */
    char next() {
        return atEnd() ? '\0' : plain.charAt(at);
    }

    boolean seesDigit() {
        return next() >= '0' && next() <= '9';
    }

    boolean sees(Pattern pattern) {
        return matcher(pattern).lookingAt();
    }

    /** Moves past the sign if it is the next one. */
    boolean take(char sign) {
        boolean there = next() == sign;
        if (there) {
            at++;
        }
        return there;
    }

    /** Moves past what matches here and returns it as read; empty if nothing does. */
    String take(Pattern pattern) {
        Matcher here = matcher(pattern);
        if (!here.lookingAt()) {
            return "";
        }
        at = here.end();
        return here.group();
    }

    private Matcher matcher(Pattern pattern) {
        return pattern.matcher(plain).region(at, plain.length()).useTransparentBounds(true);
    }

    void skipSpaces() {
        take(SPACES);
    }

    /** What was written from there to here. */
    String since(int start) {
        return text.substring(start, at).strip();
    }

    /** The word that stands here as written, quoted, or that there is none. */
    String shown() {
        int start = at;
        take(WORD);
        String word = since(start);
        at = start;
        return word.isEmpty() ? "the end" : "“" + word + "”";
    }

    MeasureTextException stop(String wrong) {
        return stopAt(at, wrong);
    }

    MeasureTextException stopAt(int place, String wrong) {
        return stopAt(place, wrong, wanted);
    }

    MeasureTextException stopAt(int place, String wrong, String right) {
        return new MeasureTextException(text, text.codePointCount(0, place) + 1, wrong, right);
    }
}
