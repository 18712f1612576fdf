package org.kerfleaf.plan;

import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Count;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.sketch.Asked;
import org.kerfleaf.sketch.Live;

/** Answers what prose and views ask of the plan. */
public final class Answers {
    private Answers() {}

    /** What stands in prose for a live value; what the plan cannot answer is {@code not known}. */
    public static String words(Plan plan, Live live) {
        if (live instanceof Live.OfLength length) {
            return length.length().in(plan.style());
        }
        if (live instanceof Live.OfAngle angle) {
            return angle.angle().in(plan.style());
        }
        if (live instanceof Live.OfText text) {
            return text.text();
        }
        return answer(plan, ((Live.OfQuestion) live).asked())
                .map(q -> q.in(plan.style()))
                .orElse("not known");
    }

    /** The answer to a question, if the plan has it. */
    public static Optional<Quantity> answer(Plan plan, Asked asked) {
        Optional<PlannedPart> part = plan.part(asked.subject());
        return switch (asked.question()) {
            case BOUGHT -> bought(plan, asked.subject());
            case COUNT -> part.map(p -> Count.of(p.count()));
            case LENGTH -> part.map(p -> p.length().value());
            case WIDTH -> part.map(p -> p.width().value());
            case MITRE_SCALE -> angle(part, PlannedPart.PlannedEdge.Cut.MITRE);
            case RIDGE_ANGLE ->
                angle(part, PlannedPart.PlannedEdge.Cut.BEVEL)
                        .map(bevel -> Angle.RIGHT.minus((Angle) bevel).times(2));
        };
    }

    private static Optional<Quantity> angle(Optional<PlannedPart> part, PlannedPart.PlannedEdge.Cut cut) {
        return part.stream()
                .flatMap(p -> p.edges().stream())
                .filter(e -> e.cut() == cut)
                .map(e -> (Quantity) e.angle().value())
                .findFirst();
    }

    /** {@code 1 sheet}, {@code 2 boards}. */
    private static Optional<Quantity> bought(Plan plan, String stock) {
        return plan.bounds().stream()
                .filter(b -> b.stock().equals(stock))
                .map(b -> {
                    boolean sheet = plan.sheets().stream()
                            .anyMatch(s -> s.sheet().stock().equals(stock));
                    String noun = (sheet ? "sheet" : "board") + (b.bought() == 1 ? "" : "s");
                    return (Quantity) style -> b.bought() + " " + noun;
                })
                .findFirst();
    }
}
