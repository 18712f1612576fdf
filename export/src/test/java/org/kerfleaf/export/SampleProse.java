package org.kerfleaf.export;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.workbook.Prose;
import org.kerfleaf.workbook.Prose.Block;
import org.kerfleaf.workbook.Prose.Run;
import org.kerfleaf.workbook.Prose.Style;

/** The words of the seed-swap cabinet's workbook, its live values filled in. */
public final class SampleProse {
    private SampleProse() {}

    public static Prose of(Plan plan) {
        return new Prose(
                plan.title(),
                List.of(
                        paragraph(
                                plain(
                                        "A weatherproof cabinet on a post: neighbours leave spare seed packets and take what they will sow.")),
                        paragraph(
                                plain("It is "),
                                value("22 in"),
                                plain(" wide and "),
                                value("11 in"),
                                plain(" deep inside, its roof slopes "),
                                value("30°"),
                                plain(", and one sheet of plywood makes all of it. Change a size and "),
                                new Run("every number", Style.EMPHASIS),
                                plain(" in this workbook follows."))),
                List.of(
                        new Prose.Section("Sizes", 2, List.of()),
                        new Prose.Section(
                                "What we buy",
                                2,
                                List.of(paragraph(
                                        plain("The sheet is sold as "),
                                        value("3/4 in"),
                                        plain("; a caliper says "),
                                        value("23/32 in"),
                                        plain(", and that is the number every joint uses.")))),
                        new Prose.Section(
                                "The roof",
                                2,
                                List.of(paragraph(
                                        plain("The two roof halves meet at "),
                                        value("120°"),
                                        plain(
                                                ". A mitre saw reads from square, so the rake trim is cut with the saw set to "),
                                        value("30°"),
                                        plain(", and not to the number on the angle finder."))))),
                steps(plan));
    }

    private static List<Prose.Step> steps(Plan plan) {
        List<Prose.Step> steps = new ArrayList<>();
        plan.steps().forEach(step -> steps.add(step(step.number(), step.title())));
        return steps;
    }

    private static Prose.Step step(int number, String title) {
        return switch (number) {
            case 1 ->
                new Prose.Step(
                        1,
                        title,
                        List.of(),
                        List.of(List.of(plain("Nobody digs before the buried lines are located and marked."))),
                        List.of());
            case 2 ->
                new Prose.Step(
                        2,
                        title,
                        List.of(
                                paragraph(
                                        plain(
                                                "Trim the sheet, then cut in the order of the numbers. Write each letter on a face that will be hidden."))),
                        List.of(),
                        List.of(List.of(plain("Make a test cut in scrap before every new setting."))));
            case 3 ->
                new Prose.Step(
                        3,
                        title,
                        List.of(paragraph(
                                plain(
                                        "Run a bead of glue along the edge, press, clamp, check for square across both diagonals, then drive the screws on the line drawn "),
                                value("23/64 in"),
                                plain(" up from the bottom edge."))),
                        List.of(),
                        List.of());
            case 6 ->
                new Prose.Step(
                        6,
                        title,
                        List.of(paragraph(plain("Do it now: with the roof on, no brush reaches the corners."))),
                        List.of(),
                        List.of(List.of(plain("Mask the sloping edges; glue does not hold on paint."))));
            case 10 ->
                new Prose.Step(
                        10,
                        title,
                        List.of(),
                        List.of(List.of(plain("Dig by hand near any mark. Cover the hole when you leave it."))),
                        List.of());
            case 11 ->
                new Prose.Step(
                        11,
                        title,
                        List.of(
                                paragraph(plain("One person holds, the other bolts.")),
                                new Block.Items(
                                        List.of(
                                                List.of(
                                                        plain("Stand the cabinet on the seat, "),
                                                        new Run("centred", Style.STRONG),
                                                        plain(".")),
                                                List.of(plain("Drive four screws up through the seat."))),
                                        true)),
                        List.of(),
                        List.of());
            default ->
                new Prose.Step(
                        number,
                        title,
                        List.of(
                                paragraph(
                                        plain(
                                                "Glue the edges, stand the parts up, clamp. Measure both diagonals: equal means square. Drive the screws on the lines you drew."))),
                        List.of(),
                        List.of());
        };
    }

    static Block paragraph(Run... runs) {
        return new Block.Paragraph(List.of(runs));
    }

    static Run plain(String text) {
        return new Run(text, Style.PLAIN);
    }

    private static Run value(String text) {
        return new Run(text, Style.VALUE);
    }
}
