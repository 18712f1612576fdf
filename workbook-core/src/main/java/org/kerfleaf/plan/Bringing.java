package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.kerfleaf.cutting.BoardLayout;
import org.kerfleaf.cutting.SheetCut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.ShopCutting;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.plan.Buying.Carried;
import org.kerfleaf.plan.Buying.Home;
import org.kerfleaf.plan.Buying.Load;
import org.kerfleaf.plan.Buying.ShopCut;
import org.kerfleaf.plan.Buying.Way;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Vehicle;
import org.kerfleaf.stock.Density;

/** Gets sheets and boards home in the vehicle that was said. */
final class Bringing {
    /** As many cuts as one asks a shop for. */
    private static final int MOST_CUTS = 2;

    /** Where two would not do, this many are tried, to say what would. */
    private static final int TRIED = 5;

    private static final String REST = " What is left over does not fit either: have that cut as you like.";

    private static final String MISSING_LENGTH =
            "How long it is inside was not said: vehicle(...).longInside(\"70 in\").";

    private final Vehicle vehicle;
    private final List<PlannedPart> parts;
    private final MeasureStyle style;

    private Bringing(Vehicle vehicle, List<PlannedPart> parts, MeasureStyle style) {
        this.vehicle = vehicle;
        this.parts = parts;
        this.style = style;
    }

    static Optional<Home> home(Sketch sketch, Stocking stocking, List<PlannedPart> parts, MeasureStyle style) {
        return sketch.all(Vehicle.class).stream()
                .findFirst()
                .map(vehicle -> new Bringing(vehicle, parts, style).home(stocking));
    }

    private Home home(Stocking stocking) {
        List<Load> loads = new ArrayList<>();
        for (int at = 0; at < stocking.sheets().size(); at++) {
            add(loads, sheet(stocking.sheets().get(at), at + 1));
        }
        for (int at = 0; at < stocking.boards().size(); at++) {
            add(loads, board(stocking.boards().get(at), at + 1));
        }
        return new Home(vehicle.name(), vehicle.wideInside(), vehicle.longInside(), vehicle.onTheRoof(), loads);
    }

    /** Loads alike are told once, with their numbers. */
    private static void add(List<Load> loads, Load load) {
        for (int at = 0; at < loads.size(); at++) {
            Load old = loads.get(at);
            if (old.stock().equals(load.stock())
                    && old.isSheet() == load.isSheet()
                    && old.length().equals(load.length())
                    && old.words().equals(load.words())) {
                List<Integer> which = new ArrayList<>(old.which());
                which.addAll(load.which());
                loads.set(
                        at,
                        new Load(
                                old.stock(),
                                which.size(),
                                which,
                                old.length(),
                                old.width(),
                                old.way(),
                                old.cuts(),
                                old.pieces(),
                                old.weight(),
                                old.onTheRoof(),
                                old.words()));
                return;
            }
        }
        loads.add(load);
    }

    // ---- sheets ----------------------------------------------------------------------------------------------------

    private Load sheet(SheetLayout layout, int number) {
        Length length = layout.sheet().length();
        Length width = layout.sheet().width();
        Optional<Figure<Mass>> weight = weight(layout);
        Optional<Boolean> roof = onTheRoof(weight);
        Predicate<ShopCutting.Piece> fits = piece -> fits(piece.length(), piece.width());
        Optional<ShopCutting.Result> found = ShopCutting.of(layout, MOST_CUTS, fits);
        Way way = way(found.map(result -> result.cuts().isEmpty()));
        List<SheetCut> cuts = found.map(ShopCutting.Result::cuts).orElse(List.of());
        String words = switch (way) {
            case WHOLE -> "It lies flat inside as it is.";
            case CUT ->
                "Ask for %s; no part is harmed.%s%s"
                        .formatted(
                                cuts.stream().map(this::shopWords).collect(Collectors.joining(", then ")),
                                found.orElseThrow().leavesTooLarge() ? REST : "",
                                vehicle.longInside().isPresent() ? "" : " " + missing());
            case NOT_KNOWN -> missing();
            case NOT -> sheetWouldDo(layout, fits);
        };
        return new Load(
                layout.sheet().stock(),
                1,
                List.of(number),
                length,
                Optional.of(width),
                way,
                cuts.stream().map(Bringing::shopCut).toList(),
                found.map(result -> result.pieces().stream()
                                .map(piece -> new Carried(piece.length(), Optional.of(piece.width())))
                                .toList())
                        .orElse(List.of()),
                weight,
                roof,
                words + roofWords(way, roof));
    }

    /** A piece lies flat: its shorter side across the vehicle, its longer one along. What is not known of the vehicle does not count. */
    private boolean fits(Length one, Length other) {
        boolean wideEnough = vehicle.wideInside()
                .map(wide -> !one.min(other).isLongerThan(wide))
                .orElse(true);
        boolean longEnough = vehicle.longInside()
                .map(most -> !one.max(other).isLongerThan(most))
                .orElse(true);
        return wideEnough && longEnough;
    }

    /** @param whole whether no cut is needed; empty where two do not do */
    private Way way(Optional<Boolean> whole) {
        boolean allKnown =
                vehicle.wideInside().isPresent() && vehicle.longInside().isPresent();
        if (whole.isEmpty()) {
            return Way.NOT;
        }
        if (!allKnown && (whole.get() || vehicle.wideInside().isEmpty())) {
            return Way.NOT_KNOWN;
        }
        return whole.get() ? Way.WHOLE : Way.CUT;
    }

    private String missing() {
        return vehicle.wideInside().isEmpty()
                ? "How wide it is inside was not said: vehicle(...).wideInside(\"41 in\")."
                : MISSING_LENGTH;
    }

    private String shopWords(SheetCut cut) {
        return "cut %d, %s the sheet, %s from its %s edge"
                .formatted(
                        cut.number(),
                        cut.across() ? "across" : "along",
                        cut.at().in(style),
                        cut.across() ? "left" : "lower");
    }

    private static ShopCut shopCut(SheetCut cut) {
        return new ShopCut(
                cut.across(),
                Figure.of(
                        cut.at(),
                        "where the layout's cut lies, from the factory edge; the saw's kerf lies beyond",
                        Reason.GEOMETRY,
                        given("cut", cut.number())),
                Optional.of(cut.number()),
                "frees " + cut.frees());
    }

    private String sheetWouldDo(SheetLayout layout, Predicate<ShopCutting.Piece> fits) {
        Optional<ShopCutting.Result> more = ShopCutting.of(layout, TRIED, fits);
        if (more.isPresent()) {
            return "No two cuts of the layout are enough; %d are: %s. Or have it delivered."
                    .formatted(
                            more.get().cuts().size(),
                            more.get().cuts().stream()
                                    .map(cut -> String.valueOf(cut.number()))
                                    .collect(Collectors.joining(", ")));
        }
        Optional<String> tooLarge = layout.placements().stream()
                .filter(placed -> !fits(placed.length(), placed.width()))
                .map(placed -> "“%s” alone, %s × %s, does not fit"
                        .formatted(
                                placed.part(),
                                placed.length().in(style),
                                placed.width().in(style)))
                .findFirst();
        return "%s. Have it delivered, or borrow a larger vehicle."
                .formatted(tooLarge.orElse("No %d cuts of the layout are enough".formatted(TRIED)));
    }

    private Optional<Figure<Mass>> weight(SheetLayout layout) {
        String stock = layout.sheet().stock();
        Volume volume = parts.stream()
                .filter(part -> part.stock().equals(stock))
                .findFirst()
                .map(part -> layout.sheet()
                        .length()
                        .by(layout.sheet().width())
                        .by(part.thickness().value()))
                .orElse(Volume.ZERO);
        return Density.named(stock)
                .map(density -> Figure.of(
                        density.value().of(volume),
                        "length · width · thickness · density",
                        density.reason().source(),
                        given("volume", volume),
                        given("density", density.value())));
    }

    private Optional<Boolean> onTheRoof(Optional<Figure<Mass>> weight) {
        return vehicle.onTheRoof()
                .flatMap(most -> weight.map(sheet -> sheet.value().compareTo(most) <= 0));
    }

    private static String roofWords(Way way, Optional<Boolean> roof) {
        if (way == Way.WHOLE || roof.isEmpty()) {
            return "";
        }
        return roof.get()
                ? " The roof carries one as it is, tied at both ends, and not in wind."
                : " For the roof it is too heavy.";
    }

    // ---- boards ----------------------------------------------------------------------------------------------------

    private Load board(BoardLayout layout, int number) {
        if (vehicle.longInside().isEmpty()) {
            return board(layout, number, Way.NOT_KNOWN, Optional.empty(), MISSING_LENGTH);
        }
        Length longest = vehicle.longInside().get();
        Optional<ShopCutting.BoardResult> found = ShopCutting.of(layout, MOST_CUTS, longest);
        if (found.isEmpty()) {
            return board(layout, number, Way.NOT, found, boardWouldDo(layout, longest));
        }
        if (found.get().cuts().isEmpty()) {
            return board(layout, number, Way.WHOLE, found, "It lies inside as it is.");
        }
        String cuts = found.get().cuts().stream()
                .map(cut -> "a cut %s from one end, %s".formatted(cut.at().in(style), between(cut)))
                .collect(Collectors.joining(", then "));
        return board(
                layout,
                number,
                Way.CUT,
                found,
                "Ask for %s; no part is harmed.%s".formatted(cuts, found.get().leavesTooLong() ? REST : ""));
    }

    private static String between(ShopCutting.BoardCut cut) {
        return cut.before()
                .map(next -> "between “%s” and “%s”".formatted(cut.after(), next))
                .orElse("after “%s”".formatted(cut.after()));
    }

    private String boardWouldDo(BoardLayout layout, Length longest) {
        Map<String, Length> tooLong = new LinkedHashMap<>();
        layout.placements().stream()
                .filter(placed -> placed.length().isLongerThan(longest))
                .forEach(placed -> tooLong.put(placed.part(), placed.length()));
        if (!tooLong.isEmpty()) {
            Map.Entry<String, Length> one = tooLong.entrySet().iterator().next();
            return "“%s” alone is %s long. Have it delivered, or carry it on the roof."
                    .formatted(one.getKey(), one.getValue().in(style));
        }
        return ShopCutting.of(layout, TRIED, longest)
                .map(more -> "No two cuts between parts are enough; %d are. Or have it delivered."
                        .formatted(more.cuts().size()))
                .orElse(
                        "No cut between two parts leaves pieces short enough. Have it delivered, or carry it on the roof.");
    }

    private static Load board(
            BoardLayout layout, int number, Way way, Optional<ShopCutting.BoardResult> found, String words) {
        return new Load(
                layout.board().stock(),
                1,
                List.of(number),
                layout.board().length(),
                Optional.empty(),
                way,
                found.map(ShopCutting.BoardResult::cuts).orElse(List.of()).stream()
                        .map(cut -> new ShopCut(
                                true,
                                Figure.of(
                                        cut.at(),
                                        "the end of the part, from the board's end; the saw's kerf lies beyond",
                                        Reason.GEOMETRY,
                                        given("part", cut.after())),
                                Optional.empty(),
                                between(cut)))
                        .toList(),
                found.map(ShopCutting.BoardResult::pieces).orElse(List.of()).stream()
                        .map(piece -> new Carried(piece, Optional.empty()))
                        .toList(),
                Optional.empty(),
                Optional.empty(),
                words);
    }
}
