package org.kerfleaf.export.planform;

import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.GlazedPane;
import org.kerfleaf.plan.HungDoor;
import org.kerfleaf.reason.Figure;

/** The members about doors and panes. */
final class DoorSection {
    private DoorSection() {}

    static void hung(Member form, HungDoor door) {
        form.number("step", door.step())
                .words("door", door.door())
                .words("from", door.from())
                .list("hinges", door.hinges(), DoorSection::at)
                .words("carcass", door.carcass())
                .list("onCarcass", door.onCarcass(), DoorSection::at)
                .list("catches", door.catches(), DoorSection::at)
                .list(
                        "edges",
                        door.edges(),
                        (edge, of) -> edge.words("side", of.side())
                                .isTrue("inset", of.inset())
                                .figure("size", of.size(), Member::millimetres))
                .optional(
                        "room",
                        door.room(),
                        (room, of) -> room.figure("gap", of.gap(), Member::millimetres)
                                .figure("film", of.film(), Member::millimetres)
                                .figure("swelling", of.swelling(), Member::millimetres)
                                .figure("left", of.left(), Member::millimetres))
                .optional(
                        "under",
                        door.under(),
                        (under, of) -> under.words("part", of.part()).figure("clear", of.clear(), Member::millimetres))
                .figure("standOff", door.standOff(), Member::millimetres)
                .figure("knobHole", door.knobHole(), Member::millimetres)
                .figure("backset", door.backset(), Member::millimetres);
    }

    private static void at(Member form, Figure<Length> place) {
        form.figure("at", place, Member::millimetres);
    }

    static void pane(Member form, GlazedPane pane) {
        form.number("step", pane.step())
                .words("pane", pane.pane())
                .figure("pocketWide", pane.pocketWide(), Member::millimetres)
                .figure("pocketHigh", pane.pocketHigh(), Member::millimetres)
                .figure("cutWide", pane.cutWide(), Member::millimetres)
                .figure("cutHigh", pane.cutHigh(), Member::millimetres)
                .figure("biteWide", pane.biteWide(), Member::millimetres)
                .figure("biteHigh", pane.biteHigh(), Member::millimetres)
                .figure("fills", pane.fills(), Member::millimetres)
                .figure("deep", pane.deep(), Member::millimetres)
                .figure("lip", pane.lip(), Member::millimetres)
                .figure("beadWide", pane.beadWide(), Member::millimetres)
                .figure("beadHigh", pane.beadHigh(), Member::millimetres)
                .figure("beadOver", pane.beadOver(), Member::millimetres)
                .figure("pinDeep", pane.pinDeep(), Member::millimetres);
    }
}
