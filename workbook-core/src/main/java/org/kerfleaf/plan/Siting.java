package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.site.Access;
import org.kerfleaf.site.Filling;
import org.kerfleaf.site.PostHole;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Hole;
import org.kerfleaf.sketch.Item;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.OfSite;
import org.kerfleaf.sketch.Reach;
import org.kerfleaf.sketch.SiteSaid;
import org.kerfleaf.sketch.Sketch;

/** Works out the hole and the heights above ground. */
final class Siting {
    private final Sketch sketch;
    private final Assembly assembly;
    private final Bodies bodies;
    private final MeasureStyle style;
    private Optional<SitePlan> plan;

    Siting(Sketch sketch, Assembly assembly, Bodies bodies, MeasureStyle style) {
        this.style = style;
        this.sketch = sketch;
        this.assembly = assembly;
        this.bodies = bodies;
    }

    /** Says of every post that does not come out of its hole what it lacks. */
    void look(Problems problems) {
        for (Hole hole : sketch.all(Hole.class)) {
            Length inGround = PostHole.inGround(hole.deep(), hole.gravel()).value();
            post(hole)
                    .map(box -> box.extent(Axis.Z))
                    .filter(high -> !high.isLongerThan(inGround))
                    .ifPresent(high -> problems.add(
                            hole.origin(),
                            "The post is %s long and stands %s deep in this hole: nothing of it is above the ground. A longer post, or a hole less deep, would do."
                                    .formatted(high.in(style), inGround.in(style))));
        }
    }

    /** What was said of the place, of one kind. */
    static <T extends OfSite> Optional<T> said(Sketch sketch, Class<T> kind) {
        return sketch.all(SiteSaid.class).stream()
                .flatMap(site -> site.of(kind).stream())
                .findFirst();
    }

    Optional<Hole> hole() {
        return sketch.all(Hole.class).stream().findFirst();
    }

    /** The site's figures; worked out once, for the wind takes long. */
    Optional<SitePlan> plan() {
        if (plan == null) {
            plan = hole().map(this::plan);
        }
        return plan;
    }

    private SitePlan plan(Hole hole) {
        Figure<Volume> volume = PostHole.volume(hole.across(), hole.deep());
        Optional<Windward> wind = Windward.of(sketch, assembly, bodies, hole);
        return new SitePlan(
                volume,
                gravel(hole),
                PostHole.inGround(hole.deep(), hole.gravel()),
                boxBottom(),
                latch(),
                PostHole.spoil(volume.value()),
                filling(hole),
                post(hole)
                        .map(box -> PostHole.postTop(
                                box.extent(Axis.Z),
                                PostHole.inGround(hole.deep(), hole.gravel()).value())),
                cutPostTo(hole),
                Access.of(people(), style),
                wind.flatMap(Windward::onBox),
                wind.flatMap(Windward::onAll));
    }

    /** Who reaches for it; an adult if nobody was named. */
    List<Reach> people() {
        return said(sketch, OfSite.ReachedBy.class)
                .map(OfSite.ReachedBy::people)
                .orElse(List.of(Reach.ADULT));
    }

    /** The post that stands in it. */
    Optional<Box> post(Hole hole) {
        return hole.post().map(assembly::of).filter(p -> !p.isEmpty()).map(Assembly::hull);
    }

    /** What goes round the post; not known where neither concrete nor soil was said. */
    Optional<Filling> filling(Hole hole) {
        Volume volume = PostHole.volume(hole.across(), hole.deep()).value();
        Length inGround = PostHole.inGround(hole.deep(), hole.gravel()).value();
        return post(hole).flatMap(box -> {
            Area section = box.extent(Axis.X).by(box.extent(Axis.Y));
            Optional<Filling> concrete =
                    hole.concrete().map(bag -> Filling.concrete(section, hole.across(), inGround, volume, bag.holds()));
            return concrete.or(() -> hole.filledWith()
                    .map(soil -> Filling.tamped(
                            soil.name().toLowerCase(Locale.ROOT), section, hole.across(), inGround, volume)));
        });
    }

    private Optional<Figure<Length>> cutPostTo(Hole hole) {
        return hole.leftLong()
                .flatMap(left -> post(hole)
                        .map(box -> Figure.of(
                                box.extent(Axis.Z).plus(left),
                                "its length + what is left on it until it stands",
                                Reason.GEOMETRY,
                                given("length", box.extent(Axis.Z)),
                                given("left long", left))));
    }

    Figure<Volume> gravel(Hole hole) {
        return PostHole.volume(hole.across(), hole.gravel());
    }

    /** The ground is where the axes meet as soon as a post stands in it. */
    Optional<Figure<Length>> boxBottom() {
        return sketch.all(Mount.class).stream()
                .findFirst()
                .map(mount -> assembly.of(mount.what()))
                .filter(pieces -> !pieces.isEmpty() && grounded())
                .map(pieces -> Assembly.hull(pieces).low(Axis.Z))
                .map(height -> Figure.of(
                        height, "post above ground, and what lies between it and the underside", Reason.GEOMETRY));
    }

    Optional<Figure<Length>> latch() {
        return sketch.all(Fitting.class).stream()
                .filter(f -> f.item().kind() == Item.Kind.KNOB)
                .flatMap(f -> f.on().stream())
                .map(assembly::of)
                .filter(pieces -> !pieces.isEmpty() && grounded())
                .map(pieces -> Assembly.hull(pieces))
                .map(door -> Figure.of(
                        door.middle(Axis.Z),
                        "door's foot above ground + half its height",
                        Reason.GEOMETRY,
                        given("foot", door.low(Axis.Z)),
                        given("door", door.extent(Axis.Z))))
                .findFirst();
    }

    private boolean grounded() {
        List<Piece> post = hole().flatMap(Hole::post).map(assembly::of).orElse(List.of());
        return !post.isEmpty();
    }
}
