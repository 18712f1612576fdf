package org.kerfleaf.export.terminal;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Chain;
import org.kerfleaf.plan.Change;
import org.kerfleaf.plan.Change.Topic;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.Plan.PlannedSize;

/** What a change touched, the maker's sizes, and how the sizes of each build add up. */
final class SizeSections {
    private static final String NONE = "none";

    private final Plan plan;
    private final MeasureStyle style;

    private SizeSections(Plan plan) {
        this.plan = plan;
        this.style = plan.style();
    }

    static List<Section> of(Plan plan, Optional<List<Change>> changes) {
        SizeSections told = new SizeSections(plan);
        return List.of(
                new Section(
                        "What changed",
                        "against the workbook as written",
                        changes.isPresent(),
                        page -> told.changes(page, changes.orElseThrow())),
                new Section("Sizes", "", !plan.sizes().isEmpty(), told::sizes),
                new Section(
                        "Sizes, direction by direction",
                        "pieces that touch, end to end",
                        !plan.chains().isEmpty(),
                        told::chains));
    }

    private void changes(Page page, List<Change> changes) {
        if (changes.isEmpty()) {
            page.paragraph("Nothing: what was tried is what the workbook says.");
            return;
        }
        Grid grid = new Grid().words("").words("What").words("As written").words("Now");
        Optional<Topic> before = Optional.empty();
        for (Change change : changes) {
            String topic = before.equals(Optional.of(change.topic()))
                    ? ""
                    : change.topic().title();
            grid.row(
                    Cell.of(topic),
                    Cell.of(change.what()),
                    Cell.of(change.before().isEmpty() ? NONE : change.beforeIn(style)),
                    Cell.of(change.after().isEmpty() ? NONE : change.afterIn(style)));
            before = Optional.of(change.topic());
        }
        page.grid(grid);
    }

    private void sizes(Page page) {
        Grid grid = new Grid().words("Size").words("In this plan").words("Can be");
        for (PlannedSize size : plan.sizes()) {
            String least = size.least().map(bound -> bound.in(style)).orElse("");
            String most = size.most().map(bound -> bound.in(style)).orElse("");
            String range =
                    least.isEmpty() && most.isEmpty() ? "" : least.isEmpty() ? "up to " + most : least + " to " + most;
            grid.row(Cell.of(size.label()), Cell.of(size.value().in(style)), Cell.of(range));
        }
        page.grid(grid);
    }

    private void chains(Page page) {
        boolean several = plan.chains().stream().map(Chain::build).distinct().count() > 1;
        int build = -1;
        for (Chain chain : plan.chains()) {
            if (several && chain.build() != build) {
                page.paragraph("What holds together with " + chain.first());
            }
            build = chain.build();
            String held = chain.heldIn(style);
            page.hanging(
                    "%s%-15s".formatted(several ? "  " : "", chain.axis().words()),
                    chain.words(style) + "." + (held.isEmpty() ? "" : " Held: " + held + "."));
        }
    }
}
