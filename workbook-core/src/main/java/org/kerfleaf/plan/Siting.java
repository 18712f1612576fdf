package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.site.PostHole;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.Fitting;
import org.kerfleaf.sketch.Hole;
import org.kerfleaf.sketch.Item;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Sketch;

/** Works out the hole and the heights above ground. */
final class Siting {
    private final Sketch sketch;
    private final Assembly assembly;

    Siting(Sketch sketch, Assembly assembly) {
        this.sketch = sketch;
        this.assembly = assembly;
    }

    Optional<Hole> hole() {
        return sketch.all(Hole.class).stream().findFirst();
    }

    Optional<SitePlan> plan() {
        return hole().map(hole -> new SitePlan(
                PostHole.volume(hole.across(), hole.deep()),
                gravel(hole),
                PostHole.inGround(hole.deep(), hole.gravel()),
                boxBottom(),
                latch()));
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
