package org.kerfleaf.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.kerfleaf.testing.Property.forAll;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Supplier;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.kerfleaf.testing.Draw;

class LengthPropertiesTest {
    private static final int CASES = 5_000;

    @Test
    void toString_anyLength_isReadBackExactly() {
        forAll(
                1,
                CASES,
                LengthPropertiesTest::anywhere,
                length -> assertThat(Length.parse(length.toString())).isEqualTo(length));
    }

    @Test
    void toString_shopLength_isReadBackExactly() {
        forAll(
                2,
                CASES,
                Draw::length,
                length -> assertThat(Length.parse(length.toString())).isEqualTo(length));
    }

    @Test
    void parse_oneLengthWrittenInManyWays_isOneLength() {
        record Written(long sixtyFourths, String text) {}
        forAll(
                3,
                CASES,
                random -> {
                    long count = random.nextLong(64 * 200);
                    return new Written(count, writeInches(random, count));
                },
                written -> assertThat(Length.parse(written.text()))
                        .isEqualTo(Length.ofSixtyFourths(written.sixtyFourths())));
    }

    @Test
    void parse_metricLengthWrittenInManyWays_isOneLength() {
        record Written(long tenths, String text) {}
        forAll(
                4,
                CASES,
                random -> {
                    long tenths = random.nextLong(50_000);
                    return new Written(tenths, writeMetric(random, tenths));
                },
                written -> assertThat(Length.parse(written.text()).nanometres()).isEqualTo(written.tenths() * 100_000));
    }

    @Test
    void parse_anyLetters_areALengthOrAreRefusedWithTheirColumn() {
        String letters = "0123456789 /-.,'\"½inftmcyd+e²³′″⁄😀x";
        forAll(
                5,
                20_000,
                random -> {
                    StringBuilder text = new StringBuilder();
                    random.ints(random.nextInt(14), 0, letters.codePointCount(0, letters.length()))
                            .forEach(i -> text.appendCodePoint(letters.codePointAt(letters.offsetByCodePoints(0, i))));
                    return text.toString();
                },
                text -> {
                    try {
                        Length length = Length.parse(text);
                        assertThat(Length.parse(length.toString())).isEqualTo(length);
                    } catch (MeasureTextException refused) {
                        assertThat(refused.column()).isBetween(1, text.codePointCount(0, text.length()) + 1);
                        assertThat(refused.text()).isEqualTo(text);
                    }
                });
    }

    @Test
    void read_nearest_isWithinHalfAStepAndHairOnlyWhenDue() {
        forAll(6, CASES, LengthPropertiesTest::reading, one -> {
            TapeReading read = one.length().read(one.style());
            long off = one.length().nanometres() - printed(read).nanometres();
            assertThat(Math.abs(off) * 2).isLessThanOrEqualTo(one.style().step().nanometres());
            boolean due = one.style().unit() == LengthUnit.INCHES && Math.abs(off) * 256 >= 25_400_000;
            boolean more = read.negative() ? off < 0 : off > 0;
            assertThat(read.hair())
                    .isEqualTo(!due ? TapeReading.Hair.EXACT : more ? TapeReading.Hair.HEAVY : TapeReading.Hair.LIGHT);
        });
    }

    @Test
    void read_downOrUp_isNeverAboveOrBelowByAStepOrMore() {
        forAll(7, CASES, LengthPropertiesTest::reading, one -> {
            long step = one.style().step().nanometres();
            Length size = one.length().absolute();
            Length down = printed(size.read(one.style(), RoundingMode.DOWN));
            Length up = printed(size.read(one.style(), RoundingMode.UP));
            assertThat(size.minus(down).nanometres()).isBetween(0L, step - 1);
            assertThat(up.minus(size).nanometres()).isBetween(0L, step - 1);
            assertThat(size.read(one.style(), RoundingMode.DOWN).hair()).isEqualTo(TapeReading.Hair.EXACT);
        });
    }

    @Test
    void read_fraction_isInLowestTermsAndLessThanOne() {
        forAll(8, CASES, LengthPropertiesTest::reading, one -> {
            TapeReading read = one.length().read(one.style());
            assertThat(read.numerator()).isBetween(0, read.denominator() - 1);
            int common = BigInteger.valueOf(read.numerator())
                    .gcd(BigInteger.valueOf(read.denominator()))
                    .intValue();
            assertThat(common).isEqualTo(1);
        });
    }

    @Test
    void arithmetic_anyTwo_isExactOrRefusedAndNeverWraps() {
        record Two(Length one, Length other, long count) {}
        forAll(
                9,
                CASES,
                random -> new Two(anywhere(random), anywhere(random), random.nextLong() >> random.nextInt(64)),
                two -> {
                    BigInteger one = BigInteger.valueOf(two.one().nanometres());
                    BigInteger other = BigInteger.valueOf(two.other().nanometres());
                    exactOrRefused(one.add(other), () -> two.one().plus(two.other()));
                    exactOrRefused(one.subtract(other), () -> two.one().minus(two.other()));
                    exactOrRefused(
                            one.multiply(BigInteger.valueOf(two.count())),
                            () -> two.one().times(two.count()));
                    exactOrRefused(one.negate(), () -> two.one().negated());
                    exactOrRefused(one.abs(), () -> two.one().absolute());
                });
    }

    @Test
    void compareTo_anyTwo_agreesWithEqualsAndTheQuestions() {
        forAll(10, CASES, random -> Draw.listOf(random, 2, 2, LengthPropertiesTest::near), pair -> {
            Length one = pair.get(0);
            Length other = pair.get(1);
            int order = Long.compare(one.nanometres(), other.nanometres());
            assertThat(Integer.signum(one.compareTo(other))).isEqualTo(order).isEqualTo(-other.compareTo(one));
            assertThat(one.equals(other)).isEqualTo(order == 0);
            assertThat(one.isLongerThan(other)).isEqualTo(order > 0);
            assertThat(one.isShorterThan(other)).isEqualTo(order < 0);
            assertThat(one.max(other).minus(one.min(other)))
                    .isEqualTo(one.minus(other).absolute());
        });
    }

    @Test
    void dividedBy_pieces_areTheLengthAgainToHalfANanometreEach() {
        forAll(11, CASES, Draw::length, length -> {
            for (long pieces = 1; pieces <= 7; pieces++) {
                long off = length.dividedBy(pieces).times(pieces).minus(length).nanometres();
                assertThat(Math.abs(off) * 2).isLessThanOrEqualTo(pieces);
            }
        });
    }

    private record Reading(Length length, MeasureStyle style) {}

    private static Reading reading(RandomGenerator random) {
        Length length = Draw.oneOf(random, Draw.length(random), anywhere(random), near(random));
        MeasureStyle style = Draw.oneOf(
                random,
                new MeasureStyle(LengthUnit.INCHES, Draw.oneOf(random, 8, 16, 32, 64)),
                new MeasureStyle(LengthUnit.MILLIMETRES, Draw.oneOf(random, 1, 2)));
        return new Reading(random.nextBoolean() ? length : length.negated(), style);
    }

    /** Any count but the least, as often small as large. */
    private static Length anywhere(RandomGenerator random) {
        return new Length(Math.max(random.nextLong() >> random.nextInt(64), -Long.MAX_VALUE));
    }

    private static Length near(RandomGenerator random) {
        return new Length(random.nextLong(-4, 5));
    }

    private static Length printed(TapeReading read) {
        BigDecimal size = BigDecimal.valueOf(read.unit().nanometres());
        BigDecimal nanometres = size.multiply(BigDecimal.valueOf(read.whole()))
                .add(size.multiply(BigDecimal.valueOf(read.numerator()))
                        .divide(BigDecimal.valueOf(read.denominator())));
        Length length = new Length(nanometres.longValueExact());
        return read.negative() ? length.negated() : length;
    }

    private static void exactOrRefused(BigInteger expected, Supplier<Length> sum) {
        if (expected.bitLength() <= 63) {
            assertThat(sum.get().nanometres()).isEqualTo(expected.longValueExact());
        } else {
            assertThatThrownBy(sum::get)
                    .isInstanceOf(ArithmeticException.class)
                    .hasMessageContaining("beyond what can be counted");
        }
    }

    private static String writeInches(RandomGenerator random, long sixtyFourths) {
        long whole = sixtyFourths / 64;
        String feet = "";
        if (random.nextBoolean() && whole >= 12) {
            feet = whole / 12
                    + Draw.oneOf(random, "'", "′", "’", " ft", " feet", "ft.")
                    + Draw.oneOf(random, " ", ", ", " and ");
            whole %= 12;
        }
        long reduced = Math.max(1, Long.lowestOneBit(sixtyFourths % 64 | 64));
        String fraction = sixtyFourths % 64 / reduced + Draw.oneOf(random, "/", "⁄", " / ") + 64 / reduced;
        String mixed = whole + Draw.oneOf(random, " ", "-", "\u00a0", "  ") + fraction;
        String decimal = BigDecimal.valueOf(whole)
                .add(BigDecimal.valueOf(sixtyFourths % 64).divide(BigDecimal.valueOf(64)))
                .toPlainString();
        String number = Draw.oneOf(random, mixed, mixed, decimal);
        return feet + number + Draw.oneOf(random, "\"", "″", "”", "''", " in", " inches", "-inch", " IN.");
    }

    private static String writeMetric(RandomGenerator random, long tenths) {
        BigDecimal millimetres = BigDecimal.valueOf(tenths, 1);
        List<String> ways = List.of(
                millimetres.toPlainString() + " mm",
                millimetres.toPlainString().replace('.', ',') + "mm",
                millimetres.movePointLeft(1).toPlainString() + " cm",
                millimetres.movePointLeft(3).toPlainString() + "\u2009m",
                tenths / 10_000 + " m " + BigDecimal.valueOf(tenths % 10_000, 1) + " mm",
                tenths / 10_000 + "m, " + BigDecimal.valueOf(tenths % 10_000, 2).toPlainString() + " cm");
        return ways.get(random.nextInt(ways.size()));
    }
}
