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
                        Column.text("straightedge", "Straightedge", 32),
                        Column.text("notes", "What to watch", 32)));
        for (SawSetting setting : settings) {
            line(book, table.row(), setting);
        }
        table.filtered();
        table.leaf()
                .remark("All angles are from square, as saws read. Make a test cut in scrap before every new setting.");
    }

    private static void line(Book book, Line line, SawSetting setting) {
        line.text("saw", setting.saw())
                .text("parts", String.join(" ", setting.parts()))
                .text("cut", setting.cut())
                .number("tilt", hundredths(setting.tilt().value().inDegrees()), DEGREES)
                .text("straightedge", straightedge(book, setting))
                .text("notes", setting.notes());
        setting.scale()
                .ifPresent(
                        scale -> line.number("scale", hundredths(scale.value().inDegrees()), DEGREES));
        setting.bladeDepth().ifPresent(depth -> line.length("depth", depth.value()));
    }

    private static double hundredths(double degrees) {
        return Math.round(degrees * 100) / 100.0;
    }

    private static String straightedge(Book book, SawSetting setting) {
        return setting.straightedge().stream()
                .map(edge -> "%s from the line, %s"
                        .formatted(edge.distance().value().in(book.plan().style()), edge.where()))
                .collect(Collectors.joining("; "));
    }
}
