package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Loads.Contained;
import org.kerfleaf.plan.Loads.Room;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.ContentsChecks;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.ClearSpace;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Carries;
import org.kerfleaf.sketch.Contents;
import org.kerfleaf.sketch.Sketch;

/** Whether what must go in finds room on what it was said to stand on. */
final class Storing {
    /** Just off a face, in millimetres, so that it is not met itself. */
    private static final double OFF = 0.01;

    private final Sketch sketch;
    private final Assembly assembly;
    private final MeasureStyle style;
    private final ClearSpace space;
    private final List<Contained> all = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();

    /** What one piece has to hold, each way: the room the things take without a hand's. */
    private record Block(Length wide, Length deep, Length high) {}

    Storing(Sketch sketch, Assembly assembly, Bodies bodies, MeasureStyle style) {
        this.sketch = sketch;
        this.assembly = assembly;
        this.style = style;
        List<Contents> things = sketch.all(Contents.class);
        this.space = things.isEmpty()
                ? null
                : new ClearSpace(Stream.concat(bodies.all().values().stream(), bodies.panes().values().stream())
                        .toList());
        things.forEach(this::put);
    }

    /** Every kind of thing, for each it stands on. */
    List<Contained> all() {
        return all;
    }

    List<Check> checks() {
        return checks;
    }

    private void put(Contents things) {
        List<Carries> on = sketch.all(Carries.class).stream()
                .filter(said -> said.things().contains(things.origin()))
                .filter(said -> !assembly.of(said.what()).isEmpty())
                .toList();
        if (on.isEmpty()) {
            checks.add(ContentsChecks.roomNotKnown(
                    things.name(),
                    "On what they stand is not known.",
                    "Say carries(shelfIn, ...) of what they stand on.",
                    style));
        }
        on.forEach(said -> put(things, said));
    }

    private void put(Contents things, Carries said) {
        List<Piece> pieces = assembly.of(said.what());
        String on = pieces.get(0).part();
        List<Contents> together = sketch.all(Contents.class).stream()
                .filter(one -> said.things().contains(one.origin()))
                .toList();
        List<Room> rooms = new ArrayList<>();
        Block block = block(together, pieces.size());
        Length hand = things.handRoom().orElseGet(() -> ContentsChecks.handRoom(style));
        int row = inRow(things, pieces.size());
        if (together.stream().allMatch(one -> one.wide().isPresent())) {
            int all =
                    together.stream().mapToInt(one -> inRow(one, pieces.size())).sum();
            rooms.add(room("wide", ContentsChecks.need(block.wide(), all, hand), pieces, block));
        }
        things.deep().ifPresent(deep -> {
            int behind = rows(things, pieces.size());
            rooms.add(room("deep", ContentsChecks.need(deep.times(behind), behind, hand), pieces, block));
        });
        things.high().ifPresent(high -> rooms.add(room("high", ContentsChecks.need(high, 1, hand), pieces, block)));
        all.add(new Contained(things.name(), on, onEach(things, pieces.size()), row, rooms));
        for (Room room : rooms) {
            checks.add(ContentsChecks.room(
                    things.name(),
                    on,
                    room.way(),
                    room.need().value(),
                    room.there().map(Figure::value),
                    style));
        }
        if (rooms.size() < 3) {
            checks.add(ContentsChecks.roomNotKnown(
                    things.name() + " on " + on,
                    "Not every size of them is known.",
                    "Say the largest one's sizes: wide(...), deep(...), high(...).",
                    style));
        }
    }

    private static int onEach(Contents things, int pieces) {
        return (things.count() + pieces - 1) / pieces;
    }

    private static int inRow(Contents things, int pieces) {
        int each = onEach(things, pieces);
        return Math.min(each, things.sideBySide().orElse(each));
    }

    private static int rows(Contents things, int pieces) {
        int row = inRow(things, pieces);
        return (onEach(things, pieces) + row - 1) / row;
    }

    private static Block block(List<Contents> together, int pieces) {
        Length wide = Length.ZERO;
        for (Contents one : together) {
            wide = wide.plus(one.wide().orElse(Length.ZERO).times(inRow(one, pieces)));
        }
        return new Block(
                wide,
                largest(together, one -> one.deep().map(deep -> deep.times(rows(one, pieces)))),
                largest(together, Contents::high));
    }

    private static Length largest(List<Contents> together, Function<Contents, Optional<Length>> size) {
        return together.stream().flatMap(one -> size.apply(one).stream()).reduce(Length.ZERO, Length::max);
    }

    // ---- the clear space there is ----------------------------------------------------------------------------------

    private Room room(String way, Figure<Length> need, List<Piece> pieces, Block block) {
        Optional<Figure<Length>> least = pieces.stream()
                .flatMap(piece -> there(way, piece.box(), block).stream()
                        .map(clear -> Figure.of(
                                clear,
                                way.equals("high")
                                        ? "from its upper face to the first piece over where they stand"
                                        : "between the nearest pieces on either side of where they stand, or to its own edge where"
                                                + " nothing stands; openings count as closed",
                                Reason.GEOMETRY,
                                given(
                                        "on",
                                        pieces.size() > 1 ? piece.part() + " " + (piece.index() + 1) : piece.part()))))
                .min((one, other) -> one.value().compareTo(other.value()));
        return new Room(way, need, least);
    }

    private Optional<Length> there(String way, Box on, Block block) {
        double x = on.middle(Axis.X).inMillimetres();
        double y = on.middle(Axis.Y).inMillimetres();
        double top = on.high(Axis.Z).inMillimetres() + OFF;
        double halfWide = half(block.wide(), on.extent(Axis.X));
        double halfDeep = half(block.deep(), on.extent(Axis.Y));
        OptionalDouble up = OptionalDouble.empty();
        for (double dx : new double[] {-halfWide, 0, halfWide}) {
            for (double dy : new double[] {-halfDeep, 0, halfDeep}) {
                double clear = space.from(new Vector(x + dx, y + dy, top), Vector.Z);
                if (Double.isFinite(clear) && (up.isEmpty() || clear < up.getAsDouble())) {
                    up = OptionalDouble.of(clear);
                }
            }
        }
        if (way.equals("high")) {
            return up.isEmpty() ? Optional.empty() : Optional.of(length(up.getAsDouble() + OFF));
        }
        double tall = Math.min(block.high().inMillimetres(), up.orElse(Double.POSITIVE_INFINITY)) - 2 * OFF;
        boolean wide = way.equals("wide");
        Vector go = wide ? Vector.X : Vector.Y;
        double edge = on.extent(wide ? Axis.X : Axis.Y).half().inMillimetres();
        double off = wide ? halfDeep : halfWide;
        double forth = edge;
        double back = edge;
        boolean metForth = false;
        boolean metBack = false;
        for (double dz : new double[] {0, Math.max(0, tall / 2), Math.max(0, tall)}) {
            for (double across : new double[] {-off, 0, off}) {
                Vector from = wide ? new Vector(x, y + across, top + dz) : new Vector(x + across, y, top + dz);
                double there = space.from(from, go);
                double behind = space.from(from, go.negated());
                if (Double.isFinite(there)) {
                    forth = metForth ? Math.min(forth, there) : there;
                    metForth = true;
                }
                if (Double.isFinite(behind)) {
                    back = metBack ? Math.min(back, behind) : behind;
                    metBack = true;
                }
            }
        }
        return Optional.of(length(forth + back));
    }

    /** Half of what the things take, but no more than there is to stand on. */
    private static double half(Length things, Length there) {
        return Math.max(0, things.min(there).half().inMillimetres() - OFF);
    }

    private static Length length(double millimetres) {
        return Length.ofMillimetres(Math.round(millimetres * 1e6) / 1e6);
    }
}
