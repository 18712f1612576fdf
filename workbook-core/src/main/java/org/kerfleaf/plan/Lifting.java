package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.plan.Loads.Grip;
import org.kerfleaf.plan.Loads.Holding;
import org.kerfleaf.plan.Loads.LiftReach;
import org.kerfleaf.plan.Loads.Lifted;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.LiftChecks;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.site.Moment;
import org.kerfleaf.sketch.Hole;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.People;
import org.kerfleaf.sketch.Sketch;

/** What is lifted onto another build: how heavy it is, where it balances, who lifts it, what holds it before anybody lets go. */
final class Lifting {
    /** How far before and behind the balance a hand takes hold, where there is room: about 8 in, common practice. */
    private static final double HAND = 200;

    private final Sketch sketch;
    private final Assembly assembly;
    private final Bodies bodies;
    private final List<PlannedPart> parts;
    private final List<DrivenContact> driven;
    private final Map<Mount, Lifted> lifted = new LinkedHashMap<>();

    Lifting(Sketch sketch, Assembly assembly, Bodies bodies, List<PlannedPart> parts, List<DrivenContact> driven) {
        this.sketch = sketch;
        this.assembly = assembly;
        this.bodies = bodies;
        this.parts = parts;
        this.driven = driven;
        for (Mount mount : sketch.all(Mount.class)) {
            List<Piece> build = assembly.buildOf(mount.what());
            if (!build.isEmpty()) {
                lifted.put(mount, lifted(mount, build));
            }
        }
    }

    /** Every build that is lifted, with what was said of it. */
    Map<Mount, Lifted> all() {
        return lifted;
    }

    /** What pieces weigh together; empty if the density of one is not known. */
    Optional<Mass> weightOf(List<Piece> build) {
        return weighed(build).map(Weighed::mass);
    }

    /** What weighs something, and where its middle is. */
    private record Weighed(Mass mass, Vector middle) {}

    private Lifted lifted(Mount mount, List<Piece> build) {
        Box hull = Assembly.hull(build);
        Optional<Weighed> weighed = weighed(build);
        Optional<Figure<Length>> fromLeft = weighed.map(w -> balance(w.middle().x(), hull, Axis.X, "left side"));
        Optional<Figure<Length>> fromFront = weighed.map(w -> balance(w.middle().y(), hull, Axis.Y, "front"));
        Optional<Figure<Length>> up = weighed.map(w -> balance(w.middle().z(), hull, Axis.Z, "underside"));
        int people = sketch.all(People.class).stream()
                .filter(p -> p.origin().step() == mount.origin().step())
                .mapToInt(People::number)
                .findFirst()
                .orElse(1);
        Optional<Length> from = mount.liftedFrom();
        Optional<LiftReach> reach = from.map(start -> reach(start, hull));
        Optional<Figure<Length>> out = weighed.flatMap(w -> outOfPost(w.middle()));
        return new Lifted(
                mount.origin().step(),
                assembly.number(mount.what()),
                bodyName(mount),
                weighed.map(w -> Figure.of(
                        w.mass(),
                        "volume · density of every part in it; hardware, paint and glue are not counted",
                        Reason.GEOMETRY,
                        given("pieces", build.size()))),
                fromLeft,
                fromFront,
                up,
                people,
                weighed.map(w -> share(w.mass(), fromLeft.orElseThrow().value(), hull.extent(Axis.X), people)),
                reach.map(hands -> LiftChecks.limit(
                        hands.out().value(),
                        from.orElseThrow(),
                        up(from.orElseThrow(), hull),
                        LiftChecks.POOR_GRIP,
                        people)),
                reach,
                out,
                weighed.flatMap(w -> out.map(lever -> Figure.of(
                        Moment.of(Force.weightOf(w.mass()), lever.value()),
                        "weight · how far it balances from the post's middle",
                        "statics",
                        given("weight", w.mass()),
                        given("out", lever.value())))),
                weighed.map(w -> holding(build, w.middle())).orElse(new Holding(0, 0, 0, 0)),
                weighed.map(Weighed::middle),
                weighed.map(w -> grips(foot(build, hull), w.middle(), people)).orElse(List.of()));
    }

    /** What hands can reach under: all of it that begins within an inch of the underside, not a roof that stands out above. */
    private static Box foot(List<Piece> build, Box hull) {
        Length reach = hull.low(Axis.Z).plus(Length.ofInches(1L));
        return Assembly.hull(build.stream()
                .filter(piece -> !piece.box().low(Axis.Z).isLongerThan(reach))
                .toList());
    }

    /** One takes both ends level with where it balances; of two each takes one end, a hand before and a hand behind it. */
    private static List<Grip> grips(Box hull, Vector middle, int people) {
        double left = hull.low(Axis.X).inMillimetres();
        double right = hull.high(Axis.X).inMillimetres();
        double under = hull.low(Axis.Z).inMillimetres();
        if (people == 1) {
            return List.of(
                    new Grip(1, new Vector(left, middle.y(), under)),
                    new Grip(1, new Vector(right, middle.y(), under)));
        }
        if (people > 2) {
            return List.of();
        }
        double room = Math.min(
                middle.y() - hull.low(Axis.Y).inMillimetres(), hull.high(Axis.Y).inMillimetres() - middle.y());
        double apart = Math.min(HAND, room);
        return List.of(
                new Grip(1, new Vector(left, middle.y() - apart, under)),
                new Grip(1, new Vector(left, middle.y() + apart, under)),
                new Grip(2, new Vector(right, middle.y() - apart, under)),
                new Grip(2, new Vector(right, middle.y() + apart, under)));
    }

    private String bodyName(Mount mount) {
        return assembly.of(mount.what()).stream().map(Piece::part).findFirst().orElse("");
    }

    private static Figure<Length> balance(double at, Box hull, Axis axis, String side) {
        return Figure.of(
                Length.ofMillimetres(at).minus(hull.low(axis)),
                "the middle of its weight, from its " + side,
                Reason.GEOMETRY);
    }

    /** Empty if the density of anything in it is not known. */
    private Optional<Weighed> weighed(List<Piece> build) {
        List<PlacedSolid> solids = new ArrayList<>();
        for (Piece piece : build) {
            if (!bodies.has(piece)) {
                return Optional.empty();
            }
            solids.add(bodies.of(piece));
        }
        bodies.panes().forEach((glazing, solid) -> {
            if (build.stream().anyMatch(p -> glazing.into().contains(p.placing()))) {
                solids.add(solid);
            }
        });
        Mass mass = Mass.ZERO;
        Vector moment = Vector.ZERO;
        for (PlacedSolid solid : solids) {
            Optional<Mass> one = weight(solid.part());
            if (one.isEmpty()) {
                return Optional.empty();
            }
            mass = mass.plus(one.get());
            moment = moment.plus(solid.centroid().times(one.get().grams()));
        }
        return mass.grams() > 0 ? Optional.of(new Weighed(mass, moment.times(1 / mass.grams()))) : Optional.empty();
    }

    private Optional<Mass> weight(String part) {
        return parts.stream()
                .filter(p -> p.name().equals(part))
                .flatMap(p -> p.weight().stream())
                .map(Figure::value)
                .findFirst();
    }

    /** Of two, the one nearer to where it balances holds more. */
    private static Figure<Mass> share(Mass weight, Length fromLeft, Length wide, int people) {
        if (people != 2) {
            return Figure.of(
                    weight.times(1.0 / people),
                    "weight / people",
                    "statics",
                    given("weight", weight),
                    given("people", people));
        }
        double left = 1 - fromLeft.dividedBy(wide);
        return Figure.of(
                weight.times(Math.max(left, 1 - left)),
                "one at either end: weight · its distance from the farther end / width",
                "statics",
                given("weight", weight),
                given("from left", fromLeft),
                given("width", wide));
    }

    private static LiftReach reach(Length from, Box hull) {
        Length deep = hull.extent(Axis.X).min(hull.extent(Axis.Y));
        Figure<Length> out = LiftChecks.out(deep, from);
        return new LiftReach(
                out,
                LiftChecks.outShare(out.value()),
                LiftChecks.heightShare(from),
                LiftChecks.wayShare(up(from, hull)));
    }

    private static Length up(Length from, Box hull) {
        return hull.low(Axis.Z).minus(from).absolute();
    }

    private Optional<Figure<Length>> outOfPost(Vector middle) {
        return sketch.all(Hole.class).stream()
                .flatMap(hole -> hole.post().stream())
                .map(assembly::of)
                .filter(post -> !post.isEmpty())
                .map(Assembly::hull)
                .findFirst()
                .map(post -> {
                    double x = middle.x() - post.middle(Axis.X).inMillimetres();
                    double y = middle.y() - post.middle(Axis.Y).inMillimetres();
                    return Figure.of(
                            Length.ofMillimetres(StrictMath.hypot(x, y)),
                            "from the post's middle to where it balances, level",
                            Reason.GEOMETRY,
                            given("left to right", Length.ofMillimetres(Math.abs(x))),
                            given("front to back", Length.ofMillimetres(Math.abs(y))));
                });
    }

    private Holding holding(List<Piece> build, Vector middle) {
        int left = 0;
        int right = 0;
        int front = 0;
        int back = 0;
        for (DrivenContact contact : driven) {
            boolean through = build.contains(contact.driver().through());
            boolean into = contact.driver().into().stream().anyMatch(build::contains);
            if (through != into) {
                for (var fastener : contact.fasteners()) {
                    left += fastener.head().x() < middle.x() ? 1 : 0;
                    right += fastener.head().x() > middle.x() ? 1 : 0;
                    front += fastener.head().y() < middle.y() ? 1 : 0;
                    back += fastener.head().y() > middle.y() ? 1 : 0;
                }
            }
        }
        return new Holding(left, right, front, back);
    }
}
