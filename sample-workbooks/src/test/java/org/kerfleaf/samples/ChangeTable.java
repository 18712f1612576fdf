package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.kerfleaf.workbook.Workbook;

/** A Markdown file of tables, each under the name of a workbook in which one size or word is changed row by row. */
final class ChangeTable {
    private ChangeTable() {}

    /** A row: its cells, and the workbook its table is about. */
    record Row(Sample sample, List<String> cells) {
        String cell(int column) {
            return cells.get(column);
        }

        /**
         * The workbook with the change.
         *
         * @param said a text of the workbook in quotes of code; what has none is the label of a size and changes no text
         */
        Workbook changed(String said, String instead) {
            Workbook workbook = sample.workbook();
            if (!said.startsWith("`")) {
                return workbook;
            }
            String text = said.replace("`", "");
            assertThat(workbook.text()).contains(text);
            return Workbook.parse(workbook.text().replace(text, instead.replace("`", "")));
        }

        /** The sizes that are tried: none where a text is changed. */
        Map<String, String> sizes(String said, String instead) {
            return said.startsWith("`") ? Map.of() : Map.of(said, instead);
        }
    }

    /** The rows of every table under the name of a workbook: of a sample that people start from, or of one next to the file. */
    static List<Row> rows(String file) {
        List<Row> rows = new ArrayList<>();
        Sample sample = null;
        for (String line : lines(file)) {
            if (line.startsWith("## ")) {
                sample = line.endsWith(".md") ? sample(line.substring(3)) : null;
            } else if (sample != null
                    && line.startsWith("| ")
                    && !line.startsWith("| no |")
                    && !line.startsWith("| said |")) {
                rows.add(new Row(sample, cells(line)));
            }
        }
        return rows;
    }

    static List<String> cells(String line) {
        return Arrays.stream(line.substring(1, line.lastIndexOf('|')).split(" \\| "))
                .map(String::strip)
                .toList();
    }

    static List<String> lines(String file) {
        try {
            return Files.readAllLines(Path.of("src/test/resources", file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Sample sample(String file) {
        return Sample.ALL.stream()
                .filter(one -> one.toString().equals(file))
                .findFirst()
                .orElseGet(() -> Sample.ofTests(file));
    }
}
