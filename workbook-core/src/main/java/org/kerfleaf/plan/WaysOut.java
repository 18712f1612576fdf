package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.EdgeOf;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Where;

/**
 * The way every piece comes out of its place, from the words that placed it ({@code Reason.GEOMETRY}).
 *
 * <p>The first word that says a contact gives the direction: beside, on top, against; the normal of the slope it rests on; away
 * from the roof's edge it runs along; out of a pane's rabbet. It comes off what all its words name: off that piece, or, where they
 * name several, off the piece that all of these are put onto in the end. A build that is mounted comes up as one.
 */
final class WaysOut {
    private final Sketch sketch;
    private final Assembly assembly;
    private final Bodies bodies;
    private final List<Piece> pieces;
    private final Map<Piece, WayOut> known = new HashMap<>();

    WaysOut(Sketch sketch, Assembly assembly, Bodies bodies) {
        this.sketch = sketch;
        this.assembly = assembly;
        this.bodies = bodies;
        pieces = List.copyOf(bodies.all().keySet());
    }

    /** The way of a pane: out of its rabbet. */
    WayOut of(Glazing glazing, PlacedSolid pane) {
        Piece frame = assembly.of(glazing.into().get(0)).get(0);
        Vector out = bodies.of(frame).pose().w();
        Vector middle = bodies.of(frame).bounds().middle();
        double side = pane.bounds().middle().minus(middle).dot(out);
        return new WayOut(side < 0 ? out.negated() : out, pieces.indexOf(frame));
    }

    WayOut of(Piece piece) {
        WayOut found = known.get(piece);
        if (found == null) {
            // A ring cannot be: such pieces have no place.
            found = sketch.placing(piece.placing())
                    .map(placing -> way(piece, placing))
                    .orElse(WayOut.STAYS);
            known.put(piece, found);
        }
        return found;
    }

    private WayOut way(Piece piece, Placing placing) {
        List<Piece> named = named(piece, placing);
        if (named.isEmpty()) {
            return mounted(piece);
        }
        int off = pieces.indexOf(base(named));
        Optional<Vector> along = along(piece, placing);
        return off < 0 || along.isEmpty() ? WayOut.STAYS : new WayOut(along.get(), off);
    }

    private WayOut mounted(Piece root) {
        return sketch.all(Mount.class).stream()
                .filter(m -> assembly.number(m.what()) == assembly.number(root.placing()))
                .flatMap(m -> Stream.concat(m.onTopOf().stream(), m.restsOn().stream()))
                .flatMap(onto -> assembly.of(onto).stream())
                .filter(bodies::has)
                .findFirst()
                .map(onto -> new WayOut(up(root), pieces.indexOf(onto)))
                .orElse(WayOut.STAYS);
    }

    /** Up, or off the slope on which its build lies. */
    private static Vector up(Piece root) {
        Vector w = root.sloping().map(solid -> solid.pose().w()).orElse(Vector.Z);
        return w.z() < 0 ? w.negated() : w;
    }

    // ---- which way -----------------------------------------------------------------------------------------------

    private Optional<Vector> along(Piece piece, Placing placing) {
        List<Where> words = new ArrayList<>(placing.where());
        // What stands clear over another does not touch it: another word may say what it touches.
        placing.where().stream().filter(WaysOut::isClear).forEach(clear -> {
            words.remove(clear);
            words.add(clear);
        });
        return words.stream().flatMap(word -> along(piece, word).stream()).findFirst();
    }

    private static boolean isClear(Where where) {
        return where instanceof Where.Above above && above.gaps().stream().allMatch(gap -> gap.isPositive());
    }

    private Optional<Vector> along(Piece piece, Where where) {
        if (where instanceof Where.Beside beside) {
            return Optional.of(toward(beside.side()));
        }
        if (where instanceof Where.BothSides both) {
            Vector one = toward(both.one());
            return Optional.of(isBeyond(piece, hull(both.other()), one) ? one : toward(both.two()));
        }
        if (where instanceof Where.Against against) {
            Box other = hull(against.other());
            Vector axis = other.thinnest().unit();
            return Optional.of(isBeyond(piece, other, axis) ? axis : axis.negated());
        }
        if (where instanceof Where.Round) {
            Vector out = bodies.of(piece).pose().w().negated();
            return Optional.of(new Vector(out.x(), out.y(), 0).normalised());
        }
        boolean down = where instanceof Where.Above || where instanceof Where.OverRidge;
        if (down || where instanceof Where.Between || where instanceof Where.RestsIn) {
            return Optional.of(Vector.Z);
        }
        if (where instanceof Where.RestsOn) {
            return piece.sloping().map(solid -> solid.pose().w());
        }
        return where instanceof Where.AlongRoof ? Optional.of(offRoof(piece)) : Optional.empty();
    }

    /** Away from the roof: past its end for what climbs along it, down the slope for what runs along its eave. */
    private Vector offRoof(Piece trim) {
        PlacedSolid roof =
                bodies.of(base(named(trim, sketch.placing(trim.placing()).orElseThrow())));
        Optional<EdgeOf.Edge> edge = sketch.part(trim.part())
                .flatMap(p -> p.trait(org.kerfleaf.sketch.Trait.Along.class))
                .map(along -> along.edge().edge());
        if (edge.equals(Optional.of(EdgeOf.Edge.RAKE))) {
            Vector end = roof.pose().u();
            boolean far = bodies.of(trim)
                            .bounds()
                            .middle()
                            .minus(roof.bounds().middle())
                            .dot(end)
                    > 0;
            return far ? end : end.negated();
        }
        return roof.pose().v().negated();
    }

    private static boolean isBeyond(Piece piece, Box other, Vector direction) {
        return middle(piece.box()).minus(middle(other)).dot(direction) > 0;
    }

    private static Vector middle(Box box) {
        return new Vector(
                box.middle(Axis.X).inMillimetres(),
                box.middle(Axis.Y).inMillimetres(),
                box.middle(Axis.Z).inMillimetres());
    }

    private Box hull(Origin placing) {
        return Assembly.hull(assembly.of(placing));
    }

    private static Vector toward(Side side) {
        return switch (side) {
            case LEFT -> Vector.X.negated();
            case RIGHT -> Vector.X;
            case FRONT -> Vector.Y.negated();
            case BACK -> Vector.Y;
            case BOTTOM -> Vector.Z.negated();
            default -> Vector.Z;
        };
    }

    // ---- off what ------------------------------------------------------------------------------------------------

    /** The pieces that the words name; of a roof the half that a trim runs along. */
    private List<Piece> named(Piece piece, Placing placing) {
        List<Piece> named = new ArrayList<>();
        for (Where where : placing.where()) {
            if (where instanceof Where.RestsOn rests) {
                rests.supports().forEach(support -> named.addAll(assembly.of(support)));
            } else if (where instanceof Where.AlongRoof along) {
                List<Piece> halves = assembly.of(along.roofs());
                int each = Math.max(1, assembly.of(placing.origin()).size() / Math.max(1, halves.size()));
                halves.stream().skip(piece.index() / each).findFirst().ifPresent(named::add);
            } else {
                Places.others(where).forEach(other -> named.addAll(assembly.of(other)));
            }
            if (where instanceof Where.Round && piece.index() > 0) {
                named.add(assembly.of(placing.origin()).get(0));
            }
        }
        return named.stream().filter(bodies::has).distinct().toList();
    }

    /** The piece that all of these are, or are put onto; null if there is none. */
    private Piece base(List<Piece> named) {
        for (Piece candidate : chain(named.get(0))) {
            if (named.stream().allMatch(other -> chain(other).contains(candidate))) {
                return candidate;
            }
        }
        return null;
    }

    /** A piece, what it comes off, what that comes off, and so on. */
    private List<Piece> chain(Piece piece) {
        List<Piece> chain = new ArrayList<>();
        int at = pieces.indexOf(piece);
        while (at >= 0) {
            chain.add(pieces.get(at));
            at = of(pieces.get(at)).off();
        }
        return chain;
    }
}
