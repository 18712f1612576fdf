package org.kerfleaf.export.command;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kerfleaf.kernel.KernelLimits;
import org.kerfleaf.sketch.Sketch;
import picocli.CommandLine.Option;

/** How far the cells may go, where somebody says otherwise than usual. */
final class LimitsSaid {
    private static final Pattern AMOUNT = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,3})?)\\s*([A-Za-z]+)");
    private static final Map<String, Long> MILLISECONDS = Map.of("ms", 1L, "s", 1_000L, "min", 60_000L);
    private static final Map<String, Long> BYTES = Map.of("B", 1L, "kB", 1_000L, "MB", 1_000_000L);
    private static final Map<String, Long> MEGABYTES = Map.of("MB", 1L, "GB", 1_024L);

    @Option(
            names = "--time-limit",
            paramLabel = "TIME",
            description = "How long the cells may run, for example \"20 s\" or \"2 min\". Without it, 10 s.")
    private String time;

    @Option(
            names = "--memory-limit",
            paramLabel = "MEMORY",
            description = "How much memory they may need, for example \"512 MB\" or \"1 GB\". Without it, 256 MB.")
    private String memory;

    @Option(
            names = "--output-limit",
            paramLabel = "BYTES",
            description = "How much of what they print is kept, for example \"100 kB\". Without it, 20 kB.")
    private String output;

    @Option(
            names = "--piece-limit",
            paramLabel = "NUMBER",
            description = "How many pieces they may place, up to 2000. Without it, 2000.")
    private String pieces;

    /** @throws Refused if one of them is no such amount, or is out of range */
    KernelLimits limits() {
        KernelLimits limits = KernelLimits.DEFAULT;
        if (time != null) {
            long most =
                    amount("--time-limit", time, MILLISECONDS, 1, 3_600_000, "a time like 20 s, from 1 ms to 60 min,");
            limits = limits.withTime(Duration.ofMillis(most));
        }
        if (memory != null) {
            String right = "an amount of memory like 512 MB, from 16 MB to 64 GB,";
            limits = limits.withHeapMegabytes((int) amount("--memory-limit", memory, MEGABYTES, 16, 65_536, right));
        }
        if (output != null) {
            String right = "an amount like 100 kB, from 0 B to 10 MB,";
            limits = limits.withPrintedBytes((int) amount("--output-limit", output, BYTES, 0, 10_000_000, right));
        }
        return pieces == null ? limits : limits.withPieces(pieces());
    }

    private int pieces() {
        if (!pieces.matches("\\d{1,9}")
                || Integer.parseInt(pieces) < 1
                || Integer.parseInt(pieces) > Sketch.MOST_PIECES) {
            throw new Refused(
                    "--piece-limit “%s”: a number from 1 to %d would be right.".formatted(pieces, Sketch.MOST_PIECES));
        }
        return Integer.parseInt(pieces);
    }

    private static long amount(
            String option, String typed, Map<String, Long> units, long least, long most, String right) {
        Matcher match = AMOUNT.matcher(typed.strip());
        if (match.matches() && units.containsKey(match.group(2))) {
            BigDecimal amount = new BigDecimal(match.group(1)).multiply(BigDecimal.valueOf(units.get(match.group(2))));
            if (amount.compareTo(BigDecimal.valueOf(least)) >= 0 && amount.compareTo(BigDecimal.valueOf(most)) <= 0) {
                return amount.longValue();
            }
        }
        throw new Refused("%s “%s”: %s would be right.".formatted(option, typed, right));
    }
}
