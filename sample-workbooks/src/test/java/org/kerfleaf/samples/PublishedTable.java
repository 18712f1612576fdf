package org.kerfleaf.samples;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.kerfleaf.workbook.Workbook;

/**
 * Figures that somebody published, and the workbook whose plan must give them: a Markdown file with a line {@code Source:}, a
 * line {@code Status:}, a cell and a table. A column is headed by the label of a size, or by a place in the plan's JSON form
 * with a unit and how far it may be off: {@code parts/Piece/thickness in ±0.0005}.
 */
record PublishedTable(String title, String source, String status, Workbook workbook, List<Row> rows) {
    /** How far from a number of the plan's form to a number in a unit; lengths there are in millimetres. */
    private static final Map<String, Double> UNITS = Map.ofEntries(
            Map.entry("in", 1 / 25.4),
            Map.entry("ft", 1 / 304.8),
            Map.entry("mm", 1.0),
            Map.entry("m", 0.001),
            Map.entry("cm", 0.1),
            Map.entry("deg", 1.0),
            Map.entry("sq_in", 1 / 645.16),
            Map.entry("sq_ft", 1 / 92_903.04),
            Map.entry("sq_m", 1e-6),
            Map.entry("cu_ft", 1 / 28_316.846592),
            Map.entry("L", 0.001),
            Map.entry("mL", 1.0),
            Map.entry("lb", 1 / 453.59237),
            Map.entry("lbf", 1 / 4.4482216152605),
            Map.entry("psf", 1 / 47.88025898033584),
            Map.entry("kg", 0.001),
            Map.entry("N", 1.0),
            Map.entry("g", 1.0),
            Map.entry("in3", 1 / StrictMath.pow(25.4, 3)),
            Map.entry("in4", 1 / StrictMath.pow(25.4, 4)),
            Map.entry("Mpsi", 645.16e-6 / 4.4482216152605 / 1e6),
            Map.entry("GPa", 1e-9),
            Map.entry("no", 1.0));

    private static final Pattern FIGURE = Pattern.compile("(.+/.+?)(?: (\\S+) ±(\\S+))?");

    /** Where the tables are. */
    private static final Path FOLDER = Path.of("src/test/resources/published");

    /** One row: the sizes to try, and what is published for them. */
    record Row(String title, Map<String, String> sizes, List<Figure> figures) {}

    /**
     * A figure of the plan.
     *
     * @param path where it is in the JSON form: names of members, numbers of elements, or a text that an element begins with
     * @param published the number in a unit, or a text
     * @param factor what the plan's number is multiplied by
     * @param tolerance how far it may be off, in the published unit; empty for a text
     */
    record Figure(String path, String published, double factor, Optional<Double> tolerance) {}

    /** All tables, by file name. */
    static List<PublishedTable> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.sorted().map(PublishedTable::read).toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** How many figures it has. */
    int figures() {
        return rows.stream().mapToInt(row -> row.figures().size()).sum();
    }

    private static PublishedTable read(Path file) {
        try {
            String text = Files.readString(file);
            List<String> table =
                    text.lines().filter(line -> line.startsWith("|")).toList();
            List<String> heads = cells(table.get(0));
            List<Row> rows =
                    table.stream().skip(2).map(line -> row(heads, cells(line))).toList();
            return new PublishedTable(
                    line("# ", text), line("Source: ", text), line("Status: ", text), Workbook.parse(text), rows);
        } catch (IOException | RuntimeException wrong) {
            throw new IllegalStateException(file.toString(), wrong);
        }
    }

    private static String line(String begin, String text) {
        return text.lines()
                .filter(line -> line.startsWith(begin))
                .findFirst()
                .orElseThrow()
                .substring(begin.length());
    }

    private static List<String> cells(String line) {
        return Arrays.stream(line.substring(1, line.lastIndexOf('|')).split("\\|"))
                .map(String::strip)
                .toList();
    }

    private static Row row(List<String> heads, List<String> cells) {
        Map<String, String> sizes = new LinkedHashMap<>();
        List<Figure> figures = new ArrayList<>();
        IntStream.range(0, heads.size()).filter(i -> !cells.get(i).equals("-")).forEach(i -> {
            Matcher figure = FIGURE.matcher(heads.get(i));
            if (figure.matches()) {
                figures.add(new Figure(
                        figure.group(1),
                        cells.get(i),
                        figure.group(2) == null ? 1 : UNITS.get(figure.group(2)),
                        Optional.ofNullable(figure.group(3)).map(Double::valueOf)));
            } else {
                sizes.put(heads.get(i), cells.get(i));
            }
        });
        return new Row(String.join(", ", cells), sizes, figures);
    }
}
