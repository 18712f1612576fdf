package org.kerfleaf.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.sketch.Sketch.Step;

class BuildStepsTest {
    private static final String CELL = "```java\na\n```\n\n";

    private static List<Integer> stepsOfCells(Workbook book) {
        return book.cells().stream().map(Cell::step).toList();
    }

    @Test
    void title_firstLevelOneHeading() {
        assertThat(Workbook.parse("## No\n\n# A *small* `stool` of ${w} \\# [x](y)\n\n# Other\n")
                        .title())
                .isEqualTo("A small stool of ${w} # x");
    }

    @Test
    void title_noneOrEmpty_isUntitled() {
        assertThat(Workbook.parse("## No\n\n> # In a quote\n").title()).isEqualTo("Untitled workbook");
        assertThat(Workbook.parse("#\n\n# Later\n").title()).isEqualTo("Untitled workbook");
    }

    @Test
    void steps_subHeadingsInOrder() {
        Workbook book = Workbook.parse("# T\n\n" + CELL + "## Build steps\n\n" + CELL + "### Cut\n\n" + CELL
                + "### Glue ${n}\n\n" + CELL + CELL + "## Costs\n\n" + CELL + "### Small\n\n" + CELL);
        assertThat(book.steps()).containsExactly(new Step(1, "Cut"), new Step(2, "Glue ${n}"));
        assertThat(stepsOfCells(book)).containsExactly(0, 0, 1, 2, 2, 0, 0);
    }

    @Test
    void steps_anyCaseAndAnyLevel() {
        assertThat(Workbook.parse("# BUILD STEPS\n## a\n# c\n## d\n").steps()).containsExactly(new Step(1, "a"));
        assertThat(Workbook.parse("Build Steps\n---\n\n### a\n").steps()).containsExactly(new Step(1, "a"));
    }

    @Test
    void steps_deeperHeading_belongsToItsStep() {
        Workbook book = Workbook.parse("## Build steps\n### Roof\n#### Trim\n" + CELL + "### Door\n##### Hinge\n" + CELL
                + "#### Knob\n" + CELL);
        assertThat(book.steps()).extracting(Step::title).containsExactly("Roof", "Door");
        assertThat(stepsOfCells(book)).containsExactly(1, 2, 2);
        assertThat(book.cells()).extracting(Cell::section).containsExactly("Trim", "Hinge", "Knob");
    }

    @Test
    void steps_firstIsDeeperThanTheNext_bothAreSteps() {
        assertThat(Workbook.parse("## Build steps\n#### a\n### b\n#### c\n").steps())
                .extracting(Step::title)
                .containsExactly("a", "b");
    }

    @Test
    void steps_twoLists_areNumberedThrough() {
        Workbook book = Workbook.parse("## Build steps\n### a\n## Then\n## Build steps\n" + CELL + "### b\n" + CELL);
        assertThat(book.steps()).containsExactly(new Step(1, "a"), new Step(2, "b"));
        assertThat(stepsOfCells(book)).containsExactly(0, 2);
    }

    @Test
    void steps_headingInAQuoteOrList_isNone() {
        assertThat(Workbook.parse("## Build steps\n\n> ### a\n\n- ### b\n").steps())
                .isEmpty();
    }

    @Test
    void cells_section_isTheNearestHeading() {
        Workbook book = Workbook.parse(CELL + "# T\n" + CELL + "## Sizes `s`\n- x\n\n  " + CELL.replace("\n", "\n  "));
        assertThat(book.cells()).extracting(Cell::section).containsExactly("", "T", "Sizes s");
    }

    @Test
    void views_knowTheirStep() {
        Workbook book =
                Workbook.parse("```view\ncost\n```\n# Build steps\n## a\n```view\ndrawing front\nchecks\n```\n");
        assertThat(book.views()).extracting(View::step).containsExactly(0, 1, 1);
    }
}
