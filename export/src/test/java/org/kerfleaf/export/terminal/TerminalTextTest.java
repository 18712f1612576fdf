package org.kerfleaf.export.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.export.spreadsheet.PlanFixture;
import org.kerfleaf.plan.Plan;

class TerminalTextTest {
    private static final List<String> TITLES = List.of(
            "Does not make sense yet",
            "Sizes",
            "Sizes, direction by direction",
            "Cut list",
            "Sheets",
            "Boards",
            "Saw settings",
            "Hardware",
            "Finish",
            "Site",
            "Cost",
            "Checks",
            "Steps",
            "Cautions");

    private static List<String> lines(Plan plan, int columns, boolean reasons) {
        return TerminalText.of(plan, columns, reasons).lines().toList();
    }

    private static String line(Plan plan, String start) {
        return lines(plan, 100, false).stream()
                .filter(line -> line.startsWith(start))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no line begins with " + start));
    }

    @Test
    void of_anyWidth_noLineIsLonger() {
        for (int columns = TerminalText.NARROWEST; columns <= TerminalText.WIDEST; columns++) {
            for (Plan plan : List.of(PlanFixture.withProblem(), PlanFixture.millimetres())) {
                int width = columns;
                assertThat(lines(plan, columns, true))
                        .as("%d columns", columns)
                        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThanOrEqualTo(width));
            }
        }
    }

    @Test
    void of_widthOutOfRange_isTakenAsTheNearest() {
        assertThat(TerminalText.of(PlanFixture.inches(), 500, false))
                .isEqualTo(TerminalText.of(PlanFixture.inches(), 100, false));
        assertThat(TerminalText.of(PlanFixture.inches(), 1, false))
                .isEqualTo(TerminalText.of(PlanFixture.inches(), 60, false));
    }

    @Test
    void of_wholePlan_hasItsSectionsInOrderWithProblemsFirst() {
        List<String> lines = lines(PlanFixture.withProblem(), 100, false);
        assertThat(lines.stream()
                        .map(line -> line.split("  ")[0])
                        .filter(TITLES::contains)
                        .toList())
                .isEqualTo(TITLES);
    }

    @Test
    void of_emptyPlan_isTheTitleBlock() {
        assertThat(lines(PlanFixture.bare(), 80, false)).hasSize(3).element(1).isEqualTo("An empty bench");
    }

    @Test
    void of_inches_fractionsStandUnderEachOther() {
        String whole = "A  Floor          1     18 7/8 ";
        assertThat(line(PlanFixture.inches(), "A  Floor")).startsWith(whole);
        assertThat(line(PlanFixture.inches(), "B  Side (pair)")).startsWith("B  Side (pair)    2     11 1/32");
    }

    @Test
    void of_millimetres_halvesStandUnderEachOther() {
        assertThat(line(PlanFixture.millimetres(), "A  Floor")).contains("479.5     184 ");
        assertThat(line(PlanFixture.millimetres(), "C  Back")).contains("516       280 ");
    }

    @Test
    void of_reasons_areToldOnlyWhenAskedFor() {
        String reason = "why  A along grain: inside width and nothing more; width 18 7/8 in (geometry)";
        assertThat(TerminalText.of(PlanFixture.inches(), 100, true)).contains(reason);
        assertThat(TerminalText.of(PlanFixture.inches(), 100, false)).doesNotContain("why  ");
    }

    @Test
    void of_priceNotKnown_saysSoAndNamesIt() {
        assertThat(line(PlanFixture.inches(), "exterior PVA   ")).isNotEmpty();
        assertThat(TerminalText.of(PlanFixture.inches(), 100, false))
                .contains("Not known, and left out of the totals: exterior PVA");
    }

    @Test
    void of_noPriceKnown_hasNoTotals() {
        assertThat(lines(PlanFixture.withoutPrices(), 100, false))
                .contains(
                        "As bought  not known",
                        "As used    not known",
                        "Bare kit: 79.90. What building costs is not known.");
    }

    @Test
    void of_whatChanged_standsAfterTheTitleOldAndNew() {
        List<String> lines = TerminalText.of(PlanFixture.inches(), Optional.of(PlanFixture.changes()), 100, false)
                .lines()
                .toList();
        assertThat(lines.stream().filter(line -> line.startsWith("What changed") || line.equals("Sizes")))
                .hasSize(2)
                .first()
                .asString()
                .endsWith("against the workbook as written");
        assertThat(lines)
                .contains(
                        "              What                         As written  Now",
                        "Sizes         Width inside                 18 7/8 in   20 in",
                        "Parts         Floor, along the grain       18 7/8 in   20 in",
                        "              Cleat                        2           none",
                        "Saw settings  mitre saw, upper end, scale  30°         35°");
    }

    @Test
    void of_nothingChanged_saysSo() {
        assertThat(TerminalText.of(PlanFixture.inches(), Optional.of(List.of()), 100, false))
                .contains("Nothing: what was tried is what the workbook says.");
        assertThat(TerminalText.of(PlanFixture.inches(), 100, false)).doesNotContain("What changed");
    }

    @Test
    void of_chains_areSumsWithWhatIsHeldAndWhatIsShort() {
        assertThat(lines(PlanFixture.inches(), 100, false))
                .contains(
                        "left to right  Side 23/32 + Floor 18 7/8 + Side 23/32 = 20 5/16 in outside. Held: Width inside",
                        "               18 7/8 in.",
                        "up and down    Floor 23/32 + Back 10 19/64 = 11 1/64 in, not 11 1/32 in outside: short by 1/64 in.");
    }

    @Test
    void of_checks_standShortFirst() {
        String text = TerminalText.of(PlanFixture.inches(), 100, false);
        assertThat(text).containsSubsequence("|     |o short", "|     |  not known", "|    o|  holds");
    }

    @Test
    void of_aKitCheaperThanBuilding_saysMore() {
        assertThat(TerminalText.of(PlanFixture.inches(), 100, false))
                .contains("Garden tray kit: 79.90 and 24.00 freight. Building, as bought, costs 9.75 more.");
    }
}
