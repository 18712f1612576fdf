package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.cost.Cost;
import org.kerfleaf.export.drawing.BoardDrawing;
import org.kerfleaf.export.drawing.BuildPicture;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Line;
import org.kerfleaf.export.drawing.Pictures;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Scale;
import org.kerfleaf.export.drawing.SheetDrawing;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.Plan;

/** The cover: title, what the workbook says first, a picture computed from the plan, five facts, blanks to fill in. */
final class CoverPage {
    private static final Style LEAD = new Style(Face.TEXT, 14, Ink.BLACK);
    private static final double[] VALUES = {14, 13, 12, 11};
    private static final double LEAST_PICTURE = 38;
    private static final double GAP = 5;

    private final Book book;

    CoverPage(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        Plan plan = book.plan();
        flow.bare(plan.title(), "Cover");
        flow.add(title(plan.title(), flow.width()));
        flow.add(Block.space(4));
        Block foot = Block.stack(List.of(facts(), Block.space(9), blanks()));
        double footHeight = foot.height(flow.width());
        List<Block> lead = Marks.prose(book.prose().lead(), LEAD, 1.4, 3);
        int fitting = 0;
        for (Block block : lead) {
            if (block.height(flow.width()) > flow.left() - footHeight) {
                break;
            }
            flow.add(block);
            fitting++;
        }
        double room = flow.left() - footHeight - 12;
        if (fitting == lead.size() && room >= LEAST_PICTURE) {
            picture(flow.width(), room).ifPresent(picture -> {
                double high = picture.height(flow.width());
                flow.add(Block.space(Math.max(0, (room - high) / 2) + 4));
                flow.add(picture);
            });
        }
        flow.leave(footHeight);
        flow.add(foot);
        rest(flow, lead.subList(fitting, lead.size()));
    }

    private static void rest(Flow flow, List<Block> lead) {
        if (!lead.isEmpty()) {
            flow.page("About this build", "About", "");
            lead.forEach(flow::pour);
        }
    }

    /** The largest size at which the title takes four lines at most. */
    private static Block title(String words, double width) {
        for (double points : new double[] {40, 34, 28, 24}) {
            Paragraph title = Paragraph.of(words, new Style(Face.LABEL_BOLD, points, Ink.BLACK), 1.04, 0);
            if (points == 24 || title.text().wrap(width).size() <= (points == 40 ? 3 : 4)) {
                return title;
            }
        }
        throw new IllegalStateException(words);
    }

    private Optional<Block> picture(double width, double room) {
        Plan plan = book.plan();
        Optional<BuildPicture> whole = Pictures.whole(plan, width, room);
        if (whole.isPresent()) {
            BuildPicture picture = whole.get();
            return Optional.of(Block.picture(
                    picture.height(), (ink, x, y, w) -> picture.paint(ink, x + (w - picture.width()) / 2, y)));
        }
        if (!plan.sheets().isEmpty()) {
            SheetDrawing drawing = SheetDrawing.plain(plan.sheets().get(0), book.lettering(), width, room - 7);
            String caption = plan.sheets().size() == 1
                    ? "The sheet it is cut from"
                    : "The first of the %d sheets it is cut from"
                            .formatted(plan.sheets().size());
            return Optional.of(Block.picture(drawing.height() + 7, (ink, x, y, w) -> {
                double left = x + (w - drawing.width()) / 2;
                drawing.paint(ink, left, y);
                ink.centred(Rich.of(caption, Style.CAPTION).line(), x + w / 2, y + drawing.height() + 5);
            }));
        }
        if (!plan.boards().isEmpty()) {
            var layout = plan.boards().get(0);
            Scale scale = Scale.fitting(layout.board().length(), layout.board().length(), width, Double.MAX_VALUE);
            BoardDrawing drawing = new BoardDrawing(layout, book.lettering(), scale);
            return Optional.of(Block.picture(
                    BoardDrawing.BAR + 2, (ink, x, y, w) -> drawing.paint(ink, x + (w - drawing.width()) / 2, y)));
        }
        return Optional.empty();
    }

    private record Fact(String name, Rich value) {
        double width() {
            return Math.max(Rich.of(name, Style.CAPTION).width(), value.width());
        }
    }

    private List<Fact> facts(double points) {
        Style bold = new Style(Face.LABEL_BOLD, points, Ink.BLACK);
        Plan plan = book.plan();
        List<Fact> facts = new ArrayList<>();
        Rich overall = plan.overall()
                .map(all -> book.lettering()
                        .size(all.wide().value(), all.deep().value(), bold)
                        .plus(" × ", bold)
                        .plus(Rich.NOTHING.plusNearest(all.high().value(), book.measures(), bold)))
                .orElse(Rich.of(Book.NOT_KNOWN, bold));
        facts.add(new Fact("Wide, deep, high", overall));
        facts.add(fact(
                "Weight", plan.weight().map(w -> w.value().in(book.measures())).orElse(Book.NOT_KNOWN), bold));
        facts.add(fact("To cut from", stock(), bold));
        facts.add(fact("Cost", cost(plan.cost()), bold));
        facts.add(fact("Work", work(), bold));
        return facts;
    }

    private static String cost(Cost cost) {
        return cost.bought()
                .map(sum -> sum.value()
                        + (cost.notKnown().isEmpty() ? "" : " and more")
                        + (cost.kits() > 1 ? " for %d kits".formatted(cost.kits()) : ""))
                .orElse(Book.NOT_KNOWN);
    }

    private String stock() {
        int sheets = book.plan().sheets().size();
        int boards = book.plan().boards().size();
        if (sheets == 0 && boards == 0) {
            return "nothing";
        }
        if (sheets == 0 || boards == 0) {
            return sheets > 0 ? Book.counted(sheets, "sheet") : Book.counted(boards, "board");
        }
        return Book.counted(sheets, "sheet") + ", " + Book.counted(boards, "board");
    }

    private String work() {
        var schedule = book.plan().schedule();
        if (schedule.work().value().isZero()) {
            return Book.NOT_KNOWN;
        }
        return Book.hours(schedule.work().value())
                + (schedule.stepsWithoutTime().isEmpty() ? "" : " and more");
    }

    private static Fact fact(String name, String value, Style style) {
        return new Fact(name, Rich.of(value, style));
    }

    private static double widthOf(List<Fact> facts) {
        return facts.stream().mapToDouble(Fact::width).sum() + GAP * (facts.size() - 1);
    }

    /** Facts side by side, spread over the width; on two rows if one does not hold them. */
    private Block facts() {
        double width = book.paper().measure();
        List<Fact> facts = facts(VALUES[0]);
        for (int i = 1; i < VALUES.length && widthOf(facts) > width; i++) {
            facts = facts(VALUES[i]);
        }
        List<List<Fact>> rows = new ArrayList<>();
        List<Fact> row = new ArrayList<>();
        double used = 0;
        for (Fact fact : facts) {
            if (!row.isEmpty() && used + GAP + fact.width() > width) {
                rows.add(row);
                row = new ArrayList<>();
                used = 0;
            }
            used += (row.isEmpty() ? 0 : GAP) + fact.width();
            row.add(fact);
        }
        rows.add(row);
        return Block.picture(rows.size() * 13.5 + 2.5, (ink, x, y, w) -> {
            ink.line(x, y, x + w, y, Ink.NARROW);
            for (int i = 0; i < rows.size(); i++) {
                row(ink, rows.get(i), x, y + 3 + i * 13.5, w, rows.size() > 1);
            }
        });
    }

    private static void row(Ink ink, List<Fact> row, double x, double y, double width, boolean ragged) {
        double used = row.stream().mapToDouble(Fact::width).sum();
        double gap = row.size() > 1 ? (width - used) / (row.size() - 1) : 0;
        double left = x;
        for (Fact fact : row) {
            Line value = fact.value().line();
            ink.text(Rich.of(fact.name(), Style.CAPTION).line(), left, y + 3);
            ink.text(value, left, y + 9.4);
            left += fact.width() + (ragged ? Math.min(gap, 14) : gap);
        }
    }

    private static Block blanks() {
        return Marks.blanks(List.of("Where it will stand", "Who leads the build", "Begun on"));
    }
}
