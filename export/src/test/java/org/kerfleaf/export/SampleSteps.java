package org.kerfleaf.export;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.caution.Topic;
import org.kerfleaf.plan.PlannedStep;
import org.kerfleaf.reason.Reason;

/** The build steps of {@link SamplePlan}, and what can hurt somebody in them. */
final class SampleSteps {
    private SampleSteps() {}

    static List<Caution> cautions() {
        return List.of(
                new Caution(
                        Topic.CIRCULAR_SAW,
                        "Clamp the sheet and support the offcut so that the kerf cannot close on the blade. Take the battery out before you set depth or tilt. Stand beside the line of cut.",
                        List.of(2),
                        "29 CFR 1926.304"),
                new Caution(
                        Topic.MITRE_SAW,
                        "Hands stay 6 in from the blade. Let it stop before you lift it. Clamp short pieces.",
                        List.of(2, 7),
                        "29 CFR 1910.213"),
                new Caution(
                        Topic.JIGSAW,
                        "Keep fingers out from under the sheet. Let the blade stop before you put the saw down.",
                        List.of(2),
                        Reason.COMMON_PRACTICE),
                new Caution(
                        Topic.DRILL,
                        "Drill the pilot hole first. Never steady the work with the hand behind the hole.",
                        List.of(3, 4, 5, 7, 11),
                        Reason.COMMON_PRACTICE),
                new Caution(
                        Topic.GLUE_AND_PAINT,
                        "Doors open, no flame near. Rags soaked with oil dry flat and outdoors.",
                        List.of(3, 6, 8),
                        "the can's label"),
                new Caution(
                        Topic.GLAZING,
                        "Cut slowly with the film on; chips are sharp.",
                        List.of(9),
                        Reason.COMMON_PRACTICE),
                new Caution(
                        Topic.TREATED_WOOD,
                        "Cut it outdoors, wear gloves, sweep up. Do not burn it, not even a scrap.",
                        List.of(2, 10, 11),
                        "EPA, treated wood"),
                new Caution(
                        Topic.DIGGING,
                        "Have buried lines located before the spade goes in. Cover the hole when you leave it.",
                        List.of(10),
                        "29 CFR 1926.651"),
                new Caution(
                        Topic.LIFTING,
                        "The cabinet weighs 58.4 lb. Two people lift it, a third sets the bolts.",
                        List.of(11),
                        "NIOSH lifting equation"));
    }

    static List<PlannedStep> steps() {
        return List.of(
                step(1, "Days before: ask", 0, 1, List.of()),
                step(
                        2,
                        "Cut and mark",
                        180,
                        1,
                        List.of(
                                take(null, "the sheet and the boards"),
                                take(null, "circular saw, mitre saw, jigsaw"),
                                take(null, "straightedge, two clamps"))),
                step(
                        3,
                        "Back and floor",
                        25,
                        1,
                        List.of(
                                take("A", "Floor"),
                                take("C", "Back"),
                                take(null, "5 screws, No. 6 x 1 5/8 in"),
                                take(null, "drill bit, 7/64 in"),
                                take(null, "glue, two clamps"))),
                step(
                        4,
                        "Sides and shelves",
                        45,
                        1,
                        List.of(
                                take("B", "Side, 2"),
                                take("E", "Shelf, 2"),
                                take(null, "36 screws, No. 6 x 1 5/8 in"),
                                take(null, "glue, four clamps"))),
                step(
                        5,
                        "Front",
                        30,
                        1,
                        List.of(
                                take("D", "Front"),
                                take(null, "17 screws, No. 6 x 1 5/8 in"),
                                take(null, "glue, four clamps"))),
                step(
                        6,
                        "Seal and paint the inside",
                        60,
                        1,
                        List.of(take(null, "caulk, primer, paint"), take(null, "brush, masking tape"))),
                step(
                        7,
                        "Roof, trim and cap",
                        90,
                        1,
                        List.of(
                                take("F", "Roof, 2"),
                                take("H", "Rake trim, 4"),
                                take("J", "Eave trim, 2"),
                                take("K", "Ridge cap"),
                                take(null, "finish nails, 1 1/2 in"))),
                step(
                        8,
                        "Paint the outside and the door",
                        75,
                        1,
                        List.of(take("G", "Door"), take(null, "primer, two colours, brush"))),
                step(
                        9,
                        "Glaze and hang the door",
                        100,
                        1,
                        List.of(
                                take("P", "Pane"),
                                take(null, "glazing tape, beads"),
                                take(null, "2 hinges, 2 catches, knob, chain"))),
                step(10, "Set the post", 120, 1, List.of(take("L", "Post"), take(null, "spade, level, gravel"))),
                step(
                        11,
                        "Mount the cabinet",
                        60,
                        2,
                        List.of(
                                take("M", "Arm, 2"),
                                take("N", "Seat"),
                                take(null, "2 carriage bolts, 3/8 x 7 1/2 in"))));
    }

    private static PlannedStep step(int number, String title, int minutes, int people, List<PlannedStep.Take> take) {
        List<Caution> cautions =
                cautions().stream().filter(c -> c.steps().contains(number)).toList();
        return new PlannedStep(
                number,
                title,
                take,
                minutes == 0 ? Optional.empty() : Optional.of(Duration.ofMinutes(minutes)),
                people,
                cautions,
                List.of(),
                Optional.empty());
    }

    private static PlannedStep.Take take(String letter, String words) {
        return new PlannedStep.Take(Optional.ofNullable(letter), words);
    }
}
