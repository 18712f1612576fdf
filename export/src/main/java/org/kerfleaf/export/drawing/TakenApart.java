package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

/**
 * How far each piece is moved along its way out so that all can be seen: the distances of a build taken apart.
 *
 * <p>A piece moves with what it comes off and then along its own way; pieces of one letter move equally far. From small gaps the
 * distances grow one at a time, always the one that shows most for the paper it costs, until of every piece a {@link #SHARE} is in
 * sight; then each shrinks again as far as that holds. {@code Common practice, no source} for the share.
 */
final class TakenApart {
    /** The share of its silhouette that each piece shows at the least, where distances can bring that about. */
    static final double SHARE = 0.5;

    /** Cells along the diagonal of the build: few for the long search, then enough for a trim board. */
    private static final int[] CELLS = {90, 220};

    private static final double LEAST = 0.05;
    private static final double STEP = 0.04;
    private static final int[] STEPS = {1, 3, 8, 16};
    private static final int MOST_ROUNDS = 120;
    private static final double FREE = 0.01;

    /** What one piece lacks that goes through another: more than any that is hidden. */
    private static final double THROUGH = 5;

    private final List<PlacedPart> placed;
    private final View view;
    private final double step;
    private double cell;
    private List<Silhouette> home;
    private int[] sizes;
    private final Map<String, Double> distances = new LinkedHashMap<>();

    /** How well all is seen, and how much paper that takes. */
    private record Seen(double lacking, double paper) {}

    private TakenApart(List<PlacedPart> placed, Broken broken, View view) {
        this.placed = placed;
        this.view = view;
        List<List<Shown>> shown = placed.stream()
                .map(p -> broken.shortened(Pictures.shown(p, "", Shown.State.PLAIN)))
                .toList();
        double diagonal = shown.stream()
                .flatMap(List::stream)
                .map(s -> s.drawn().bounds())
                .reduce(Bounds::and)
                .orElseThrow()
                .sizes()
                .length();
        step = STEP * diagonal;
        for (PlacedPart part : placed) {
            if (!part.wayOut().stays()) {
                distances.put(group(part), LEAST * diagonal);
            }
        }
        for (int cells : CELLS) {
            cell = diagonal / cells;
            home = shown.stream()
                    .map(one -> Silhouette.of(one.stream().map(Body::of).toList(), view, cell))
                    .toList();
            sizes = home.stream().mapToInt(Silhouette::size).toArray();
            grow();
        }
        shrink();
    }

    /** @param broken where long parts are interrupted */
    static TakenApart of(List<PlacedPart> placed, Broken broken, View view) {
        return new TakenApart(List.copyOf(placed), broken, view);
    }

    private static String group(PlacedPart part) {
        return part.build() + " " + part.solid().part();
    }

    /** How far the piece of that number is from its place. */
    Vector shift(int number) {
        PlacedPart part = placed.get(number);
        return part.wayOut().stays() ? Vector.ZERO : shift(part.wayOut().off()).plus(own(number));
    }

    /** How far it is from what it comes off: along its own way out. */
    Vector own(int number) {
        PlacedPart part = placed.get(number);
        return part.wayOut().along().times(distances.getOrDefault(group(part), 0.0));
    }

    /** The share of each piece's silhouette that is seen. */
    double[] shares() {
        int[] seen = Silhouette.seen(moved());
        double[] shares = new double[seen.length];
        for (int i = 0; i < seen.length; i++) {
            shares[i] = sizes[i] == 0 ? 1 : (double) seen[i] / sizes[i];
        }
        return shares;
    }

    private List<Silhouette> moved() {
        List<Silhouette> moved = new ArrayList<>();
        for (int i = 0; i < home.size(); i++) {
            moved.add(home.get(i).moved(shift(i), view, cell));
        }
        return moved;
    }

    private Seen look() {
        List<Silhouette> moved = moved();
        int[] seen = Silhouette.seen(moved);
        double lacking = THROUGH * collisions();
        for (int i = 0; i < seen.length; i++) {
            lacking += sizes[i] == 0 ? 0 : Math.max(0, SHARE - (double) seen[i] / sizes[i]);
        }
        int wide = moved.stream().mapToInt(s -> s.x() + s.wide()).max().orElse(0)
                - moved.stream().mapToInt(Silhouette::x).min().orElse(0);
        int high = moved.stream().mapToInt(s -> s.y() + s.high()).max().orElse(0)
                - moved.stream().mapToInt(Silhouette::y).min().orElse(0);
        // As upright paper is: what is wide costs more than what is high.
        return new Seen(lacking, Math.max(1.3 * wide, high) + 0.15 * Math.min(1.3 * wide, high));
    }

    /** How many pairs, apart in the build, would go through each other on their ways. */
    private int collisions() {
        List<Vector> shifts = new ArrayList<>();
        for (int i = 0; i < placed.size(); i++) {
            shifts.add(shift(i));
        }
        int count = 0;
        for (int i = 0; i < placed.size(); i++) {
            for (int j = i + 1; j < placed.size(); j++) {
                Bounds a = placed.get(i).solid().bounds();
                Bounds b = placed.get(j).solid().bounds();
                count += BoxSweep.meet(a, b, shifts.get(i).minus(shifts.get(j))) ? 1 : 0;
            }
        }
        return count;
    }

    private void grow() {
        Seen now = look();
        for (int round = 0; round < MOST_ROUNDS && now.lacking() > 1e-9; round++) {
            String best = null;
            double most = 1e-9;
            double to = 0;
            for (Map.Entry<String, Double> one : distances.entrySet()) {
                double before = one.getValue();
                for (int steps : STEPS) {
                    one.setValue(before + steps * step);
                    Seen then = look();
                    double cost = Math.max(0, then.paper() / now.paper() - 1) + FREE * steps;
                    double worth = (now.lacking() - then.lacking()) / cost;
                    if (worth > most) {
                        most = worth;
                        best = one.getKey();
                        to = before + steps * step;
                    }
                }
                one.setValue(before);
            }
            if (best == null) {
                return;
            }
            distances.put(best, to);
            now = look();
        }
    }

    private void shrink() {
        Seen now = look();
        double least = LEAST / STEP * step;
        boolean shrunk = true;
        while (shrunk) {
            shrunk = false;
            for (Map.Entry<String, Double> one : distances.entrySet()) {
                double before = one.getValue();
                one.setValue(Math.max(least, before - step / 2));
                Seen then = look();
                if (one.getValue() < before && then.lacking() <= now.lacking() + 1e-9 && then.paper() <= now.paper()) {
                    now = then;
                    shrunk = true;
                } else {
                    one.setValue(before);
                }
            }
        }
    }

    /** The pieces where they are drawn, each joined to its place by a chain line. */
    Scene scene(Broken broken) {
        List<Shown> shown = new ArrayList<>();
        for (int i = 0; i < placed.size(); i++) {
            Vector by = shift(i);
            broken.shortened(Pictures.shown(placed.get(i), placed.get(i).letter(), Shown.State.PLAIN))
                    .forEach(one -> shown.add(one.pulled(by)));
        }
        List<Scene.Chain> chains = new ArrayList<>();
        Projection projection = new Projection(shown.stream().map(Body::of).toList(), view);
        for (int i = 0; i < placed.size(); i++) {
            if (!placed.get(i).wayOut().stays()) {
                chains.add(chain(i, broken, projection));
            }
        }
        return new Scene(shown, broken, CutFaces.NONE, chains, List.of());
    }

    /** From the corner of a piece whose way back is seen best, nearest to what it comes off. */
    private Scene.Chain chain(int number, Broken broken, Projection projection) {
        PlacedPart part = placed.get(number);
        Vector along = part.wayOut().along();
        PlacedSolid solid = stub(broken, part);
        double back = solid.project(along).least();
        Vector off = shift(part.wayOut().off());
        PlacedSolid base = stub(broken, placed.get(part.wayOut().off()));
        Scene.Chain best = null;
        double most = Double.NEGATIVE_INFINITY;
        for (Vector corner : solid.corners()) {
            if (corner.dot(along) - back < 0.1) {
                Scene.Chain chain = new Scene.Chain(corner.plus(off), corner.plus(shift(number)));
                double worth = seen(projection, chain) - away(corner, base);
                if (worth > most) {
                    most = worth;
                    best = chain;
                }
            }
        }
        return best;
    }

    private static PlacedSolid stub(Broken broken, PlacedPart part) {
        List<Shown> stubs = broken.shortened(Pictures.shown(part, "", Shown.State.PLAIN));
        return stubs.get(stubs.size() - 1).solid();
    }

    private double seen(Projection projection, Scene.Chain chain) {
        return BuildPicture.seen(projection, view, chain).stream()
                .mapToDouble(DrawnLine::length)
                .sum();
    }

    private static double away(Vector point, PlacedSolid solid) {
        Vector low = solid.bounds().low();
        Vector high = solid.bounds().high();
        return point.minus(point.max(low).min(high)).length();
    }
}
