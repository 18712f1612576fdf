package org.kerfleaf.export.booklet;

import java.util.List;
import org.kerfleaf.plan.Chain;

/** How the sizes of each build add up, direction by direction: below the cut list, the checks or the cost, where it fits. */
final class SizesTable {
    private static final String TITLE = "Sizes, direction by direction";

    private final Book book;

    SizesTable(Book book) {
        this.book = book;
    }

    /** Sets it below what stands on the page, if there is room or nothing to set. */
    boolean fits(Flow flow) {
        if (book.plan().chains().isEmpty()) {
            return true;
        }
        Block block = Block.stack(List.of(Block.space(3), Marks.heading(TITLE), table().whole(flow.width())));
        boolean fits = block.height(flow.width()) <= flow.left();
        if (fits) {
            flow.add(block);
        }
        return fits;
    }

    /** Sets it on a page of its own. */
    void into(Flow flow) {
        flow.page(TITLE, "Sizes", "");
        table().into(flow);
    }

    /** What touches end to end, what that comes to, and which of the maker's sizes it holds. */
    private Table table() {
        Table table = new Table(
                Column.fit("Direction"),
                Column.share("Pieces that touch", 2),
                Column.fit("Outside"),
                Column.share("Held", 1));
        List<Chain> chains = book.plan().chains();
        boolean several = chains.stream().map(Chain::build).distinct().count() > 1;
        int build = -1;
        for (Chain chain : chains) {
            if (several && chain.build() != build) {
                table.group("What holds together with " + chain.first());
            }
            build = chain.build();
            String lacks =
                    chain.lacksIn(book.measures()).map(" — short by "::concat).orElse("");
            table.row(
                    Cell.bold(chain.axis().words()),
                    Cell.text(chain.linksIn(book.measures()) + lacks),
                    Cell.length(chain.overall(), book.measures()),
                    Cell.text(chain.heldIn(book.measures())));
        }
        return table;
    }
}
