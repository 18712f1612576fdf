package org.kerfleaf.export.spreadsheet;

import java.util.List;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.rules.SagChecks;
import org.kerfleaf.site.SitePlan;

/** What goes in and whether it has room, what parts carry and how far they sag, also under snow. */
final class LoadsSheet {
    private final Book book;
    private final Printed printed;

    private LoadsSheet(Book book) {
        this.book = book;
        this.printed = book.printed();
    }

    static void write(Book book) {
        Loads loads = book.plan().loads();
        boolean snow = loads.snow().map(s -> !s.carried().isEmpty()).orElse(false);
        if (!loads.contents().isEmpty() || !loads.carried().isEmpty() || snow) {
            new LoadsSheet(book).write(loads);
        }
    }

    private void write(Loads loads) {
        Table carried = book.sheet(
                "Loads",
                2,
                List.of(
                        Column.box(),
                        Column.text("part", "Part", 30),
                        Column.text("what", "Carries", 30),
                        Column.text("load", "Load", 14),
                        Column.number("span", printed.lengthHead("Spans"), 14),
                        Column.text("sag", "Sags", 14),
                        Column.text("later", "In time", 14)));
        loads.carried().forEach(one -> carried(carried, one, "what was said"));
        loads.snow().ifPresent(snow -> snow.carried().forEach(one -> carried(carried, one, "snow")));
        if (!loads.contents().isEmpty()) {
            contents(carried, loads);
        }
        carried.leaf().nextRemark(SitePlan.DEFERS);
    }

    private void carried(Table table, Loads.Carried carried, String what) {
        Line line = table.row()
                .text("part", carried.part())
                .text("what", what)
                .text("load", carried.load().value().in(book.plan().style()));
        carried.bending()
                .ifPresentOrElse(
                        bending -> line.length("span", bending.span().value())
                                .text(
                                        "sag",
                                        SagChecks.thousandths(
                                                bending.sag().value(),
                                                book.plan().style()))
                                .text(
                                        "later",
                                        SagChecks.thousandths(
                                                bending.sagInTime().value(),
                                                book.plan().style())),
                        () -> line.notKnown("span").text("sag", Line.NOT_KNOWN).text("later", Line.NOT_KNOWN));
    }

    private void contents(Table carried, Loads loads) {
        Table table = carried.leaf()
                .nextTable(
                        "What goes in",
                        List.of(
                                Column.box(),
                                Column.text("on", "On", 0),
                                Column.text("things", "What goes in", 0),
                                Column.text("way", "Way", 0),
                                Column.number("need", printed.lengthHead("Needs"), 0),
                                Column.number("there", printed.lengthHead("There"), 0),
                                Column.number("spare", printed.lengthHead("To spare"), 0)));
        for (Loads.Contained things : loads.contents()) {
            for (Loads.Room room : things.rooms()) {
                Line line = table.row()
                        .text("on", things.on())
                        .text("things", things.name())
                        .text("way", room.way())
                        .length("need", room.need().value());
                room.there()
                        .ifPresentOrElse(
                                there -> line.length("there", there.value())
                                        .formula("spare", "{there}-{need}", printed.lengthFormat()),
                                () -> line.text("there", "open").text("spare", "open"));
            }
        }
    }
}
