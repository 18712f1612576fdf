package org.kerfleaf.export.terminal;

import java.util.List;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.SiteWords;
import org.kerfleaf.plan.Told;
import org.kerfleaf.site.SitePlan;

/** The hole, the post, the heights above ground, what the place asks, and the wind. */
final class SiteSection {
    private SiteSection() {}

    static void write(Plan plan, Page page) {
        List<Told> told = new SiteWords(plan.style()).of(plan.site().orElseThrow());
        told.forEach(group -> tell(group, page));
        page.blank();
        page.paragraph(SitePlan.DEFERS);
        page.beforeReasons();
        told.forEach(group -> why(group, page));
    }

    /** A group with its title, one line a figure. */
    static void tell(Told group, Page page) {
        if (!group.title().isEmpty()) {
            page.blank();
            page.line(group.title());
        }
        Grid grid = new Grid().words("").words("");
        group.lines().forEach(line -> grid.row(Cell.of(line.what()), Cell.of(line.words())));
        page.gridWithoutHead(grid);
    }

    /** The reasons of a group's figures. */
    static void why(Told group, Page page) {
        String of = group.title().isEmpty() ? "" : group.title() + ", ";
        group.lines().forEach(line -> line.figure().ifPresent(figure -> page.why(of + line.what(), figure)));
    }
}
