package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Signs;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.plan.PlannedPart.PlannedEdge;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.saw.SawSetting.Straightedge;

/** Every part as it is cut, and how the saws are set for it. */
final class CutListPages {
    private final Book book;

    CutListPages(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        boolean settings = !book.plan().sawSettings().isEmpty();
        String unit = book.measures().unit() == LengthUnit.INCHES ? "inches" : "millimetres";
        String fact = "sizes in " + unit + " · tick when cut";
        Block saws = settings ? Block.stack(sawBlocks(flow.width())) : Block.space(0);
        Table list = cutList();
        flow.page("Cut list", "Cutting", fact);
        boolean both = settings && list.height(flow.width()) + saws.height(flow.width()) <= flow.left();
        if (both) {
            flow.retitle("Cut list and saw settings", "Cutting", fact);
        }
        if (list.isEmpty()) {
            flow.add(Paragraph.of("The plan cuts nothing.", Style.LABEL, 1.4, 2));
        } else {
            list.into(flow);
        }
        if (both) {
            flow.add(saws);
        } else if (settings) {
            flow.page("Saw settings", "Saws", "tick when set");
            sawTable().into(flow);
            flow.add(advice());
        }
    }

    private Table cutList() {
        Table table = new Table(
                Column.fit(""),
                Column.fit(""),
                Column.share("Part", 1),
                Column.number("Cut"),
                Column.fit("Along grain"),
                Column.fit("Across"),
                Column.fit("Thick"),
                Column.share("From", 0.6),
                Column.share("Then", 1.4));
        for (PlannedPart part : book.plan().parts()) {
            table.row(
                    Cell.tick(),
                    Cell.letter(part.letter()),
                    Cell.bold(part.name()),
                    Cell.right(Integer.toString(part.count())),
                    Cell.length(part.length().value(), book.measures()),
                    Cell.length(part.width().value(), book.measures()),
                    Cell.length(part.thickness().value(), book.measures()),
                    Cell.text(part.stock()),
                    then(part));
        }
        return table;
    }

    private Cell then(PlannedPart part) {
        List<Paragraph> lines = new ArrayList<>();
        for (PlannedEdge edge : part.edges()) {
            lines.add(line(edge(edge)));
        }
        if (part.pair()) {
            lines.add(line(Rich.of("a pair, mirrored", SMALL)));
        }
        part.then().forEach(words -> lines.add(line(Rich.of(words, SMALL))));
        part.takenFromTheWork()
                .ifPresent(words -> lines.add(
                        line(Rich.of("Take the size from the work. ", SMALL).plus(words, SMALL))));
        return Cell.paragraphs(lines);
    }

    private static final Style SMALL = Style.LABEL.at(9.5);

    private static Paragraph line(Rich words) {
        return new Paragraph(words, SMALL.size(), Style.LABEL.size() * 1.3, 0);
    }

    private Rich edge(PlannedEdge edge) {
        boolean bevel = edge.cut() == PlannedEdge.Cut.BEVEL;
        Rich words = Rich.of(edge.name() + (bevel ? " bevelled " : " mitred ") + edge.angles(book.measures()), SMALL);
        if (!edge.shorter().value().isPositive()) {
            return words;
        }
        return words.plus(bevel ? ", other face " : ", other edge ", SMALL)
                .plus(Rich.nearest(edge.shorter().value(), book.measures(), SMALL))
                .plus(" shorter", SMALL);
    }

    private List<Block> sawBlocks(double width) {
        return List.of(Block.space(3), Marks.heading("Saw settings"), sawTable().whole(width), advice());
    }

    private static Block advice() {
        return Block.stack(List.of(
                Block.space(2),
                Paragraph.of(
                        "Tilt is read on the saw, from square. Try every tilted cut on a scrap and hold it against the"
                                + " marked part before you cut the part.",
                        Style.LABEL.in(Ink.GRAPHITE),
                        1.4,
                        0)));
    }

    private Table sawTable() {
        Table table = new Table(
                Column.fit(""),
                Column.share("Saw", 0.8),
                Column.share("Parts", 0.7),
                Column.share("Cut", 1),
                Column.fit(""),
                Column.number("Tilt"),
                Column.share("Set", 2));

        for (SawSetting setting : book.plan().sawSettings()) {
            double tilt = setting.tilt().value().inDegrees();
            table.row(
                    Cell.tick(),
                    Cell.bold(setting.saw()),
                    Cell.text(String.join(", ", setting.parts())),
                    Cell.text(setting.cut()),
                    Cell.sign(12, 4.8, 3.5, (ink, x, y, width) -> Signs.blade(ink, tilt, x, y)),
                    Cell.right(setting.tilt().value().in(book.measures())),
                    set(setting));
        }
        return table;
    }

    /** What to set, then what to watch, then why the scale reads what it reads. */
    private Cell set(SawSetting setting) {
        Rich words = Rich.NOTHING;
        if (setting.scale().isPresent()) {
            words = words.plus("Scale at " + setting.scale().get().value().in(book.measures()) + ". ", Style.LABEL);
        }
        if (setting.bladeDepth().isPresent()) {
            words = words.plus("Blade ", Style.LABEL)
                    .plusNearest(setting.bladeDepth().get().value(), book.measures(), Style.LABEL)
                    .plus(" deep. ", Style.LABEL);
        }
        for (Straightedge guide : setting.straightedge()) {
            words = words.plus("Straightedge ", Style.LABEL)
                    .plusNearest(guide.distance().value(), book.measures(), Style.LABEL)
                    .plus(" " + guide.where() + ". ", Style.LABEL);
        }

        List<Paragraph> lines = new ArrayList<>();
        Rich all = words.plus(setting.notes(), Style.LABEL);
        if (!all.isEmpty()) {
            lines.add(Paragraph.of(all, Style.LABEL, 1.3, 0));
        }
        setting.scale()
                .map(scale -> scale.reason().in(book.measures()))
                .ifPresent(why -> lines.add(Paragraph.of(why, Style.CAPTION, 1.3, 0)));
        return Cell.paragraphs(lines);
    }
}
