package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.sketch.EdgeOf;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Item;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Part;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;
import org.kerfleaf.sketch.Where;

/**
 * Puts every placed part where it was said to go, each build in a frame of its own.
 *
 * <p>Every word fixes one end, or the middle, on one axis. Two words that fix the same axis must agree. An axis that no
 * word fixes is centred on the first part named; a part that names none stands where the axes meet.
 */
final class Places {
    private final Sketch sketch;
    private final Sizing sizing;
    private final Problems problems;
    private final Map<Origin, Optional<List<Piece>>> placed = new HashMap<>();
    private final Set<Origin> open = new LinkedHashSet<>();

    Places(Sketch sketch, Sizing sizing, Problems problems) {
        this.sketch = sketch;
        this.sizing = sizing;
        this.problems = problems;
        sizing.using(this);
    }

    /** The pieces of one placing, if their place can be known. */
    Optional<List<Piece>> of(Origin key) {
        Optional<List<Piece>> known = placed.get(key);
        if (known != null) {
            return known;
        }
        Optional<Placing> placing = sketch.placing(key);
        Optional<List<Piece>> result = placing.flatMap(p -> problems.trying(p.origin(), () -> inOrderOfNeed(p)));
        placed.put(key, result);
        return result;
    }

    /** The placed pieces of a part, for one that takes its size from where they are. */
    List<Piece> of(Part asking, String name) {
        List<Piece> pieces = sketch.all(Placing.class).stream()
                .filter(p -> p.part().equals(name))
                .flatMap(p -> of(p.origin()).stream())
                .flatMap(List::stream)
                .toList();
        if (pieces.isEmpty()) {
            throw new Unplannable(
                    asking.origin(),
                    "“%s” waits for “%s” to be placed: its size follows from where that stands."
                            .formatted(asking.name(), name));
        }
        return pieces;
    }

    private List<Piece> inOrderOfNeed(Placing placing) {
        if (!open.add(placing.origin())) {
            throw new Unplannable(
                    placing.origin(),
                    "The place of “%s” is said by way of itself. One of the ring must stand on its own."
                            .formatted(placing.part()));
        }
        try {
            return place(placing);
        } finally {
            open.remove(placing.origin());
        }
    }

    private List<Piece> place(Placing placing) {
        SizedPart part = sizing.of(placing.part())
                .orElseThrow(() -> new Unplannable(
                        placing.origin(),
                        "“%s” cannot be placed before its sizes are known.".formatted(placing.part())));
        Optional<List<Piece>> sloping = sloping(placing, part);
        if (sloping.isPresent()) {
            return sloping.get();
        }
        Box one = loose(part, placing);
        Optional<Where.SideBySide> row = row(placing);
        Axis across = Turned.rowAxis(part, placing);
        Box loose = row.map(r -> Turned.row(one, across, r)).orElse(one);
        List<Spot> spots = new ArrayList<>(List.of(new Spot(placing, loose, sizing.style())));
        for (Where where : placing.where()) {
            List<Spot> next = new ArrayList<>();
            for (Spot spot : spots) {
                next.addAll(said(spot, where, part));
            }
            spots = next;
        }
        Optional<Box> first = firstNamed(placing);
        List<Piece> pieces = new ArrayList<>();
        for (Spot spot : spots) {
            Box settled = spot.settled(first);
            List<Box> boxes =
                    row.map(r -> Turned.apart(one, settled, across, r)).orElse(List.of(settled));
            for (Box box : boxes) {
                pieces.add(new Piece(placing.part(), placing.origin(), pieces.size(), box));
            }
        }
        return List.copyOf(pieces);
    }

    private static Optional<Where.SideBySide> row(Placing placing) {
        return placing.where().stream()
                .filter(Where.SideBySide.class::isInstance)
                .map(Where.SideBySide.class::cast)
                .findFirst();
    }

    /** The pieces of what lies on a slope or runs along one. */
    private Optional<List<Piece>> sloping(Placing placing, SizedPart part) {
        for (Where where : placing.where()) {
            if (where instanceof Where.RestsOn rests) {
                return Optional.of(
                        part.said().trait(Trait.OverSlope.class).isPresent()
                                ? onOneSlope(placing, part, rests)
                                : onGables(placing, part, rests));
            }
            if (where instanceof Where.Round) {
                return Optional.of(Rings.round(placing, part));
            }
            if (where instanceof Where.RestsIn in) {
                return Optional.of(Rings.floor(placing, part, sizedOf(placing, in.ring())));
            }
            if (where instanceof Where.AlongRoof along) {
                EdgeOf.Edge edge = Slopes.edge(part)
                        .orElseThrow(() -> new Unplannable(
                                placing.origin(),
                                "Along which edge does “%s” run? Say .along(roof.rake()) or .along(roof.eave()) where it is made."
                                        .formatted(placing.part())));
                return Optional.of(Slopes.along(placing, part, roofs(placing, along.roofs()), edge));
            }
            if (where instanceof Where.OverRidge over) {
                return Optional.of(Slopes.cap(placing, part, roofs(placing, over.roofs())));
            }
        }
        return Optional.empty();
    }

    private SizedPart sizedOf(Placing asking, Origin key) {
        return sketch.placing(key)
                .flatMap(p -> sizing.of(p.part()))
                .orElseThrow(() -> new Unplannable(
                        asking.origin(), "“%s” waits for the sizes of what it rests on.".formatted(asking.part())));
    }

    private List<Piece> onOneSlope(Placing placing, SizedPart part, Where.RestsOn rests) {
        Support support = Support.of(rests.supports(), key -> sizedOf(placing, key), key -> hull(placing, key))
                .orElseThrow(() -> new Unplannable(
                        placing.origin(),
                        "“%s” rests on nothing with a sloping top. One part .highFrontToBack(...) would carry it."
                                .formatted(placing.part())));
        return Slopes.single(placing, part, support.slope(), support.sloped(), support.all());
    }

    private List<Piece> onGables(Placing placing, SizedPart roof, Where.RestsOn rests) {
        List<String> gables = roof.said()
                .trait(Trait.OverGables.class)
                .map(Trait.OverGables::gables)
                .orElseThrow(() -> new Unplannable(
                        placing.origin(),
                        "“%s” rests on slopes, but on which? Say .overGables(front, back) where it is made."
                                .formatted(placing.part())));
        List<Box> boxes = new ArrayList<>();
        for (Origin support : rests.supports()) {
            Box hull = hull(placing, support);
            boolean gable = sketch.placing(support)
                    .filter(p -> gables.contains(p.part()))
                    .isPresent();
            if (gable) {
                boxes.add(hull);
            }
        }
        if (boxes.isEmpty()) {
            throw new Unplannable(
                    placing.origin(),
                    "“%s” rests on none of its gables. One of %s would carry it."
                            .formatted(placing.part(), String.join(", ", gables)));
        }
        SizedPart gable = sizing.of(gables.get(0))
                .orElseThrow(() -> new Unplannable(
                        placing.origin(),
                        "“%s” waits for the sizes of “%s”.".formatted(placing.part(), gables.get(0))));
        return Slopes.roof(placing, roof, gable, Box.hull(boxes), rests.pieces());
    }

    private List<Piece> roofs(Placing asking, Origin key) {
        List<Piece> pieces = of(key).orElseThrow(() ->
                new Unplannable(asking.origin(), "“%s” waits for the roof to be placed.".formatted(asking.part())));
        if (pieces.stream().anyMatch(p -> p.sloping().isEmpty())) {
            throw new Unplannable(
                    asking.origin(),
                    "“%s” follows “%s”, which lies on no slope."
                            .formatted(asking.part(), pieces.get(0).part()));
        }
        return pieces;
    }

    private List<Spot> said(Spot spot, Where where, SizedPart part) {
        if (where instanceof Where.Beside beside) {
            return List.of(spot.beside(beside.side(), hull(spot.placing(), beside.other()), standOff(spot.placing())));
        }
        if (where instanceof Where.BothSides both) {
            Box other = hull(spot.placing(), both.other());
            return List.of(spot.beside(both.one(), other, Length.ZERO), spot.beside(both.two(), other, Length.ZERO));
        }
        if (where instanceof Where.Above above) {
            Box other = hull(spot.placing(), above.other());
            return above.gaps().stream()
                    .map(gap -> spot.beside(Side.TOP, other, gap))
                    .toList();
        }
        if (where instanceof Where.Against against) {
            return List.of(spot.against(hull(spot.placing(), against.other()), named(spot.placing())));
        }
        if (where instanceof Where.FlushAt flush) {
            return List.of(spot.flush(flush.side(), named(spot.placing())));
        }
        if (where instanceof Where.Over over) {
            return List.of(over(spot, over.opening()));
        }
        if (where instanceof Where.Between between) {
            return spot.between(
                    hull(spot.placing(), between.one()), hull(spot.placing(), between.other()), between.pieces());
        }
        return List.of(spot);
    }

    private Spot over(Spot spot, String name) {
        Placing under = firstKey(spot.placing())
                .flatMap(sketch::placing)
                .orElseThrow(() -> new Unplannable(
                        spot.placing().origin(),
                        "“%s” goes over “%s”, but of which part? Say .inFrontOf(frontIn) first."
                                .formatted(spot.placing().part(), name)));
        SizedPart part = sizing.of(under.part())
                .orElseThrow(() -> new Unplannable(
                        spot.placing().origin(),
                        "“%s” waits for the sizes of “%s”."
                                .formatted(spot.placing().part(), under.part())));
        Cutout opening = part.cutout(name)
                .orElseThrow(() -> new Unplannable(
                        spot.placing().origin(), "“%s” has no opening “%s”.".formatted(under.part(), name)));
        Box box = named(spot.placing());
        Axis across = part.standing().across();
        Axis up = part.standing().up();
        return spot.middle(across, box.low(across).plus(opening.middleAcross()), "over “" + name + "”")
                .middle(up, box.low(up).plus(opening.middleUp()), "over “" + name + "”");
    }

    /** What a weatherstrip under it keeps a door away from what it closes. */
    private Length standOff(Placing placing) {
        return sketch.all(Fitting.class).stream()
                .filter(f -> f.item().kind() == Item.Kind.WEATHERSTRIP)
                .filter(f -> f.on().equals(Optional.of(placing.origin())))
                .flatMap(f -> f.item().squeezedTo().stream())
                .findFirst()
                .orElse(Length.ZERO);
    }

    private static Optional<Origin> firstKey(Placing placing) {
        return placing.where().stream().flatMap(where -> others(where).stream()).findFirst();
    }

    /** The placings that a word names. */
    static List<Origin> others(Where where) {
        if (where instanceof Where.Beside beside) {
            return List.of(beside.other());
        }
        if (where instanceof Where.BothSides both) {
            return List.of(both.other());
        }
        if (where instanceof Where.Above above) {
            return List.of(above.other());
        }
        if (where instanceof Where.RestsOn rests) {
            return rests.supports();
        }
        if (where instanceof Where.AlongRoof along) {
            return List.of(along.roofs());
        }
        if (where instanceof Where.OverRidge over) {
            return List.of(over.roofs());
        }
        if (where instanceof Where.Between between) {
            return List.of(between.one(), between.other());
        }
        if (where instanceof Where.RestsIn in) {
            return List.of(in.ring());
        }
        return where instanceof Where.Against against ? List.of(against.other()) : List.of();
    }

    private Optional<Box> firstNamed(Placing placing) {
        return firstKey(placing).map(key -> hull(placing, key));
    }

    private Box named(Placing placing) {
        return firstNamed(placing)
                .orElseThrow(() -> new Unplannable(
                        placing.origin(),
                        "“%s” is flush or in the middle, but of what? Name a part first: .behind(floorIn)."
                                .formatted(placing.part())));
    }

    private Box hull(Placing asking, Origin key) {
        List<Piece> pieces = of(key).orElseThrow(() -> new Unplannable(
                asking.origin(),
                "“%s” waits for the place of “%s”."
                        .formatted(
                                asking.part(),
                                sketch.placing(key)
                                        .map(Placing::part)
                                        .orElse("a part that is placed but kept nowhere"))));
        return Box.hull(pieces.stream().map(Piece::box).toList());
    }

    private static Box loose(SizedPart part, Placing placing) {
        if (part.standing() == Standing.SLOPES) {
            boolean ring = part.said().trait(Trait.RingOf.class).isPresent();
            throw new Unplannable(
                    placing.origin(),
                    ring
                            ? "“%s” is one of a ring. Say .round().".formatted(placing.part())
                            : "“%s” lies on a slope. Say .restsOn(frontIn, backIn).".formatted(placing.part()));
        }
        return Turned.loose(part, placing);
    }
}
