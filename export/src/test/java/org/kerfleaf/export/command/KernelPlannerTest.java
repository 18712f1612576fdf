package org.kerfleaf.export.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.kerfleaf.export.command.Planned.Made;
import org.kerfleaf.export.command.Planned.Wrong;
import org.kerfleaf.kernel.KernelLimits;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Change;
import org.kerfleaf.workbook.Prose;

/** From a file to its plan, with a real kernel. */
class KernelPlannerTest {
    private static final LocalDate DAY = LocalDate.of(2026, 4, 20);
    private static final Wishes NONE = new Wishes(Map.of(), Optional.empty(), DAY);

    @TempDir
    Path folder;

    static String bootRack() throws IOException {
        try (InputStream in = KernelPlannerTest.class.getResourceAsStream("boot-rack.md")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private Planned plan(String workbook, Wishes wishes) throws IOException {
        return new KernelPlanner(new Allowances(folder.resolve("mine")))
                .plan(Files.writeString(folder.resolve("rack.md"), workbook), wishes);
    }

    private static Length shelf(Planned planned) {
        return ((Made) planned).plan().part("Shelf").orElseThrow().length().value();
    }

    @Test
    void plan_aWorkbook_hasItsPartsAndItsWords() throws IOException {
        Made made = (Made) plan(bootRack(), NONE);
        assertThat(shelf(made)).isEqualTo(Length.ofMillimetres(600));
        assertThat(made.plan().day()).isEqualTo(DAY);
        assertThat(made.plan().problems()).isEmpty();
        assertThat(made.notes()).isEmpty();
        Prose.Block.Paragraph lead = (Prose.Block.Paragraph) made.prose().lead().get(0);
        assertThat(lead.runs())
                .filteredOn(run -> run.style() == Prose.Style.VALUE)
                .extracting(Prose.Run::text)
                .containsExactly("600 mm", "1 sheet");
    }

    /** The other sheet is thinner: the side that stands on its thickness is planned anew, not only priced. */
    @Test
    void plan_withAnotherStockNamed_tellsWhatThatComesTo() throws IOException {
        String workbook = bootRack()
                .replace(
                        ".costs(\"78.00\");",
                        ".costs(\"78.00\").orInstead(sheet(\"pine board\", \"1220 mm\", \"2440 mm\").measured(\"12 mm\").costs(\"41.00\"));");
        Made made = (Made) plan(workbook, NONE);

        assertThat(made.plan().buying().instead()).hasSize(1);
        assertThat(made.plan().buying().instead().get(0).choices())
                .extracting(choice -> choice.stock() + " " + choice.price().orElseThrow() + " " + choice.fits())
                .containsExactly("birch plywood EUR 78.00 true", "pine board EUR 41.00 true");

        Made other = (Made)
                plan(workbook, new Wishes(Map.of("birch plywood, or instead", "pine board"), Optional.empty(), DAY));
        assertThat(other.plan().part("Side").orElseThrow().thickness().value()).isEqualTo(Length.ofMillimetres(12));
        assertThat(other.changes().orElseThrow()).isNotEmpty();
    }

    @Test
    void plan_sizeTried_followsThroughPartsAndProse() throws IOException {
        Made made = (Made)
                plan(bootRack(), new Wishes(Map.of("Width inside", "750 mm", "Shelves", "3"), Optional.empty(), DAY));
        assertThat(shelf(made)).isEqualTo(Length.ofMillimetres(750));
        assertThat(made.plan().part("Shelf").orElseThrow().count()).isEqualTo(3);
    }

    @Test
    void plan_sizeTried_tellsWhatItChangesAgainstTheWorkbookAsWritten() throws IOException {
        Made made = (Made) plan(bootRack(), new Wishes(Map.of("Width inside", "750 mm"), Optional.empty(), DAY));
        assertThat(made.changes().orElseThrow())
                .filteredOn(change -> change.topic() == Change.Topic.SIZES || change.topic() == Change.Topic.PARTS)
                .extracting(c -> "%s: %s → %s"
                        .formatted(c.what(), c.beforeIn(MeasureStyle.MILLIMETRES), c.afterIn(MeasureStyle.MILLIMETRES)))
                .containsExactly(
                        "Width inside: 600 mm → 750 mm",
                        "Shelf, along the grain: 600 mm → 750 mm",
                        "Rail, along the grain: 600 mm → 750 mm");
    }

    @Test
    void plan_noSizeTried_hasNothingToCompare() throws IOException {
        assertThat(((Made) plan(bootRack(), NONE)).changes()).isEmpty();
    }

    @Test
    void plan_sizeTriedAsWritten_changesNothing() throws IOException {
        Made made = (Made) plan(bootRack(), new Wishes(Map.of("Width inside", "60 cm"), Optional.empty(), DAY));
        assertThat(made.changes()).hasValue(List.of());
    }

    @Test
    void plan_workbookThatDoesNotRunAsWritten_isPlannedWithTheSizeTriedAndSaysSo() throws IOException {
        String tooWide = bootRack().replace("\"600 mm\", \"400 mm to 900 mm\"", "\"1 m\", \"400 mm to 900 mm\"");
        Made made = (Made) plan(tooWide, new Wishes(Map.of("Width inside", "750 mm"), Optional.empty(), DAY));
        assertThat(shelf(made)).isEqualTo(Length.ofMillimetres(750));
        assertThat(made.changes()).isEmpty();
        assertThat(made.notes())
                .extracting(Fault::words)
                .containsExactly(
                        "As written the workbook does not run, so what the sizes tried change cannot be told.");
    }

    @Test
    void plan_otherUnit_printsInIt() throws IOException {
        Made made = (Made) plan(bootRack(), new Wishes(Map.of(), Optional.of(LengthUnit.INCHES), DAY));
        assertThat(made.plan().style().unit()).isEqualTo(LengthUnit.INCHES);
        assertThat(shelf(made)).isEqualTo(Length.ofMillimetres(600));
    }

    @Test
    void plan_sizeTheWorkbookHasNot_isRefusedWithThoseItHas() {
        assertThatThrownBy(() -> plan(bootRack(), new Wishes(Map.of("Widht", "750 mm"), Optional.empty(), DAY)))
                .isInstanceOf(Refused.class)
                .hasMessage("--size: the workbook has no size “Widht”. Its sizes are “Width inside”, “Shelves”.");
    }

    @Test
    void plan_sizePastItsRange_isAFaultAtTheSize() throws IOException {
        Wrong wrong = (Wrong) plan(bootRack(), new Wishes(Map.of("Width inside", "1 m"), Optional.empty(), DAY));
        assertThat(wrong.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(11);
            assertThat(fault.words()).contains("Width inside can be 400 mm to 900 mm");
        });
    }

    @Test
    void plan_cellThatIsNotJava_isOneFaultWithItsPlace() throws IOException {
        String broken = bootRack().replace("panel(\"Side\", ply)", "pannel(\"Side\", ply)");
        Wrong wrong = (Wrong) plan(broken, NONE);
        assertThat(wrong.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(27);
            assertThat(fault.text().substring(fault.column() - 1)).startsWith("pannel(");
        });
    }

    @Test
    void plan_cellThatNeedsMoreMemory_saysHowToGiveIt() throws IOException {
        String large = bootRack() + "\n```java\nlong[] much = new long[100_000_000];\n```\n";
        KernelLimits limits =
                KernelLimits.DEFAULT.withTime(Duration.ofMinutes(2)).withHeapMegabytes(64);
        Wrong wrong = (Wrong) plan(large, new Wishes(Map.of(), Optional.empty(), DAY, limits));
        assertThat(wrong.faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.words())
                        .startsWith("Stopped: it needs more memory than the 64 MB")
                        .endsWith(" More can be given, as in --memory-limit \"512 MB\"."));
    }

    @Test
    void plan_liveValueThatFails_isANoteAndThePlanStands() throws IOException {
        Made made = (Made) plan(bootRack().replace("${width} wide", "${wdth} wide"), NONE);
        assertThat(made.notes())
                .singleElement()
                .satisfies(note -> assertThat(note.line()).isEqualTo(3));
    }

    @Test
    void plan_noCells_isRefused() {
        assertThatThrownBy(() -> plan("# Notes\n\nNothing here.\n", NONE))
                .isInstanceOf(Refused.class)
                .hasMessageStartingWith("“rack.md” has no cells, so there is nothing to plan.");
    }

    @Test
    void plan_noText_isRefused() throws IOException {
        Path file = Files.write(folder.resolve("photo.md"), new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF});
        assertThatThrownBy(() -> new KernelPlanner(new Allowances(folder.resolve("mine"))).plan(file, NONE))
                .isInstanceOf(Refused.class)
                .hasMessageStartingWith("“photo.md” is no workbook. ");
    }

    @Test
    void faults_ofWaitingPieces_areToldOnlyWithoutACause() throws IOException {
        String broken = bootRack().replace("Length width = size(", "Length width = siz(");
        List<Fault> faults = ((Wrong) plan(broken, NONE)).faults();
        assertThat(faults)
                .noneMatch(fault -> fault.words().startsWith("Waits for"))
                .isNotEmpty();
    }
}
