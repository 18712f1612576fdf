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
            flow.together(List.of(
                    group.title().isEmpty() ? Block.space(0) : Marks.heading(group.title()),
                    table(group).whole(flow.width()),
                    Block.space(4)));
        }
        flow.repeat(null);
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
