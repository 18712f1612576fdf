package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Signs;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.measure.Length;
import org.kerfleaf.saw.Reading;
import org.kerfleaf.saw.SawKind;
import org.kerfleaf.saw.SawSetting;
import org.kerfleaf.saw.SawSetting.Guide;
import org.kerfleaf.saw.SawSetting.Straightedge;

/** How the saws are set: a line for each set-up, and where the straightedge lies for each cut of the sheets. */
final class SawPages {
    private final Book book;
    private final List<SawSetting> settings;

    SawPages(Book book) {
        this.book = book;
        this.settings = book.plan().sawSettings();
    }

    boolean isTold() {
        return !settings.isEmpty();
    }

    /** All of it as one block below something else. */
    Block below(double width) {
        if (!isTold()) {
            return Block.space(0);
        }
        List<Block> blocks = new ArrayList<>(List.of(
                Block.space(3),
                Marks.heading("Saw settings"),
                advice(),
                settings().whole(width)));
        for (SawSetting setting : guided()) {
            blocks.add(head(setting));
            blocks.add(guides(setting).whole(width));
        }
        return Block.stack(blocks);
    }

    /** On pages of their own. */
    void into(Flow flow) {
        if (!isTold()) {
            return;
        }
        flow.page("Saw settings", "Saws", "tick when set");
        flow.add(advice());
        settings().into(flow);
        for (SawSetting setting : guided()) {
            flow.add(head(setting));
            guides(setting).into(flow);
        }
    }

    private Block advice() {
        int count = settings.size();
        String words = (count == 1 ? "One setting" : count + " settings, each made once")
                + ". Tilt and scale are read on the saw, from square. Try every setting on a scrap and hold it against the"
                + " marked part before you cut the part.";
        return Block.stack(List.of(Paragraph.of(words, Style.LABEL.in(Ink.GRAPHITE), 1.4, 0), Block.space(2)));
    }

    private Table settings() {
        Table table = new Table(
                Column.fit(""),
                Column.fit("Saw"),
                Column.share("Parts", 0.5),
                Column.share("Cut", 0.8),
                Column.fit(""),
                Column.number("Tilt"),
                Column.share("Set", 2.2));
        for (SawSetting setting : settings) {
            boolean router = setting.saw().equals(SawKind.ROUTER.words());
            table.row(
                    Cell.tick(),
                    Cell.bold(setting.saw()),
                    Cell.text(String.join(", ", setting.parts())),
                    Cell.text(setting.cut()),
                    router ? Cell.empty() : sign(setting),
                    router ? Cell.empty() : Cell.right(setting.tilt().value().in(book.measures())),
                    set(setting));
        }
        return table;
    }

    /** The board against the fence if the table is turned, else the blade through its base; both if both are set. */
    private static Cell sign(SawSetting setting) {
        double tilt = setting.tilt().value().inDegrees();
        double scale = setting.scale().map(s -> s.value().inDegrees()).orElse(0.0);
        if (scale == 0) {
            return Cell.sign(12, 4.8, 3.5, (ink, x, y, width) -> Signs.blade(ink, tilt, x, y));
        }
        return Cell.sign(12, tilt == 0 ? 6 : 11.5, 3.5, (ink, x, y, width) -> {
            Signs.mitre(ink, scale, x, y);
            if (tilt != 0) {
                Signs.blade(ink, tilt, x, y + 6.4);
            }
        });
    }

    /** What to set, then each further number on its line, what to watch, and why the scale reads what it reads. */
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
        String face = setting.faceUp();
        words = words.plus(
                face.isEmpty() ? "" : face.substring(0, 1).toUpperCase() + face.substring(1) + ".", Style.LABEL);
        List<Paragraph> lines = new ArrayList<>(List.of(Paragraph.of(words, Style.LABEL, 1.3, 0)));
        for (Straightedge guide : setting.straightedge()) {
            lines.add(line(Rich.of("Straightedge ", Style.LABEL)
                    .plusNearest(guide.distance().value(), book.measures(), Style.LABEL)
                    .plus(" " + guide.where() + ".", Style.LABEL)));
        }
        setting.set().forEach(reading -> lines.add(line(reading(reading))));
        if (!setting.notes().isEmpty()) {
            lines.add(line(Rich.of(setting.notes(), Style.LABEL)));
        }
        setting.scale()
                .filter(scale -> !scale.value().isZero() && !setting.notes().contains("for a corner"))
                .map(scale -> scale.reason().in(book.measures()))
                .ifPresent(why -> lines.add(Paragraph.of(why, Style.CAPTION, 1.3, 0)));
        return Cell.paragraphs(lines);
    }

    private static Paragraph line(Rich words) {
        return Paragraph.of(words, Style.LABEL, 1.3, 0);
    }

    /** {@code stop block, G, 4 pieces: 15 15/16 in}. */
    private Rich reading(Reading reading) {
        String what =
                reading.what().substring(0, 1).toUpperCase() + reading.what().substring(1);
        String shown = reading.in(book.measures());
        Rich words = Rich.of(what + ": ", Style.LABEL);
        return reading.value().value() instanceof Length length && !shown.startsWith("under")
                ? words.plusNearest(length, book.measures(), Style.LABEL).plus(".", Style.LABEL)
                : words.plus(shown + ".", Style.LABEL);
    }

    // ---- the cuts of the sheets --------------------------------------------------------------------------------

    private List<SawSetting> guided() {
        return settings.stream()
                .filter(s -> !s.guides().isEmpty() && !s.straightedge().isEmpty())
                .toList();
    }

    private static Block head(SawSetting setting) {
        return Block.stack(List.of(
                Marks.heading("Where the straightedge lies"),
                Paragraph.of(
                        "For the numbered cuts of the sheets, from the same edge of the piece in hand as the line. Keep is the"
                                + " side of the line you keep; left and right are of the saw.",
                        Style.LABEL.in(Ink.GRAPHITE),
                        1.4,
                        2)));
    }

    private Table guides(SawSetting setting) {
        List<String> ways =
                setting.straightedge().stream().map(Straightedge::brief).toList();
        List<Column> columns = new ArrayList<>(List.of(Column.fit(""), Column.number("Line"), Column.share("Cuts", 1)));
        ways.forEach(way -> columns.add(Column.number(way)));
        Table table = new Table(columns.toArray(Column[]::new));
        for (Guide guide : setting.guides()) {
            List<Cell> row = new ArrayList<>(
                    List.of(Cell.tick(), Cell.length(guide.set(), book.measures()), Cell.text(guide.cutWords())));
            for (String way : ways) {
                row.add(guide.straightedge().stream()
                        .filter(edge -> edge.brief().equals(way))
                        .findFirst()
                        .map(edge -> Cell.length(edge.distance().value(), book.measures()))
                        .orElse(Cell.empty()));
            }
            table.row(row.toArray(Cell[]::new));
        }
        return table;
    }
}
