package org.kerfleaf.export.spreadsheet;

import java.util.List;
import java.util.stream.Collectors;
import org.kerfleaf.saw.SawSetting;

/** Every set-up of every saw, each made once. */
final class SawSettingsSheet {
    private static final String DEGREES = "0.##\"°\"";

    private SawSettingsSheet() {}

    static void write(Book book) {
        List<SawSetting> settings = book.plan().sawSettings();
        if (settings.isEmpty()) {
            return;
        }
        Table table = book.sheet(
                "Saw settings",
                3,
                List.of(
                        Column.box(),
                        Column.text("saw", "Saw", 16),
                        Column.text("parts", "Parts", 10),
                        Column.text("cut", "Cut", 28),
                        Column.number("tilt", "Blade tilt", 10),
                        Column.number("scale", "Mitre scale", 10),
                        Column.number("depth", book.printed().lengthHead("Depth"), 10),
                        Column.text("face", "Which face is up", 18),
                        Column.text("straightedge", "Straightedge", 32),
                        Column.text("set", "Also set or marked", 38),
                        Column.text("notes", "What to watch", 38)));
        for (SawSetting setting : settings) {
            line(book, table.row(), setting);
        }
        table.filtered();
        if (settings.stream().anyMatch(s -> !s.guides().isEmpty())) {
            guides(book, table.leaf(), settings);
        }
        table.leaf()
                .remark("All angles are from square, as saws read. Make a test cut in scrap before every new setting.");
    }

    private static void line(Book book, Line line, SawSetting setting) {
        line.text("saw", setting.saw())
                .text("parts", String.join(" ", setting.parts()))
                .text("cut", setting.cut())
                .number("tilt", hundredths(setting.tilt().value().inDegrees()), DEGREES)
                .text("straightedge", edges(book, setting.straightedge(), "from the line"))
                .text("face", setting.faceUp())
                .text(
                        "set",
                        setting.set().stream()
                                .map(r -> r.what() + ": " + r.in(book.plan().style()))
                                .collect(Collectors.joining("; ")))
                .text("notes", setting.notes());
        setting.scale()
                .ifPresent(
                        scale -> line.number("scale", hundredths(scale.value().inDegrees()), DEGREES));
        setting.bladeDepth().ifPresent(depth -> line.length("depth", depth.value()));
    }

    /** Each size the sheets are cut to, once. */
    private static void guides(Book book, Leaf leaf, List<SawSetting> settings) {
        Table table = leaf.nextTable(
                "Each size the sheets are cut to, and where the straightedge or fence lies for it, from the edge of the piece in hand",
                List.of(
                        Column.skip(),
                        Column.text("saw", "Saw", 0),
                        Column.skip(),
                        Column.text("cuts", "Cuts", 0),
                        Column.skip(),
                        Column.number("set", book.printed().lengthHead("Line"), 0),
                        Column.text("reads", "Read on the tape", 0),
                        Column.skip(),
                        Column.text("straightedge", "Straightedge", 0),
                        Column.skip(),
                        Column.skip()));
        for (SawSetting setting : settings) {
            for (SawSetting.Guide guide : setting.guides()) {
                table.row()
                        .text("saw", setting.saw())
                        .text("cuts", guide.cutWords())
                        .length("set", guide.set())
                        .reads("reads", guide.set())
                        .text("straightedge", edges(book, guide.straightedge(), "from the edge"));
            }
        }
    }

    private static double hundredths(double degrees) {
        return Math.round(degrees * 100) / 100.0;
    }

    private static String edges(Book book, List<SawSetting.Straightedge> edges, String from) {
        return edges.stream()
                .map(edge -> "%s %s, %s"
                        .formatted(edge.distance().value().in(book.plan().style()), from, edge.where()))
                .collect(Collectors.joining("; "));
    }
}
