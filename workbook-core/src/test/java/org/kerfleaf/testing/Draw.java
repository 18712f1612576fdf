package org.kerfleaf.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import org.kerfleaf.measure.Length;

/** Cases to draw for {@link Property#forAll}. */
public final class Draw {
    private static final Length LONGEST = Length.ofInches(400L);

    private Draw() {}

    /** One of the given, each as likely. */
    @SafeVarargs
    public static <T> T oneOf(RandomGenerator random, T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    /** From {@code fewest} to {@code most} things, both included. */
    public static <T> List<T> listOf(
            RandomGenerator random, int fewest, int most, Function<? super RandomGenerator, ? extends T> element) {
        int size = random.nextInt(fewest, most + 1);
        List<T> drawn = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            drawn.add(element.apply(random));
        }
        return List.copyOf(drawn);
    }

    /** Any length from {@code least} to {@code most}, to the nanometre, both included. */
    public static Length length(RandomGenerator random, Length least, Length most) {
        return new Length(random.nextLong(least.nanometres(), most.nanometres() + 1));
    }

    /** A length of a shop, zero to 400 in: some on a 1/64 in, some on a half millimetre, some anywhere. */
    public static Length length(RandomGenerator random) {
        return switch (random.nextInt(3)) {
            case 0 -> sixtyFourths(random, Length.ZERO, LONGEST);
            case 1 -> halfMillimetres(random, Length.ZERO, LONGEST);
            default -> length(random, Length.ZERO, LONGEST);
        };
    }

    /** A whole number of 1/64 in between the two. */
    public static Length sixtyFourths(RandomGenerator random, Length least, Length most) {
        return onStep(random, least, most, Length.ofSixtyFourths(1));
    }

    /** A whole number of half millimetres between the two. */
    public static Length halfMillimetres(RandomGenerator random, Length least, Length most) {
        return onStep(random, least, most, Length.ofMillimetres(0.5));
    }

    private static Length onStep(RandomGenerator random, Length least, Length most, Length step) {
        long first = -Math.floorDiv(-least.nanometres(), step.nanometres());
        long last = Math.floorDiv(most.nanometres(), step.nanometres());
        return step.times(random.nextLong(first, last + 1));
    }
}
