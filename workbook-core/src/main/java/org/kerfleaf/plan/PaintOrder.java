package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Paintwork.Bare;
import org.kerfleaf.plan.Paintwork.CoatedFace;
import org.kerfleaf.plan.Paintwork.PaintBy;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.BrushReach;
import org.kerfleaf.shape.OpenFaces;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Sketch;

/**
 * Says face by face what is painted, and by which step.
 *
 * <p>A face that one piece after the other closes in is out of reach from the first of them on for good, so the step is found by
 * halving. Where the inside is painted at all, every face that the finished build closes in is to be painted before.
 */
final class PaintOrder {
    private final Sketch sketch;
    private final Painting painting;
    private final Map<Painting.Finished, Map<Origin, BrushReach>> reaches = new IdentityHashMap<>();

    PaintOrder(Sketch sketch, Painting painting) {
        this.sketch = sketch;
        this.painting = painting;
    }

    Paintwork paintwork(Problems problems) {
        List<Coated> coated = new ArrayList<>();
        for (Coat coat : sketch.all(Coat.class)) {
            problems.trying(coat.origin(), () -> painting.coated(coat)).ifPresent(coated::addAll);
        }
        return new Paintwork(faces(coated), order(coated), bare(coated));
    }

    // ---- face by face --------------------------------------------------------------------------------------------

    private String words(Coated coated) {
        return coated.side().map(side -> painting.words(coated.part(), side)).orElse(coated.narrow());
    }

    private List<CoatedFace> faces(List<Coated> coated) {
        record Key(Origin coat, String part, Optional<SheetSide> side, String narrow) {}
        Map<Key, List<Coated>> groups = new LinkedHashMap<>();
        coated.forEach(c -> groups.computeIfAbsent(
                        new Key(c.coat().origin(), c.part(), c.side(), c.narrow()), k -> new ArrayList<>())
                .add(c));
        return groups.values().stream().map(this::face).toList();
    }

    private CoatedFace face(List<Coated> all) {
        Coated first = all.get(0);
        int loose = all.stream()
                .filter(c -> c.piece().isEmpty())
                .mapToInt(Coated::pieces)
                .sum();
        long placed = all.stream().flatMap(c -> c.piece().stream()).distinct().count();
        return new CoatedFace(
                first.coat().origin().step(),
                first.part(),
                words(first),
                loose + (int) placed,
                Figure.of(
                        all.stream().map(Coated::area).reduce(Area.ZERO, Area::plus),
                        "what of it lies open when it is coated; openings and what is masked taken off",
                        Reason.GEOMETRY),
                first.coat().layers().stream().map(l -> l.paint().name()).toList(),
                first.coat().layers().stream().mapToInt(Coat.Layer::coats).sum());
    }

    // ---- by when -------------------------------------------------------------------------------------------------

    private record Face(String part, String words) {}

    private List<PaintBy> order(List<Coated> coated) {
        Map<Face, List<PaintBy>> found = new LinkedHashMap<>();
        for (Painting.Finished build : painting.finished()) {
            for (Coated one : coated) {
                if (one.piece().isPresent()
                        && build.fixed().contains(one.piece().get())) {
                    closed(build, one.piece().get(), one.place().orElseThrow())
                            .ifPresent(by -> put(found, painted(one, by)));
                }
            }
            if (insideIsPainted()) {
                painting.open(build)
                        .forEach((piece, places) -> places.stream()
                                .filter(place -> place.inside() && !isCoated(coated, piece, place))
                                .forEach(place -> closed(build, piece, place)
                                        .ifPresent(by -> put(found, loose(coated, piece, place, by)))));
            }
        }
        return found.values().stream().map(PaintOrder::worst).toList();
    }

    private static void put(Map<Face, List<PaintBy>> found, PaintBy by) {
        found.computeIfAbsent(new Face(by.part(), by.face()), f -> new ArrayList<>())
                .add(by);
    }

    /** Of the pieces of one part, the one that is closed in first, or comes too late. */
    private static PaintBy worst(List<PaintBy> all) {
        return all.stream()
                .min((a, b) -> a.inTime() != b.inTime()
                        ? Boolean.compare(a.inTime(), b.inTime())
                        : Integer.compare(a.closedIn(), b.closedIn()))
                .orElseThrow();
    }

    private boolean insideIsPainted() {
        return sketch.all(Coat.class).stream()
                .flatMap(c -> c.faces().stream())
                .anyMatch(f -> f.which() == Coat.Which.INSIDE);
    }

    /** Whether a coat finds it in its place. */
    private static boolean isCoated(List<Coated> coated, Piece piece, OpenFaces.Place place) {
        return coated.stream()
                .anyMatch(c -> c.piece().filter(piece::equals).isPresent()
                        && c.place()
                                .filter(p -> p.side() == place.side() && p.inside() == place.inside())
                                .isPresent());
    }

    private PaintBy painted(Coated one, Origin by) {
        Origin coat = one.coat().origin();
        return by(one.part(), words(one), by, OptionalInt.of(coat.step()), coat.compareTo(by) < 0);
    }

    /** A piece that no coat finds in its place may have been painted before. */
    private PaintBy loose(List<Coated> coated, Piece piece, OpenFaces.Place place, Origin by) {
        return coated.stream()
                .filter(c -> c.piece().isEmpty()
                        && c.part().equals(piece.part())
                        && c.side().filter(side -> side == place.side()).isPresent())
                .map(c -> painted(c, by))
                .findFirst()
                .orElseGet(() ->
                        by(piece.part(), painting.words(piece.part(), place.side()), by, OptionalInt.empty(), false));
    }

    private PaintBy by(String part, String face, Origin by, OptionalInt painted, boolean inTime) {
        String closes = sketch.placing(by).orElseThrow().part();
        return new PaintBy(part, face, by.step(), closes, painted, inTime);
    }

    /** The placing that takes a place out of reach; empty if a brush comes to it in the end. */
    private Optional<Origin> closed(Painting.Finished build, Piece piece, OpenFaces.Place place) {
        List<Origin> states = build.fixed().stream()
                .map(Piece::placing)
                .distinct()
                .sorted()
                .filter(p -> p.compareTo(piece.placing()) >= 0)
                .toList();
        if (isReached(build, states.get(states.size() - 1), place)) {
            return Optional.empty();
        }
        int low = 0;
        int high = states.size() - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (isReached(build, states.get(middle), place)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return Optional.of(states.get(low));
    }

    private boolean isReached(Painting.Finished build, Origin state, OpenFaces.Place place) {
        return reaches.computeIfAbsent(build, b -> new HashMap<>())
                .computeIfAbsent(
                        state,
                        last -> new BrushReach(painting.solids(build.fixed().stream()
                                .filter(p -> p.placing().compareTo(last) <= 0)
                                .toList())))
                .isReached(place);
    }

    // ---- kept bare -----------------------------------------------------------------------------------------------

    private List<Bare> bare(List<Coated> coated) {
        record Key(Coat coat, String part, String face, boolean wide) {}
        Map<Key, Set<GluedLater.Contact>> groups = new LinkedHashMap<>();
        for (Coated one : coated) {
            if (one.side().isPresent()) {
                List<GluedLater.Contact> contacts =
                        new ArrayList<>(painting.glued().on(one));
                contacts.addAll(painting.glued().besides(one));
                contacts.forEach(c -> groups.computeIfAbsent(
                                new Key(
                                        one.coat(),
                                        one.part(),
                                        c.side().isPresent() ? words(one) : c.edgeWords(),
                                        c.side().isPresent()),
                                k -> new LinkedHashSet<>())
                        .add(c));
            }
        }
        List<Bare> bare = new ArrayList<>();
        groups.forEach((key, contacts) -> bare.add(new Bare(
                key.part(),
                key.face(),
                key.coat().origin().step(),
                contacts.stream()
                        .mapToInt(c -> c.joint().said().origin().step())
                        .min()
                        .orElseThrow(),
                contacts.stream().map(c -> c.other().part()).distinct().toList(),
                contacts.stream().map(c -> c.place().area()).reduce(Area.ZERO, Area::plus),
                contacts.stream().map(c -> c.place().across()).reduce(Length.ZERO, Length::max),
                key.wide() ? Optional.of(key.coat().masked()) : Optional.empty())));
        return bare;
    }
}
