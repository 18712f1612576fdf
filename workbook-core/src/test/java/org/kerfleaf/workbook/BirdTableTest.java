package org.kerfleaf.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.workbook.Prose.Run;
import org.kerfleaf.workbook.Prose.Style;

/** One whole workbook, from its bytes to its words. */
class BirdTableTest {
    private static byte[] bytes;
    private static Workbook book;

    @BeforeAll
    static void read() throws IOException {
        try (InputStream in = BirdTableTest.class.getResourceAsStream("bird-table.md")) {
            bytes = in.readAllBytes();
        }
        book = Workbook.read(bytes);
    }

    @Test
    void read_findsAll() {
        assertThat(book.title()).isEqualTo("A bird table for the back fence");
        assertThat(book.cells())
                .extracting(Cell::section)
                .containsExactly("Sizes", "Wood", "Cut the tray", "The bracket");
        assertThat(book.cells()).extracting(Cell::step).containsExactly(0, 0, 1, 2);
        assertThat(book.cells()).extracting(Cell::line).containsExactly(9, 23, 42, 54);
        assertThat(book.views()).extracting(View::what).containsExactly("boards", "cost", "checks");
        assertThat(book.liveValues())
                .extracting(LiveValue::expression)
                .containsExactly("tray", "larch.bought()", "larch.soldAs()", "tray.half()", "rule");
        assertThat(book.steps()).containsExactly(new Sketch.Step(1, "Cut the tray"), new Sketch.Step(2, "Hang it"));
        assertThat(book.slips()).isEmpty();
    }

    @Test
    void cells_eachName_standsWhereThePositionSays() {
        Cell wood = book.cells().get(1);
        String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\n");
        TextPosition rule = wood.positionOf(wood.text().indexOf("rule"));
        assertThat(lines[rule.line() - 1].substring(rule.column() - 1)).isEqualTo("rule = say(\"no } paint\");");
    }

    @Test
    void withCell_oneSize_changesThatLineOnly() {
        String changed = book.cells().get(0).text().replace("280 mm", "300 mm");
        assertThat(book.withCell(0, changed).bytes())
                .isEqualTo(new String(bytes, StandardCharsets.UTF_8)
                        .replace("\"280 mm\"", "\"300 mm\"")
                        .getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void tell_stepsAndSections() {
        Prose prose = book.tell(n -> "#" + n);
        assertThat(prose.sections()).extracting(Prose.Section::title).containsExactly("Sizes", "Wood", "Afterwards");
        assertThat(prose.steps().get(0).cautions())
                .containsExactly(List.of(
                        new Run("Clamp the short pieces; fingers stay ", Style.PLAIN),
                        new Run("#3", Style.VALUE),
                        new Run(" away from the blade.", Style.PLAIN)));
        assertThat(prose.steps().get(1).notes()).hasSize(1);
        assertThat(prose.lead().toString()).contains("${2 + 2}", "nor of ${this}");
    }
}
