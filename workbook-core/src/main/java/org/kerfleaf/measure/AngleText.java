package org.kerfleaf.measure;

import java.math.BigInteger;
import java.util.regex.Pattern;

/** Reads angles and slopes. */
final class AngleText {
    private static final String WANTED =
            "Angles and slopes are said like 30 deg, 30°, 6 in 12, 6/12, 1:2 (rise:run) or 50 %.";

    private static final Pattern DEGREES = Pattern.compile("°|deg(rees?)?(?!\\p{L})\\.?");
    private static final Pattern PER_CENT = Pattern.compile("%|per ?cent(?!\\p{L})");
    private static final Pattern TO_RUN = Pattern.compile("[:/]|-? ?(in|on|over)(?!\\p{L})(-(?=[0-9]))?");
    private static final Pattern PLAIN_FRACTION = Pattern.compile("[0-9]+ *[/⁄∕] *[0-9]+");

    private static final Rational PER_DEGREE = Rational.of(1_000_000_000);

    private AngleText() {}

    static Angle parse(String text) {
        TextCursor cursor = new TextCursor(text, WANTED);
        boolean negative = cursor.take('-');
        cursor.skipSpaces();
        Angle angle = read(cursor, negative);
        cursor.skipSpaces();
        if (!cursor.atEnd()) {
            throw cursor.stop("nothing is wanted after this, and there is %s".formatted(cursor.shown()));
        }
        return angle;
    }

    private static Angle read(TextCursor text, boolean negative) {
        int start = text.at();
        Rational size = NumberText.read(text);
        Rational number = negative ? size.negated() : size;
        String written = text.since(start);
        text.skipSpaces();
        if (!text.take(DEGREES).isEmpty()) {
            return degrees(text, start, number);
        }
        if (!text.take(PER_CENT).isEmpty()) {
            return slope(number, Rational.of(100));
        }
        if (text.atEnd()) {
            return bare(text, number, written);
        }
        if (text.take(TO_RUN).isEmpty()) {
            throw text.stop("after %s degrees, per cent or a run is wanted, not %s".formatted(written, text.shown()));
        }
        text.skipSpaces();
        return overRun(text, number);
    }

    private static Angle degrees(TextCursor text, int start, Rational number) {
        BigInteger nanodegrees = number.times(PER_DEGREE).rounded();
        if (nanodegrees.bitLength() > 63) {
            throw text.stopAt(start, "this is more than can be counted, about 9 thousand million degrees");
        }
        return new Angle(nanodegrees.longValueExact());
    }

    private static Angle overRun(TextCursor text, Rational rise) {
        int start = text.at();
        Rational run = NumberText.read(text);
        if (run.isZero()) {
            throw text.stopAt(start, "a run of 0 has no slope");
        }
        return slope(rise, run);
    }

    private static Angle bare(TextCursor text, Rational number, String written) {
        if (PLAIN_FRACTION.matcher(written).matches()) {
            return slope(number, Rational.of(1));
        }
        throw text.stopAt(
                text.at(),
                "%s could be degrees or a slope".formatted(written),
                "Write %s deg, or %s in 12 for a rise of %s over a run of 12.".formatted(written, written, written));
    }

    private static Angle slope(Rational rise, Rational run) {
        return Angle.ofRadians(StrictMath.atan2(rise.toDouble(), run.toDouble()));
    }
}
