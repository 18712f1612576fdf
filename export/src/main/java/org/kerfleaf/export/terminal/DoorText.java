package org.kerfleaf.export.terminal;

import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.DoorWords;
import org.kerfleaf.plan.GlazedPane;
import org.kerfleaf.plan.HungDoor;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.reason.Figure;

/** Where hinges, catches and knob go, and each pane with its pocket. */
final class DoorText {
    private final Page page;
    private final DoorWords words;

    private DoorText(Page page, MeasureStyle style) {
        this.page = page;
        this.words = new DoorWords(style);
    }

    static void write(Plan plan, Page page) {
        DoorText text = new DoorText(page, plan.style());
        plan.doors().hung().forEach(text::door);
        plan.doors().panes().forEach(text::pane);
        page.beforeReasons();
        plan.doors().hung().forEach(text::reasons);
        plan.doors().panes().forEach(text::reasons);
    }

    private void door(HungDoor door) {
        page.hanging("", door.door() + ", measured from " + door.from());
        words.of(door).forEach(this::line);
    }

    private void pane(GlazedPane pane) {
        page.hanging("", pane.pane());
        words.of(pane).forEach(this::line);
    }

    private void line(DoorWords.Line line) {
        page.hanging("    %-9s ".formatted(line.what()), line.words());
    }

    private void reasons(HungDoor door) {
        door.hinges().forEach(at -> page.why(door.door() + ", hinge", at));
        door.onCarcass().forEach(at -> page.why(door.door() + ", hinge on the carcass", at));
        door.catches().forEach(at -> page.why(door.door() + ", catch", at));
        door.edges().forEach(edge -> page.why(door.door() + ", " + edge.side() + " edge", edge.size()));
        door.room().ifPresent(room -> {
            page.why(door.door() + ", paint in the gap", room.film());
            why(door.door() + ", swelling", room.swelling());
            why(door.door() + ", left of the gap", room.left());
        });
        door.under().ifPresent(under -> page.why(door.door() + ", over " + under.part(), under.clear()));
        why(door.door() + ", stand-off", door.standOff());
        why(door.door() + ", knob hole", door.knobHole());
        why(door.door() + ", backset", door.backset());
    }

    private void reasons(GlazedPane pane) {
        page.why(pane.pane() + ", pocket wide", pane.pocketWide());
        page.why(pane.pane() + ", pocket high", pane.pocketHigh());
        page.why(pane.pane() + ", cut wide", pane.cutWide());
        page.why(pane.pane() + ", cut high", pane.cutHigh());
        why(pane.pane() + ", held wide", pane.biteWide());
        why(pane.pane() + ", held high", pane.biteHigh());
        why(pane.pane() + ", fills", pane.fills());
        why(pane.pane() + ", lip", pane.lip());
        why(pane.pane() + ", bead wide", pane.beadWide());
        why(pane.pane() + ", bead high", pane.beadHigh());
        why(pane.pane() + ", bead over wood", pane.beadOver());
        why(pane.pane() + ", pin in wood", pane.pinDeep());
    }

    private void why(String what, Optional<Figure<Length>> figure) {
        page.why(what, figure);
    }
}
