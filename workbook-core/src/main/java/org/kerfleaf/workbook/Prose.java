package org.kerfleaf.workbook;

import java.util.List;

/**
 * The words of a workbook with their live values filled in, ready to be printed.
 *
 * @param title the first heading
 * @param lead what stands between the title and the first section
 * @param sections every section but the build steps, in document order
 * @param steps the build steps
 */
public record Prose(String title, List<Block> lead, List<Section> sections, List<Step> steps) {
    public Prose {
        lead = List.copyOf(lead);
        sections = List.copyOf(sections);
        steps = List.copyOf(steps);
    }

    /** A stretch of text in one style; a live value is {@code VALUE}. */
    public record Run(String text, Style style) {}

    /** How a stretch of text is set. */
    public enum Style {
        PLAIN,
        EMPHASIS,
        STRONG,
        CODE,
        VALUE
    }

    /** A paragraph or a list. */
    public sealed interface Block {
        record Paragraph(List<Run> runs) implements Block {}

        record Items(List<List<Run>> items, boolean numbered) implements Block {}
    }

    /** A heading with what stands under it. */
    public record Section(String title, int level, List<Block> blocks) {}

    /**
     * A build step.
     *
     * @param number from 1
     * @param blocks its instruction
     * @param cautions block quotes that begin with {@code Caution:}, without that word
     * @param notes block quotes that begin with {@code Note:}, without that word
     */
    public record Step(int number, String title, List<Block> blocks, List<List<Run>> cautions, List<List<Run>> notes) {}
}
