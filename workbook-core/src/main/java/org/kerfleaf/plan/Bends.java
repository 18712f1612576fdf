package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.Arrays;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.plan.Loads.Bending;
import org.kerfleaf.plan.Loads.Limited;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.SagChecks;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.SagLimit;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.stock.CrossSection;
import org.kerfleaf.stock.Stiffness;

/** How a piece bends on two supports, and how stiff its stock is. */
final class Bends {
    private Bends() {}

    /**
     * One piece under its load.
     *
     * @param span how far it hangs free
     * @param length of the piece, along the span
     * @param load all that lies on the piece
     * @param inTheMiddle whether it stands in the middle of the span, rather than spread over the length
     */
    static Bending under(
            Figure<Length> span,
            CrossSection section,
            Figure<Stiffness> stiffness,
            Length length,
            Mass load,
            boolean inTheMiddle) {
        Mass onSpan = inTheMiddle ? load : load.times(span.value().dividedBy(length));
        Figure<Length> sag = SagChecks.sag(span.value(), section, stiffness.value(), onSpan, inTheMiddle);
        Mass longest = inTheMiddle ? load : load.times(1000 / length.inMillimetres());
        return new Bending(
                span,
                Figure.of(
                        onSpan,
                        inTheMiddle
                                ? "the load of one piece, all in the middle; its own weight is not counted"
                                : "the load of one piece · span / its length; its own weight is not counted",
                        Reason.GEOMETRY,
                        given("load", load),
                        given("span", span.value()),
                        given("length", length)),
                section,
                stiffness,
                sag,
                Figure.of(
                        sag.value().times(SagChecks.CREEP),
                        "first sag · 1.5, since wood creeps under a load that stays on",
                        Reason.COMMON_PRACTICE,
                        given("first sag", sag.value())),
                Arrays.stream(SagLimit.values())
                        .map(limit -> new Limited(
                                limit,
                                limit.over(span.value()),
                                SagChecks.longest(section, stiffness.value(), longest, inTheMiddle, limit)))
                        .toList());
    }

    /** How stiff a part's stock is: as said of it, or else as its wood is; empty where neither is known. */
    static Optional<Figure<Stiffness>> stiffness(Sketch sketch, String part) {
        String stock = sketch.part(part).map(Part::stock).orElse("");
        Optional<Stiffness> graded = sketch.lumber(stock)
                .flatMap(Lumber::stiffness)
                .or(() -> sketch.sheet(stock).flatMap(Sheet::stiffness));
        return graded.map(e -> Figure.said(e, "the stiffness of " + stock))
                .or(() -> Stiffness.named(
                        sketch.lumber(stock).flatMap(Lumber::species).orElse(stock)));
    }
}
