package org.kerfleaf.rain;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * Follows rain over solids: straight down from the sky, down the steepest way of every face, round its lower sides, through the air to
 * what lies below, until it drips to the ground or cannot leave.
 *
 * <p>Geometry alone decides, on the polygons of the faces: a face is walked strip by strip, between the corners that its water passes.
 * At the side where a strip ends, the next surface is the first that one meets when turning round that side through the air. Water runs
 * on over it if it goes down there; it is dammed if it rises, and then runs along the side; and it drips if the surface draws back. What
 * is level is wet all over, and its water leaves wherever it can. Which place leads to which is kept, and where no way leads to the
 * ground is a trap. Rain driven by wind, splashing and water drawn into narrow gaps are not followed.
 */
public final class RainWalk {
    private final List<Wet> wet = new ArrayList<>();
    private final List<Way> ways;

    private RainWalk(List<PlacedSolid> solids) {
        Surfaces surfaces = new Surfaces(solids);
        List<RainFall.Rained> rained = new RainFall(surfaces).rained();
        Water water = new Water(surfaces, rained);
        for (RainFall.Rained on : rained) {
            if (!on.patch().holdsWater()) {
                slope(on);
            }
        }
        Set<Flows.Place> leaving = water.flows().leaving();
        water.standing().forEach(patch -> level(patch, water.isBasin(patch, leaving)));
        for (Set<Flows.Place> trap : water.flows().traps()) {
            trap(trap);
        }
        wet.addAll(water.creeps());
        Rims rims = new Rims(surfaces, rained, water);
        wet.addAll(rims.seams());
        ways = List.copyOf(water.ways());
    }

    /** Rain on these, as they stand in the finished build. */
    public static RainWalk over(List<PlacedSolid> solids) {
        return new RainWalk(List.copyOf(solids));
    }

    /** What is wet: slopes, what is level, traps, edges it creeps round, seams. */
    public List<Wet> wet() {
        return List.copyOf(wet);
    }

    /** The ways of the water, in the order walked. */
    public List<Way> ways() {
        return ways;
    }

    private void slope(RainFall.Rained on) {
        double area = 0;
        double longest = 0;
        Vector at = null;
        double largest = 0;
        for (Polygon piece : on.plan()) {
            double own = piece.getArea() / on.patch().normal().z();
            area += own;
            longest += longer(on.inPlane(piece));
            if (own > largest) {
                largest = own;
                at = on.on(piece.getInteriorPoint().getCoordinate());
            }
        }
        wet.add(new Wet.Surface(on.patch().solid(), on.patch().face(), area, longest, Wet.Stands.NOT, at));
    }

    private void level(Patch patch, boolean basin) {
        wet.add(new Wet.Surface(
                patch.solid(),
                patch.face(),
                patch.polygon().getArea(),
                longer(patch.polygon()),
                basin ? Wet.Stands.IN_A_BASIN : Wet.Stands.OPEN,
                middle(patch)));
    }

    private void trap(Set<Flows.Place> places) {
        Flows.Place first = places.iterator().next();
        List<PlacedSolid> solids =
                places.stream().map(p -> p.patch().solid()).distinct().toList();
        List<Vector> at = places.stream()
                .map(p -> p.side() == null ? middle(p.patch()) : p.side().at(0.5))
                .toList();
        boolean known = wet.stream()
                .anyMatch(w -> w instanceof Wet.Trap && w.at().minus(at.get(0)).length() < 1);
        if (!known) {
            wet.add(new Wet.Trap(solids, first.patch().face(), at.get(0)));
        }
    }

    private static Vector middle(Patch patch) {
        Coordinate at = patch.polygon().getInteriorPoint().getCoordinate();
        return patch.face().frame().toWorld(new Vector(at.x, at.y, 0));
    }

    /** The longer side of the smallest rectangle round it. */
    private static double longer(Polygon shape) {
        Coordinate[] box = MinimumDiameter.getMinimumRectangle(shape).getCoordinates();
        return box.length < 5 ? shape.getLength() / 2 : Math.max(box[0].distance(box[1]), box[1].distance(box[2]));
    }
}
