package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.testing.Property.forAll;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;

class SeenTest {
    /** A block, by where it begins and how far it reaches, in whole millimetres. */
    private record Block(int x, int y, int z, int dx, int dy, int dz) {
        static Block drawn(RandomGenerator random) {
            return new Block(
                    random.nextInt(30),
                    random.nextInt(30),
                    random.nextInt(30),
                    1 + random.nextInt(20),
                    1 + random.nextInt(20),
                    1 + random.nextInt(20));
        }

        PlacedSolid solid() {
            Solid solid = Solid.of(Outline.rectangle(mm(dx), mm(dy)), mm(dz));
            return new PlacedSolid("Block", 0, solid, Pose.of(new Vector(x, y, z), Vector.X, Vector.Y));
        }
    }

    /** Counted square by square on a wall of whole millimetres. */
    @Test
    void along_anyBlocks_coversWhatAnyOfThemCovers() {
        forAll(50, 200, random -> blocks(random, 1 + random.nextInt(6)), blocks -> {
            long count = 0;
            double moment = 0;
            for (int x = 0; x < 60; x++) {
                for (int z = 0; z < 60; z++) {
                    if (covered(blocks, x, z)) {
                        count++;
                        moment += z + 0.5;
                    }
                }
            }
            Seen front = Seen.along(Axis.Y, blocks.stream().map(Block::solid).toList());
            assertThat(front.squareMillimetres()).isCloseTo(count, within(1e-6));
            assertThat(front.middle()).isCloseTo(moment / count, within(1e-6));
        });
    }

    @Test
    void along_nothing_isNothing() {
        assertThat(Seen.along(Axis.X, List.of()).squareMillimetres()).isZero();
    }

    private static boolean covered(List<Block> blocks, int x, int z) {
        return blocks.stream().anyMatch(b -> x >= b.x && x < b.x + b.dx && z >= b.z && z < b.z + b.dz);
    }

    private static List<Block> blocks(RandomGenerator random, int many) {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < many; i++) {
            blocks.add(Block.drawn(random));
        }
        return blocks;
    }

    private static Length mm(int number) {
        return Length.ofMillimetres((long) number);
    }
}
