package org.kerfleaf.export.spreadsheet;

import java.util.List;
import org.kerfleaf.finish.FinishLine;
import org.kerfleaf.joint.HardwareLine;
import org.kerfleaf.joint.SettingWords;
import org.kerfleaf.plan.DoorWords;
import org.kerfleaf.plan.FastenedAlike;
import org.kerfleaf.site.SitePlan;

/** Fasteners and fittings, then glue, caulk and paint: need, pack, and the packs that follow. */
final class HardwareSheet {
    private final Book book;
    private final BuySheet buy;
    private final Printed printed;

    private HardwareSheet(Book book, BuySheet buy) {
        this.book = book;
        this.buy = buy;
        this.printed = book.printed();
    }

    static void write(Book book, BuySheet buy) {
        if (!book.plan().hardware().isEmpty() || !book.plan().finish().isEmpty()) {
            new HardwareSheet(book, buy).write();
        }
    }

    private void write() {
        Table table = book.sheet(
                "Hardware",
                2,
                List.of(
                        Column.box(),
                        Column.text("what", "What", 40),
                        Column.number("need", "Needed", 14),
                        Column.number("pack", "In a pack", 14),
                        Column.number("packs", "Packs", 8),
                        Column.number("left", "Left over", 14),
                        Column.text("uses", "Where they go", 48)));
        List<HardwareLine> lines = book.plan().hardware();
        lines.forEach(line -> fastener(table.row(), line));
        if (!lines.isEmpty()) {
            table.filtered();
        }
        for (HardwareLine line : lines) {
            follow(table, line.what(), line.packs().value());
        }
        finish(table.leaf());
        fastening(table.leaf());
    }

    /** How each joint is fastened; sizes in words, since a bit is chosen by its name. */
    private void fastening(Leaf leaf) {
        List<FastenedAlike> alike = book.plan().fastening().alike();
        if (alike.isEmpty() && book.plan().fastening().glued().isEmpty()) {
            return;
        }
        SettingWords words = new SettingWords(book.plan().style());
        Table table = leaf.nextTable(
                "Fastening joint by joint, doors and panes",
                List.of(
                        Column.box(),
                        Column.text("joint", "Joint and fastener", 0),
                        Column.number("count", "How many", 0),
                        Column.text("reach", "Reach", 0),
                        Column.skip(),
                        Column.text("holds", "One holds", 0),
                        Column.text("drill", "Drill, and how near it stands", 0)));
        table.row().text("joint", "What one holds").text("drill", SettingWords.LOADS + " " + SitePlan.DEFERS);
        for (FastenedAlike one : alike) {
            table.row()
                    .text("joint", one.contact() + ": " + one.fastener())
                    .choice("count", one.count())
                    .text("reach", words.reach(one.setting()))
                    .text("holds", words.bothWays(one.setting()))
                    .text("drill", words.holes(one.setting()) + "; nearest " + words.stands(one.clearances()));
        }
        book.plan()
                .fastening()
                .glued()
                .forEach(glued ->
                        table.row().text("joint", glued.joint() + ": glued").text("drill", words.glued(glued)));
        DoorWords doors = new DoorWords(book.plan().style());
        book.plan()
                .doors()
                .hung()
                .forEach(door -> table.row()
                        .text("joint", door.door() + ", measured from " + door.from())
                        .text("drill", lines(doors.of(door))));
        book.plan()
                .doors()
                .panes()
                .forEach(pane -> table.row().text("joint", pane.pane()).text("drill", lines(doors.of(pane))));
        book.plan().fastening().choices().forEach(choice -> table.row().text("joint", words.chosen(choice)));
    }

    private void fastener(Line line, HardwareLine hardware) {
        line.text("what", hardware.what())
                .choice("need", hardware.need().value())
                .choice("pack", hardware.packOf())
                .formula("left", "{packs}*{pack}-{need}", "0")
                .text("uses", String.join("; ", hardware.uses()));
        packs(line, hardware.need().value(), hardware.packOf(), hardware.packs().value());
    }

    private void finish(Leaf leaf) {
        List<FinishLine> lines = book.plan().finish();
        if (lines.isEmpty()) {
            return;
        }
        Table table = leaf.nextTable(
                "Glue, caulk and paint",
                List.of(
                        Column.box(),
                        Column.text("what", "What", 0),
                        Column.number("need", printed.volumeHead("Needed"), 0),
                        Column.number("pack", printed.volumeHead("In a pack"), 0),
                        Column.number("packs", "Packs", 0),
                        Column.number("left", printed.volumeHead("Left over"), 0),
                        Column.text("uses", "For", 0)));
        for (FinishLine line : lines) {
            double need = printed.number(line.need().value());
            double pack = printed.number(line.pack());
            Line row = table.row()
                    .text("what", line.what())
                    .number("need", need, "0.0")
                    .number("pack", pack, "0.0")
                    .formula("left", "{packs}*{pack}-{need}", "0.0")
                    .text("uses", inWords(line));
            packs(row, need, pack, line.packs().value());
        }
        for (FinishLine line : lines) {
            follow(table, line.what(), line.packs().value());
        }
    }

    private static String lines(List<DoorWords.Line> lines) {
        return String.join(
                "; ",
                lines.stream().map(line -> line.what() + " " + line.words()).toList());
    }

    /** Packs follow from the need where the plan has no other ground for its number, spares for one. */
    private static void packs(Line line, double need, double pack, int planned) {
        if (pack > 0 && Math.ceil(need / pack) == planned) {
            line.formula("packs", "ROUNDUP({need}/{pack},0)", "0");
        } else {
            line.choice("packs", planned);
        }
    }

    private void follow(Table table, String what, int packs) {
        buy.follow(what, packs, table.rangeFromElsewhere("what"), table.rangeFromElsewhere("packs"));
    }

    private String inWords(FinishLine line) {
        String extent = line.extent().value().in(book.plan().style());
        String coats = line.coats() == 1 ? "" : ", %d coats".formatted(line.coats());
        return switch (line.task()) {
            case PAINT -> "paint, %s%s".formatted(extent, coats);
            case CAULK -> "caulk, %s".formatted(extent);
            case GLUE -> "glue, %s".formatted(extent);
        };
    }
}
