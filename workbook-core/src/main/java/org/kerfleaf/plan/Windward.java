package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Pressure;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Seen;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.site.Wind;
import org.kerfleaf.site.WindLoad;
import org.kerfleaf.sketch.Hole;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.OfSite;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Soil;

/** What the wind finds above the ground, from the solids, and what the post must stand against. */
final class Windward {
    private final Sketch sketch;
    private final Assembly assembly;
    private final Bodies bodies;
    private final Hole hole;
    private final Origin post;

    private Windward(Sketch sketch, Assembly assembly, Bodies bodies, Hole hole, Origin post) {
        this.sketch = sketch;
        this.assembly = assembly;
        this.bodies = bodies;
        this.hole = hole;
        this.post = post;
    }

    /** Empty if the hole has no post. */
    static Optional<Windward> of(Sketch sketch, Assembly assembly, Bodies bodies, Hole hole) {
        return hole.post()
                .filter(post -> !assembly.of(post).isEmpty())
                .map(post -> new Windward(sketch, assembly, bodies, hole, post));
    }

    /** On the box alone: what is mounted on the post, or where nothing is, all but the post itself. */
    Optional<WindLoad> onBox() {
        List<Piece> mounted = sketch.all(Mount.class).stream()
                .flatMap(mount -> assembly.buildOf(mount.what()).stream())
                .toList();
        List<Piece> box = mounted.isEmpty() ? besidesPost() : mounted;
        return load(solids(box));
    }

    /** On everything above the ground, the post too. */
    Optional<WindLoad> onAll() {
        return load(solids(assembly.standingWith(post)));
    }

    private List<Piece> besidesPost() {
        return assembly.standingWith(post).stream()
                .filter(p -> !p.placing().equals(post))
                .toList();
    }

    /** What of these pieces stands above the ground. */
    private List<PlacedSolid> solids(List<Piece> pieces) {
        List<PlacedSolid> above = new ArrayList<>();
        for (Piece piece : pieces) {
            if (bodies.has(piece)) {
                bodies.of(piece).behind(Vector.Z.negated(), 0).ifPresent(above::add);
            }
        }
        bodies.panes().forEach((glazing, solid) -> {
            if (pieces.stream().anyMatch(p -> glazing.into().contains(p.placing()))) {
                above.add(solid);
            }
        });
        return above;
    }

    private Optional<WindLoad> load(List<PlacedSolid> pieces) {
        Optional<OfSite.Windy> windy = Siting.said(sketch, OfSite.Windy.class);
        if (windy.isEmpty() || pieces.isEmpty()) {
            return Optional.empty();
        }
        Seen front = Seen.along(Axis.Y, pieces);
        Seen side = Seen.along(Axis.X, pieces);
        boolean frontTurnsMore = front.squareMillimetres() * front.middle() >= side.squareMillimetres() * side.middle();
        Seen most = frontTurnsMore ? front : side;
        Length centre = Length.ofMillimetres(most.middle());
        Figure<Pressure> pressure = Wind.pressure(
                windy.get().speed(),
                windy.get().ground(),
                centre,
                Siting.said(sketch, OfSite.AboveSea.class)
                        .map(OfSite.AboveSea::height)
                        .orElse(Length.ZERO));
        return Optional.of(WindLoad.on(
                frontTurnsMore ? "the front" : "the side",
                pressure,
                Figure.of(
                        Area.ofSquareMillimetres(most.squareMillimetres()),
                        "all that is seen from there, as one shape: front or side, whichever turns the post more",
                        Reason.GEOMETRY,
                        given("from the front", Area.ofSquareMillimetres(front.squareMillimetres())),
                        given("from the side", Area.ofSquareMillimetres(side.squareMillimetres()))),
                Figure.of(centre, "the middle of that shape, above the ground", Reason.GEOMETRY),
                across(),
                soil(),
                sketch.all(Hole.class).size()));
    }

    /** What the soil holds on to. */
    private Figure<Length> across() {
        if (hole.concrete().isPresent()) {
            return Figure.of(
                    hole.across(), "the pier's diameter: the hole's", Reason.GEOMETRY, given("hole", hole.across()));
        }
        Box box = Assembly.hull(assembly.of(post));
        Length wide = box.extent(Axis.X);
        Length deep = box.extent(Axis.Y);
        return Figure.of(
                Length.ofMillimetres(StrictMath.hypot(wide.inMillimetres(), deep.inMillimetres())),
                "the post's diagonal, √(wide² + deep²)",
                "IBC 1807.3.2.1 (seen in a copy)",
                given("wide", wide),
                given("deep", deep));
    }

    /** The ground that was said, or what is tamped back out of it. */
    private Optional<Soil> soil() {
        return Siting.said(sketch, OfSite.Ground.class).map(OfSite.Ground::soil).or(hole::filledWith);
    }
}
