package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.rules.MovementChecks;

/** What is told of a door and of a pane, line by line: on the screen, on paper, on the list. */
public final class DoorWords {
    private final MeasureStyle style;

    public DoorWords(MeasureStyle style) {
        this.style = style;
    }

    /** One thing told. */
    public record Line(String what, String words) {}

    /** Hinges, catches, knob and stand-off of a door; what it has none of is left out. */
    public List<Line> of(HungDoor door) {
        List<Line> lines = new ArrayList<>();
        add(lines, "hinges", places(door.hinges()));
        door.carcass().ifPresent(part -> add(lines, "on " + part, places(door.onCarcass())));
        add(lines, "catches", places(door.catches()));
        add(lines, "gaps", edges(door, true));
        add(lines, "laps", edges(door, false));
        door.room().ifPresent(room -> add(lines, "room", room(room)));
        door.under().ifPresent(under -> add(lines, "swings", fine(under.clear()) + " over " + under.part()));
        add(lines, "knob", knob(door));
        add(
                lines,
                "stand-off",
                door.standOff()
                        .map(
                                off -> off.value().in(style)
                                        + ", so hinges and catches are packed out by it and all that hangs is as much further out")
                        .orElse(""));
        return lines;
    }

    private String edges(HungDoor door, boolean inset) {
        return door.edges().stream()
                .filter(edge -> edge.inset() == inset)
                .map(edge -> edge.side() + " " + fine(edge.size()))
                .collect(Collectors.joining(", "));
    }

    private String room(HungDoor.Room room) {
        String film = "gap of %s, less %s of paint".formatted(fine(room.gap()), fine(room.film()));
        return room.left()
                .flatMap(left -> room.swelling()
                        .map(swells -> "%s and %s of swelling, leaves %s"
                                .formatted(film, MovementChecks.fine(swells.value(), style), fine(left))))
                .orElse(film + "; how much its boards swell is not known");
    }

    private String fine(Figure<Length> length) {
        return length.value().in(style.toTheFinest());
    }

    private String knob(HungDoor door) {
        return door.knobHole()
                .map(hole -> "hole " + hole.value().in(style)
                        + door.backset()
                                .map(in -> ", " + in.value().in(style) + " in from the edge")
                                .orElse(", how far in from the edge is not known"))
                .orElse("");
    }

    /** Pocket, cut size, bite, rabbet and beads of a pane. */
    public List<Line> of(GlazedPane pane) {
        List<Line> lines = new ArrayList<>();
        add(lines, "pocket", both(pane.pocketWide(), pane.pocketHigh()) + "; measure it on the work first");
        add(lines, "cut", both(pane.cutWide(), pane.cutHigh()));
        add(
                lines,
                "held",
                pane.biteWide()
                        .flatMap(wide -> pane.biteHigh().map(high -> both(wide, high) + " on each side when coldest"))
                        .orElse("not known: say .colder(\"60 F\")"));
        add(lines, "rabbet", rabbet(pane));
        add(
                lines,
                "beads",
                pane.beadWide()
                        .flatMap(wide -> pane.beadHigh()
                                .map(high -> "2 of " + wide.value().in(style) + ", 2 of "
                                        + high.value().in(style) + " at the long point, scale 45 at both ends"
                                        + pins(pane)))
                        .orElse(""));
        return lines;
    }

    private String pins(GlazedPane pane) {
        return pane.beadOver()
                .filter(over -> over.value().isPositive())
                .flatMap(over -> pane.pinDeep()
                        .map(deep -> "; pins in their outer %s, at most %s into the wood"
                                .formatted(over.value().in(style), deep.value().in(style))))
                .orElse("");
    }

    private String rabbet(GlazedPane pane) {
        return pane.deep()
                .map(deep -> deep.value().in(style) + " deep"
                        + pane.fills()
                                .map(fills -> "; bedding and pane fill "
                                        + fills.value().in(style))
                                .orElse("; how thick the bedding is, is not known")
                        + pane.lip()
                                .map(lip -> "; it leaves " + lip.value().in(style))
                                .orElse(""))
                .orElse("");
    }

    private String both(Figure<Length> wide, Figure<Length> high) {
        return wide.value().in(style) + " x " + high.value().in(style);
    }

    private String places(List<Figure<Length>> places) {
        return places.stream().map(at -> at.value().in(style)).collect(Collectors.joining(", "));
    }

    private static void add(List<Line> lines, String what, String words) {
        if (!words.isEmpty()) {
            lines.add(new Line(what, words));
        }
    }
}
