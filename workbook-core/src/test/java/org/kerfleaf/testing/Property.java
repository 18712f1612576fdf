package org.kerfleaf.testing;

import java.util.function.Consumer;
import java.util.function.Function;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/**
 * A promise checked against many cases drawn from a seed.
 *
 * <pre>{@code
 * forAll(7, 1000, Draw::length, length -> assertThat(Length.parse(length.toString())).isEqualTo(length));
 * }</pre>
 */
public final class Property {
    private Property() {}

    /**
     * Draws the cases one after another and checks each.
     *
     * @param seed any number; the same seed draws the same cases everywhere
     * @param cases how many, at least one
     * @param generator draws one case; its text form should tell a reader what the case is
     * @param property throws if the promise is broken
     * @throws AssertionError at the first case that breaks it, with seed, number and case in the message
     */
    public static <T> void forAll(
            long seed,
            int cases,
            Function<? super RandomGenerator, ? extends T> generator,
            Consumer<? super T> property) {
        if (cases < 1) {
            throw new IllegalArgumentException(
                    "Cases (%d): a property of no case is checked by nothing.".formatted(cases));
        }
        RandomGenerator random = seeded(seed);
        for (int number = 1; number <= cases; number++) {
            T drawn = generator.apply(random);
            try {
                property.accept(drawn);
            } catch (RuntimeException | AssertionError broken) {
                throw new AssertionError(
                        "Seed %d, case %d of %d: %s%n%s".formatted(seed, number, cases, drawn, broken.getMessage()),
                        broken);
            }
        }
    }

    /** The generator every seeded test uses. */
    public static RandomGenerator seeded(long seed) {
        return RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    }
}
