package org.kerfleaf.export.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.kerfleaf.measure.LengthUnit;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The file and the wishes that every word takes. Values are read here, so that all that is wrong is told in our words. */
final class WorkbookArguments {
    @Parameters(index = "0", paramLabel = "FILE", description = "The workbook, for example shelf.md.")
    private String file;

    @Option(
            names = "--size",
            paramLabel = "\"LABEL=VALUE\"",
            description = "Try a size, for example --size \"Width inside=20 in\". Can be given for several sizes.")
    private List<String> sizes = new ArrayList<>();

    @Option(
            names = "--units",
            paramLabel = "in|mm",
            description = "Print in inches or in millimetres instead of the workbook's unit.")
    private String units;

    @Option(
            names = "--day",
            paramLabel = "DAY",
            description = "Plan for this day, for example 2026-04-12, instead of today.")
    private String day;

    @Mixin
    private LimitsSaid limits = new LimitsSaid();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show what this word does.")
    private boolean help;

    Path file(Bench bench) {
        return WorkbookFile.find(bench.folder(), file);
    }

    /** As it was typed. */
    String fileName() {
        return file;
    }

    Wishes wishes(Bench bench) {
        return new Wishes(sizes(), unit(), day(bench), limits.limits());
    }

    private Map<String, String> sizes() {
        Map<String, String> tried = new TreeMap<>();
        for (String typed : sizes) {
            int split = typed.indexOf('=');
            if (split < 1 || split == typed.length() - 1) {
                throw new Refused(
                        "--size “%s”: a label, = and a value belong here, as in --size \"Width inside=20 in\"."
                                .formatted(typed));
            }
            String label = typed.substring(0, split).strip();
            if (tried.put(label, typed.substring(split + 1).strip()) != null) {
                throw new Refused("--size gives “%s” twice. Once is right.".formatted(label));
            }
        }
        return tried;
    }

    private Optional<LengthUnit> unit() {
        if (units == null) {
            return Optional.empty();
        }
        for (LengthUnit unit : LengthUnit.values()) {
            if (unit.symbol().equals(units)) {
                return Optional.of(unit);
            }
        }
        throw new Refused("--units “%s”: in or mm would be right.".formatted(units));
    }

    private LocalDate day(Bench bench) {
        if (day == null) {
            return bench.today().get();
        }
        try {
            return LocalDate.parse(day);
        } catch (DateTimeParseException notADay) {
            throw new Refused("--day “%s” is no day. A day like 2026-04-12 would be right.".formatted(day));
        }
    }
}
