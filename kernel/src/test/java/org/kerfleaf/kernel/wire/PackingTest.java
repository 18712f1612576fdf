package org.kerfleaf.kernel.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.kerfleaf.sketch.Declaration;
import org.kerfleaf.sketch.Live;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;
import org.kerfleaf.sketch.Where;

/** Every value of the sketch goes through a frame and comes out equal. */
class PackingTest {
    private static final long SEED = 20260412;

    /** A record that may hold itself, as deep as one likes. */
    record Nested(Optional<Nested> inside) {}

    private RandomValues values(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        return new RandomValues(random);
    }

    private Sketch sketch(long seed) {
        RandomValues random = values(seed);
        Set<Class<?>> kinds = RandomValues.records(Declaration.class).collect(Collectors.toSet());
        assertThat(kinds).hasSizeGreaterThan(20);
        List<Declaration> declared = new ArrayList<>();
        kinds.stream()
                .sorted((a, b) -> a.getName().compareTo(b.getName()))
                .forEach(kind -> declared.add((Declaration) random.of(kind)));
        return new Sketch("A “box” \n\\ é 木", List.of(new Sketch.Step(1, "Cut")), declared);
    }

    @Test
    void unpack_everyKindOfDeclaration_isEqualAndPacksToTheSameBytes() throws IOException {
        for (long seed = SEED; seed < SEED + 30; seed++) {
            Sketch sketch = sketch(seed);

            byte[] bytes = Packing.pack(Sketch.class, sketch);

            Sketch again = Packing.unpack(Sketch.class, bytes);
            assertThat(again).as("seed " + seed).isEqualTo(sketch);
            assertThat(Packing.pack(Sketch.class, again)).as("seed " + seed).isEqualTo(bytes);
        }
    }

    @Test
    void unpack_everyTraitPlaceLiveValueAndReport_isEqual() {
        RandomValues random = values(SEED);
        for (Class<?> family : List.of(Trait.class, Where.class, Live.class, Report.class)) {
            assertThat(RandomValues.records(family).toList())
                    .hasSizeGreaterThan(2)
                    .allSatisfy(kind -> {
                        Object value = random.of(kind);
                        assertThat((Object) Packing.unpack(family, Packing.pack(family, value)))
                                .isEqualTo(value);
                    });
        }
    }

    @Test
    void unpack_requests_areEqual() throws IOException {
        byte[] code = {1, 2, -3};
        Unit unit = new Unit(0, "A", "Shared0", true, Unit.Value.FIELD, Optional.of("a"), 0, 7, 1, List.of());
        Request.Load load = new Request.Load(
                "A shelf",
                List.of(new Sketch.Step(1, "Cut")),
                List.of(new ClassCode("A", code)),
                List.of(unit),
                List.of("Shared0"),
                true,
                true,
                20_000,
                2_000);
        Request.Run run = new Request.Run(new TreeMap<>(Map.of("Width", "20 in")), Set.of(3), true);

        Request.Load loaded = (Request.Load) Packing.unpack(Request.class, Packing.pack(Request.class, load));

        assertThat(loaded).usingRecursiveComparison().isEqualTo(load);
        assertThat(Packing.unpack(Request.class, Packing.pack(Request.class, run)))
                .isEqualTo(run);
        assertThat(Packing.unpack(Request.class, Packing.pack(Request.class, new Request.Weigh())))
                .isEqualTo(new Request.Weigh());
    }

    @Test
    void unpack_bytesCutShortOrLeftOver_areRefused() {
        byte[] bytes = Packing.pack(Sketch.class, sketch(SEED));

        for (int length = 0; length < bytes.length; length += 1 + length / 50) {
            byte[] torn = Arrays.copyOf(bytes, length);
            assertThatThrownBy(() -> Packing.unpack(Sketch.class, torn)).isInstanceOf(IOException.class);
        }
        assertThatThrownBy(() -> Packing.unpack(Sketch.class, Arrays.copyOf(bytes, bytes.length + 1)))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("left over");
    }

    @Test
    void unpack_anyByteWrong_isAnotherSketchOrRefused() {
        byte[] bytes = Packing.pack(Sketch.class, sketch(SEED));
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);
        for (int i = 0; i < 3000; i++) {
            byte[] wrong = bytes.clone();
            wrong[random.nextInt(wrong.length)] = (byte) random.nextInt();
            try {
                assertThat(Packing.unpack(Sketch.class, wrong)).isNotNull();
            } catch (IOException refused) {
                assertThat(refused).hasMessageNotContaining("impossible");
            } catch (NullPointerException absent) {
                throw new AssertionError("byte " + i, absent);
            }
        }
    }

    @Test
    void unpack_deeperThanAnythingOfOurs_isRefused() {
        ByteBuffer deep = ByteBuffer.allocate(100_000);
        while (deep.hasRemaining()) {
            deep.put((byte) 1);
        }

        assertThatThrownBy(() -> Packing.unpack(Nested.class, deep.array()))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("more than 200 deep");
    }

    @Test
    void unpack_moreThanThereIs_isRefusedBeforeItIsMade() {
        byte[] text =
                ByteBuffer.allocate(5).put((byte) 1).putInt(Integer.MAX_VALUE).array();

        assertThatThrownBy(() -> Packing.unpack(String.class, text)).isInstanceOf(IOException.class);
    }

    @Test
    void unpack_kindThatThereIsNot_isRefused() {
        byte[] report = ByteBuffer.allocate(5).put((byte) 1).putInt(1000).array();

        assertThatThrownBy(() -> Packing.unpack(Report.class, report))
                .isInstanceOf(IOException.class)
                .hasMessageStartingWith("The number 1000, where less than ");
    }

    @Test
    void pack_whatHasNoForm_isRefused() {
        assertThatThrownBy(() -> Packing.pack(Runtime.class, Runtime.getRuntime()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("java.lang.Runtime");
    }
}
