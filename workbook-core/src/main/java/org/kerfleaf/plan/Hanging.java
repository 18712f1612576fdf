package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.rules.SwingChecks.Stop;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.HingeLine;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Sweep;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Item;
import org.kerfleaf.sketch.Joint;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Side;

/**
 * Finds what hangs on hinges, and turns it.
 *
 * <p>It turns about its edge on the hinges' side. A door that lies on what it closes turns about that edge in the plane of its
 * inner face: there the knuckle of an overlay hinge sits, between the door and what it lies on, and so the door's outer corner
 * comes round onto the front at 90° + asin(stand-off / thickness). A lid does the same, its lower face being the inner one. A
 * door that lies between others, flush with them, turns about that edge in the plane of its outer face, where a butt hinge's
 * knuckle stands proud; otherwise it could not turn at all.
 */
final class Hanging {
    /** As far as a plain hinge opens. */
    private static final Angle FLAT = Angle.RIGHT.times(2);

    /** An edge whose side lies nearer to the sheet's normal than this is no edge: the sine of about six degrees. */
    private static final double LEAST = 0.1;

    private final Planned planned;

    /** @param out in the sheet, square to the hinges' edge and out over it; @param in towards what it closes */
    private record Edge(Vector out, Vector in) {}

    private Hanging(Planned planned) {
        this.planned = planned;
    }

    static List<Hung> all(Planned planned) {
        Hanging hanging = new Hanging(planned);
        List<Hung> all = new ArrayList<>();
        Set<Origin> seen = new LinkedHashSet<>();
        for (Fitting fitting : planned.sketch().all(Fitting.class)) {
            if (isHinge(fitting)
                    && fitting.on().isPresent()
                    && seen.add(fitting.on().get())) {
                for (Piece piece : planned.assembly().of(fitting.on().get())) {
                    fitting.side()
                            .filter(side -> planned.bodies().has(piece))
                            .flatMap(side -> hanging.hung(piece, side))
                            .ifPresent(all::add);
                }
            }
        }
        return List.copyOf(all);
    }

    static boolean isHinge(Fitting fitting) {
        return fitting.item().kind() == Item.Kind.HINGE;
    }

    private Optional<Hung> hung(Piece piece, Side side) {
        Set<Origin> moving = together(piece.placing());
        Vector in = inward(piece, moving);
        Vector said = direction(side);
        Vector out = said.minus(in.times(in.dot(said)));
        return out.length() < LEAST
                ? Optional.empty()
                : Optional.of(hung(piece, moving, new Edge(out.normalised(), in)));
    }

    private Hung hung(Piece piece, Set<Origin> moving, Edge edge) {
        List<PlacedSolid> turned = new ArrayList<>();
        List<PlacedSolid> others = new ArrayList<>();
        Set<Integer> builds = mounted(piece.placing());
        planned.bodies().all().forEach((other, body) -> {
            boolean own = other.placing().equals(piece.placing())
                    ? other.index() == piece.index()
                    : moving.contains(other.placing());
            if (own) {
                turned.add(body);
            } else if (builds.contains(planned.assembly().number(other.placing()))) {
                others.add(body);
            }
        });
        planned.bodies().panes().forEach((glazing, pane) -> {
            Origin into = glazing.into().get(0);
            if (moving.contains(into)) {
                turned.add(pane);
            } else if (builds.contains(planned.assembly().number(into))) {
                others.add(pane);
            }
        });
        PlacedSolid solid = planned.bodies().of(piece);
        boolean inset = beside(solid, edge.in(), edge.out(), others).isPresent();
        HingeLine line = line(solid, edge, inset);
        Stop stop = stop(moving);
        Angle upTo = stop.at().filter(at -> at.compareTo(FLAT) > 0).orElse(FLAT);
        int count = planned.assembly().of(piece.placing()).size();
        return new Hung(
                count > 1 ? piece.part() + " " + (piece.index() + 1) : piece.part(),
                piece,
                turned,
                others,
                edge.out(),
                edge.in(),
                line,
                upTo,
                Sweep.of(turned, line, upTo, others),
                stop,
                planned.bodies().depth(piece, edge.out()),
                inset ? beside(solid, edge.in(), edge.out().negated(), others) : Optional.empty());
    }

    // ---- the line ----------------------------------------------------------------------------------------------

    private static HingeLine line(PlacedSolid solid, Edge edge, boolean inset) {
        Vector middle = solid.centroid();
        double out = solid.project(edge.out()).most() - middle.dot(edge.out());
        Vector face = inset ? edge.in().negated() : edge.in();
        double through = solid.project(face).most() - middle.dot(face);
        Vector point = middle.plus(edge.out().times(out)).plus(face.times(through));
        return new HingeLine(point, edge.out().cross(edge.in()));
    }

    /** The normal of the wide face that looks to what it closes. */
    private Vector inward(Piece piece, Set<Origin> moving) {
        PlacedSolid solid = planned.bodies().of(piece);
        Box hull = Assembly.hull(closes(piece.placing(), moving));
        Vector middle = new Vector(
                hull.middle(Axis.X).inMillimetres(),
                hull.middle(Axis.Y).inMillimetres(),
                hull.middle(Axis.Z).inMillimetres());
        Vector normal = solid.face(SheetSide.INSIDE.name()).normal();
        return normal.dot(middle.minus(solid.centroid())) >= 0 ? normal : normal.negated();
    }

    /** What it was placed by, or what its build is mounted on, or else all of its build. */
    private List<Piece> closes(Origin placing, Set<Origin> moving) {
        int build = planned.assembly().number(placing);
        Stream<Origin> named = planned.sketch().placing(placing).stream()
                .flatMap(p -> p.where().stream())
                .flatMap(w -> Places.others(w).stream());
        Stream<Origin> under = planned.sketch().all(Mount.class).stream()
                .filter(m -> planned.assembly().number(m.what()) == build)
                .flatMap(Hanging::carriers);
        return Stream.concat(named, under)
                .filter(key -> !moving.contains(key))
                .map(planned.assembly()::of)
                .filter(pieces -> !pieces.isEmpty())
                .findFirst()
                .orElseGet(() -> planned.assembly().buildOf(placing));
    }

    private static Vector direction(Side side) {
        return switch (side) {
            case LEFT -> Vector.X.negated();
            case RIGHT -> Vector.X;
            case FRONT -> Vector.Y.negated();
            case BACK -> Vector.Y;
            case TOP -> Vector.Z;
            case BOTTOM -> Vector.Z.negated();
            default -> Vector.ZERO;
        };
    }

    /** How far beyond an edge the next piece stands, if one stands there within the door's thickness, in its own layer. */
    static Optional<Length> beside(PlacedSolid solid, Vector in, Vector out, List<PlacedSolid> others) {
        double thick = solid.solid().thickness().inMillimetres();
        return others.stream()
                .filter(other -> overlap(solid, other, in) > thick / 2)
                .filter(other -> overlap(solid, other, in.cross(out)) > thick)
                .map(other -> other.project(out).least() - solid.project(out).most())
                .filter(gap -> gap > -Touching.TOLERANCE.inMillimetres() && gap < thick)
                .min(Double::compare)
                .map(gap -> Length.ofMillimetres(Math.max(0, gap)));
    }

    static double overlap(PlacedSolid one, PlacedSolid other, Vector along) {
        PlacedSolid.Reach a = one.project(along);
        PlacedSolid.Reach b = other.project(along);
        return Math.min(a.most(), b.most()) - Math.max(a.least(), b.least());
    }

    // ---- what turns and what stops it ----------------------------------------------------------------------------

    /** The placings that are fastened to it, or to what is; the boards round a pane are one frame. */
    private Set<Origin> together(Origin first) {
        Stream<List<Origin>> fastened = planned.sketch().all(Joint.class).stream()
                .map(j -> Stream.concat(j.of().stream(), j.to().stream()).toList());
        Stream<List<Origin>> framed =
                planned.sketch().all(Glazing.class).stream().map(Glazing::into);
        return reached(first, Stream.concat(fastened, framed).toList());
    }

    /** The numbers of its build and of those that are mounted with it. */
    private Set<Integer> mounted(Origin placing) {
        List<List<Integer>> pairs = planned.sketch().all(Mount.class).stream()
                .map(m -> Stream.concat(Stream.of(m.what()), carriers(m))
                        .map(planned.assembly()::number)
                        .toList())
                .toList();
        return reached(planned.assembly().number(placing), pairs);
    }

    private static Stream<Origin> carriers(Mount mount) {
        return Stream.concat(mount.onTopOf().stream(), mount.restsOn().stream());
    }

    /** All that hangs together with the first, group by group. */
    private static <T> Set<T> reached(T first, List<List<T>> groups) {
        Set<T> all = new LinkedHashSet<>(List.of(first));
        int before = 0;
        while (before < all.size()) {
            before = all.size();
            groups.stream().filter(g -> g.stream().anyMatch(all::contains)).forEach(all::addAll);
        }
        return all;
    }

    private Stop stop(Set<Origin> moving) {
        List<Item> items = planned.sketch().all(Fitting.class).stream()
                .filter(f -> f.on().filter(moving::contains).isPresent())
                .map(Fitting::item)
                .toList();
        return new Stop(
                items.stream().anyMatch(i -> i.kind() == Item.Kind.STAY),
                items.stream().flatMap(i -> i.stopsAt().stream()).min(Angle::compareTo));
    }
}
