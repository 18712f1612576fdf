package org.kerfleaf.export.planform;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Count;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.plan.Chain;
import org.kerfleaf.plan.Change;
import org.kerfleaf.plan.Plan.PlannedSize;

/** The maker's sizes, how they add up, and what a change of them touched. */
final class SizeSections {
    private SizeSections() {}

    static void size(Member form, PlannedSize size) {
        form.words("label", size.label())
                .quantity("value", Optional.of(size.value()))
                .quantity("least", size.least())
                .quantity("most", size.most())
                .words("kind", kind(size.value()));
    }

    private static String kind(Quantity quantity) {
        if (quantity instanceof Length) {
            return "length";
        }
        if (quantity instanceof Angle) {
            return "angle";
        }
        return quantity instanceof Count ? "count" : "choice";
    }

    static void chain(Member form, Chain chain) {
        form.number("build", chain.build())
                .words("first", chain.first())
                .words("axis", chain.axis().name().toLowerCase(Locale.ROOT))
                .list(
                        "links",
                        chain.links(),
                        (link, of) -> link.words("part", of.part())
                                .words("letter", of.letter())
                                .length("size", of.size()))
                .length("overall", chain.overall())
                .length("lacks", chain.lacks())
                .isTrue("closes", chain.closes())
                .list(
                        "held",
                        chain.held(),
                        (held, of) -> held.words("size", of.label())
                                .length("value", of.value())
                                .words("span", of.span()));
    }

    static void changes(List<Change> changes, Member top) {
        top.list(
                "changes",
                changes,
                (form, change) -> form.words("topic", change.topic().title())
                        .words("subject", change.subject())
                        .words("aspect", change.aspect())
                        .quantity("before", change.before())
                        .quantity("after", change.after()));
    }
}
