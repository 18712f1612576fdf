package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.kerfleaf.kernel.KernelOutcome;
import org.kerfleaf.workbook.Workbook;

/**
 * Edits of every sample at random: a size is another, a word is left away or put in another's place. Whatever comes of it, it is told in the
 * trade's words and nothing is thrown. {@code -Dkerfleaf.sampleEdits=200} makes more of them, {@code -Dkerfleaf.seed=7} others.
 */
class RandomSampleEditsTest {
    private static final int EDITS = Integer.getInteger("kerfleaf.sampleEdits", 6);
    private static final long SEED = Long.getLong("kerfleaf.seed", 61);

    /** A size in quotes, a word with what is said in it, a word of few, a line. */
    private static final Pattern SIZE = Pattern.compile("\"-?\\d[^\"]*\"");

    private static final Pattern SAID = Pattern.compile("\\.[a-z]\\w*\\([^()]*\\)");
    private static final Pattern OF_FEW = Pattern.compile("\\b(LEFT|RIGHT|TOP|BOTTOM|FRONT|BACK|INSIDE|OUTSIDE)\\b");
    private static final Pattern LINE = Pattern.compile("(?m)^[A-Za-z].*;$");

    private static final List<String> SIZES = List.of(
            "\"0 in\"",
            "\"-1 in\"",
            "\"1/64 in\"",
            "\"3 in\"",
            "\"20 in\"",
            "\"400 in\"",
            "\"7 mm\"",
            "\"0 deg\"",
            "\"90 deg\"",
            "\"89 deg\"",
            "\"0\"",
            "\"\"",
            "\"2 h\"",
            "\"5\"");

    static Stream<Sample> samples() {
        return Sample.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("samples")
    void edits_atRandom_areToldInTheTradesWords(Sample sample) {
        Random random = new Random(SEED);
        String text = sample.workbook().text();
        for (int i = 0; i < EDITS; i++) {
            String edited = text;
            for (int more = random.nextInt(2); more >= 0; more--) {
                edited = edit(edited, random);
            }
            Workbook workbook = Workbook.parse(edited);
            KernelOutcome outcome = Sample.run(workbook, Map.of());

            List<String> told = new ArrayList<>();
            try {
                told.addAll(HostileTest.told(outcome));
            } catch (RuntimeException | AssertionError thrown) {
                throw new AssertionError("edit %d of %s:%n%s".formatted(i, sample, difference(text, edited)), thrown);
            }
            assertThat(String.join("\n", told))
                    .as("edit %d of %s:%n%s", i, sample, difference(text, edited))
                    .doesNotContain(HostileTest.INTERNAL);
        }
    }

    private static String edit(String text, Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> replace(text, SIZE, SIZES.get(random.nextInt(SIZES.size())), random);
            case 1 -> replace(text, SAID, "", random);
            case 2 -> {
                List<String> sides = List.of("LEFT", "RIGHT", "TOP", "BOTTOM", "FRONT", "BACK", "INSIDE", "OUTSIDE");
                yield replace(text, OF_FEW, sides.get(random.nextInt(sides.size())), random);
            }
            default -> replace(text, LINE, "", random);
        };
    }

    private static String replace(String text, Pattern pattern, String instead, Random random) {
        List<MatchResult> found = pattern.matcher(text).results().toList();
        if (found.isEmpty()) {
            return text;
        }
        MatchResult one = found.get(random.nextInt(found.size()));
        return text.substring(0, one.start()) + instead + text.substring(one.end());
    }

    private static String difference(String text, String edited) {
        List<String> before = text.lines().toList();
        return String.join(
                        "\n",
                        edited.lines().filter(line -> !before.contains(line)).toList())
                + "\ninstead of\n"
                + String.join(
                        "\n",
                        before.stream()
                                .filter(line -> edited.lines().noneMatch(line::equals))
                                .toList());
    }
}
