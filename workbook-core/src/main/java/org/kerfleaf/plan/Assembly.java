package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.sketch.Hole;
import org.kerfleaf.sketch.Mount;
import org.kerfleaf.sketch.Origin;
import org.kerfleaf.sketch.Placing;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Where;

/**
 * Everything that is placed, in one frame.
 *
 * <p>What is placed by way of each other is one build. A build whose post stands in a hole has the ground at z = 0; a build
 * that is mounted is moved onto the other: set down upright on top of it, or laid on its slope.
 */
final class Assembly {
    /** From one build to the next where nothing joins them. */
    private static final Length APART = Length.ofMillimetres(300);

    private final Map<Origin, List<Piece>> pieces = new LinkedHashMap<>();
    private final Map<Origin, Origin> build = new LinkedHashMap<>();
    private final Map<Origin, Origin> together = new LinkedHashMap<>();
    private int groupCount;

    private final Sketch sketch;
    private final Sizing sizing;

    Assembly(Sketch sketch, Sizing sizing, Places places, Problems problems) {
        this.sketch = sketch;
        this.sizing = sizing;
        for (Placing placing : sketch.all(Placing.class)) {
            places.of(placing.origin()).ifPresent(found -> pieces.put(placing.origin(), found));
            build.put(placing.origin(), placing.origin());
        }
        for (Placing placing : sketch.all(Placing.class)) {
            for (Where where : placing.where()) {
                Places.others(where).forEach(other -> join(placing.origin(), other));
            }
        }
        sketch.all(Hole.class).forEach(this::intoTheGround);
        for (Mount mount : sketch.all(Mount.class)) {
            problems.trying(mount.origin(), () -> mounted(mount)).ifPresent(this::oneFrame);
        }
        besideEachOther();
    }

    private void oneFrame(Mount mount) {
        List<Origin> onto = mount.onTopOf().map(List::of).orElse(mount.restsOn());
        together.put(root(mount.what()), group(root(onto.get(0))));
    }

    /** The root of the build on which, in the end, this one stands. */
    private Origin group(Origin root) {
        Origin at = root;
        while (together.containsKey(at)) {
            at = together.get(at);
        }
        return at;
    }

    /** Builds that nothing joins stand in a row, so that no two of them are in one place. */
    private void besideEachOther() {
        Map<Origin, List<Piece>> groups = new LinkedHashMap<>();
        all().forEach(p -> groups.computeIfAbsent(group(root(p.placing())), r -> new ArrayList<>())
                .add(p));
        groupCount = groups.size();
        Box before = null;
        for (Map.Entry<Origin, List<Piece>> entry : groups.entrySet()) {
            Box hull = hull(entry.getValue());
            if (before != null) {
                Length right = before.high(Axis.X).plus(APART).minus(hull.low(Axis.X));
                for (Origin placing : List.copyOf(pieces.keySet())) {
                    if (placing.equals(root(placing)) && group(placing).equals(entry.getKey())) {
                        move(placing, Axis.X, right);
                    }
                }
                hull = hull.movedBy(Axis.X, right);
            }
            before = hull;
        }
    }

    /** Whether everything that is placed hangs together, or is mounted on each other. */
    boolean isOne() {
        return groupCount == 1;
    }

    /** The pieces of one placing; none if its place is not known. */
    List<Piece> of(Origin placing) {
        return pieces.getOrDefault(placing, List.of());
    }

    /** All pieces, in document order of their placings. */
    List<Piece> all() {
        return pieces.values().stream().flatMap(List::stream).toList();
    }

    /** Everything that stands in one frame with a placing: its build, what it is mounted on and what is mounted on it. */
    List<Piece> standingWith(Origin placing) {
        Origin group = group(root(placing));
        return all().stream()
                .filter(p -> group(root(p.placing())).equals(group))
                .toList();
    }

    /** The pieces of the build that a placing belongs to. */
    List<Piece> buildOf(Origin placing) {
        Origin root = root(placing);
        return all().stream().filter(p -> root(p.placing()).equals(root)).toList();
    }

    /** The builds, each as its pieces, in document order. */
    List<List<Piece>> builds() {
        Map<Origin, List<Piece>> byRoot = new LinkedHashMap<>();
        all().forEach(p -> byRoot.computeIfAbsent(root(p.placing()), r -> new ArrayList<>())
                .add(p));
        return List.copyOf(byRoot.values());
    }

    /** The number of the build that a placing belongs to, from 0 in document order. */
    int number(Origin placing) {
        return List.copyOf(new TreeSet<>(build.keySet().stream().map(this::root).toList()))
                .indexOf(root(placing));
    }

    private Origin root(Origin placing) {
        Origin at = placing;
        while (!build.getOrDefault(at, at).equals(at)) {
            at = build.get(at);
        }
        return at;
    }

    /** The earlier root stays the root, so that builds keep their document order. */
    private void join(Origin one, Origin other) {
        Origin a = root(one);
        Origin b = root(other);
        if (!a.equals(b)) {
            boolean aFirst = a.compareTo(b) < 0;
            build.put(aFirst ? b : a, aFirst ? a : b);
        }
    }

    private void intoTheGround(Hole hole) {
        Optional<Box> post = hole.post().map(this::of).filter(p -> !p.isEmpty()).map(Assembly::hull);
        post.ifPresent(box -> {
            Length foot = hole.gravel().minus(hole.deep());
            move(hole.post().orElseThrow(), Axis.Z, foot.minus(box.low(Axis.Z)));
        });
    }

    private Mount mounted(Mount mount) {
        List<Origin> onto = mount.onTopOf().map(List::of).orElse(mount.restsOn());
        if (onto.isEmpty()) {
            throw new Unplannable(
                    mount.origin(), "Mounted on what? Say .onTopOf(seatIn), or .restsOn(frontIn, sidesIn).");
        }
        for (Origin on : onto) {
            if (of(mount.what()).isEmpty() || of(on).isEmpty()) {
                throw new Unplannable(mount.origin(), "What is mounted, or what it stands on, has no place yet.");
            }
            if (root(mount.what()).equals(root(on))) {
                throw new Unplannable(
                        mount.origin(), "Both hang together already; mount moves one build onto another.");
            }
        }
        if (mount.onTopOf().isPresent()) {
            stand(mount, onto.get(0));
        } else {
            lie(mount);
        }
        return mount;
    }

    private void stand(Mount mount, Origin onto) {
        Box stands = hull(of(onto));
        Box held = hull(of(mount.what()));
        move(mount.what(), Axis.Z, stands.high(Axis.Z).minus(held.low(Axis.Z)));
        for (Axis axis : List.of(Axis.X, Axis.Y)) {
            move(mount.what(), axis, stands.middle(axis).minus(held.middle(axis)));
        }
    }

    /** Lays a whole build on a slope. */
    private void lie(Mount mount) {
        Support support = Support.of(mount.restsOn(), this::sizedOf, key -> hull(of(key)))
                .orElseThrow(() -> new Unplannable(
                        mount.origin(),
                        "A build rests on nothing with a sloping top. One part .highFrontToBack(...) would carry it."));
        List<Piece> build = buildOf(mount.what());
        Box hull = hull(build);
        Pose there = support.lying(mount, hull);
        Origin root = root(mount.what());
        pieces.replaceAll((key, old) -> root(key).equals(root)
                ? old.stream().map(p -> lain(p, hull, there)).toList()
                : old);
    }

    private Piece lain(Piece piece, Box hull, Pose there) {
        PlacedSolid level = piece.sloping()
                .orElseGet(() -> Bodies.standing(sizing.of(piece.part()).orElseThrow(), piece, hull));
        return Piece.sloping(
                piece.placing(), piece.index(), level.at(level.pose().then(there)));
    }

    private SizedPart sizedOf(Origin key) {
        return sketch.placing(key).flatMap(p -> sizing.of(p.part())).orElseThrow();
    }

    private void move(Origin placing, Axis axis, Length by) {
        Origin root = root(placing);
        pieces.replaceAll((key, old) -> root(key).equals(root)
                ? old.stream().map(p -> p.movedBy(axis, by)).toList()
                : old);
    }

    static Box hull(List<Piece> pieces) {
        return Box.hull(pieces.stream().map(Piece::box).toList());
    }
}
