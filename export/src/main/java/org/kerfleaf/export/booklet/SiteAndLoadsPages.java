package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.LoadWords;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.SiteWords;
import org.kerfleaf.plan.Told;
import org.kerfleaf.site.SitePlan;

/** Where it stands, what pulls and pushes at it, what it carries and who lifts it: every figure with its rule, all of them estimates. */
final class SiteAndLoadsPages {
    /** How many rows stay with a group's title. */
    private static final int ROWS_KEPT = 3;

    private final Book book;

    SiteAndLoadsPages(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        Plan plan = book.plan();
        List<Told> groups = new ArrayList<>();
        plan.site().ifPresent(site -> groups.addAll(new SiteWords(plan.style()).of(site)));
        groups.addAll(new LoadWords(plan.style()).of(plan.loads()));
        if (groups.isEmpty()) {
            return;
        }
        String title = plan.site().isPresent() ? (plan.loads().isEmpty() ? "The site" : "Site and loads") : "Loads";
        flow.page(title, title, "estimates");
        Block defers = Block.stack(List.of(
                Marks.framed(List.of(Paragraph.of(SitePlan.DEFERS, Style.LABEL_SEMI, 1.36, 0))), Block.space(3)));
        flow.add(defers);
        flow.repeat(defers);
        for (Told group : groups) {
            set(group, flow, defers);
        }
        flow.repeat(null);
    }

    /** A group may break between its rows, some way down; the deferring sentence stands on every page of it. */
    private void set(Told group, Flow flow, Block defers) {
        Table table = table(group);
        Block head = table.head(flow.width());
        List<Block> rows = table.blocks(flow.width());
        int kept = Math.min(ROWS_KEPT, rows.size());
        List<Block> first = new ArrayList<>();
        first.add(group.title().isEmpty() ? Block.space(0) : Marks.heading(group.title()));
        first.add(head);
        first.addAll(rows.subList(0, kept));
        flow.together(first);
        flow.repeat(Block.stack(List.of(defers, head)));
        rows.subList(kept, rows.size()).forEach(flow::add);
        flow.repeat(defers);
        flow.add(Block.space(4));
    }

    private Table table(Told group) {
        Table table =
                new Table(Column.share("What", 1), Column.fit("Figure"), Column.share("By which rule", 1.6)).tight();
        for (Told.Line line : group.lines()) {
            table.row(
                    Cell.text(line.what()),
                    Cell.bold(line.words()),
                    Cell.text(
                            line.figure()
                                    .map(figure -> figure.reason().rule() + ". "
                                            + figure.reason().source())
                                    .orElse(""),
                            Style.CAPTION));
        }
        return table;
    }
}
