package org.kerfleaf.plan;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Box;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Side;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;

/**
 * The solid of every piece in its place: outline, openings, bevels and rabbets as they were said.
 *
 * <p>A wall's INSIDE is the face that looks to the middle of its build, so left and right, front and back come out as hands of
 * one shape. What lies flat has its upper face as INSIDE.
 */
final class Bodies {
    private final Sketch sketch;
    private final Sizing sizing;
    private final Assembly assembly;
    private final Map<Piece, PlacedSolid> solids = new LinkedHashMap<>();
    private final Map<Glazing, PlacedSolid> panes = new LinkedHashMap<>();

    Bodies(Sketch sketch, Sizing sizing, Assembly assembly, Problems problems) {
        this.sketch = sketch;
        this.sizing = sizing;
        this.assembly = assembly;
        for (List<Piece> build : assembly.builds()) {
            Box hull = Assembly.hull(build);
            for (Piece piece : build) {
                SizedPart part = sizing.of(piece.part()).orElseThrow();
                problems.trying(
                                part.said().origin(),
                                () -> piece.sloping().orElseGet(() -> standing(part, piece, hull)))
                        .ifPresent(solid -> solids.put(piece, solid));
            }
        }
        for (Glazing glazing : sketch.all(Glazing.class)) {
            problems.trying(glazing.origin(), () -> pane(glazing))
                    .flatMap(pane -> pane)
                    .ifPresent(pane -> panes.put(glazing, pane));
        }
    }

    /** The solid of a piece that has one. */
    PlacedSolid of(Piece piece) {
        return solids.get(piece);
    }

    /** Whether a piece has a solid: its shape made sense. */
    boolean has(Piece piece) {
        return solids.containsKey(piece);
    }

    /** How two pieces are to each other. */
    Touching touching(Piece one, Piece other) {
        return Touching.between(of(one), of(other));
    }

    /** Whether a face is one of the two wide faces of its part. */
    static boolean isWide(Face face) {
        return face.name().equals(SheetSide.INSIDE.name()) || face.name().equals(SheetSide.OUTSIDE.name());
    }

    /** How deep the wood of a piece is along a direction. */
    Length depth(Piece piece, Vector direction) {
        PlacedSolid.Reach reach = of(piece).project(direction);
        return Length.ofMillimetres(reach.most() - reach.least());
    }

    /** All pieces with their solids, in the order in which they are placed. */
    Map<Piece, PlacedSolid> all() {
        return solids;
    }

    /** The panes that are glazed into a placed part. */
    Map<Glazing, PlacedSolid> panes() {
        return panes;
    }

    /** The solid of a piece that stands square in a build of that hull. */
    static PlacedSolid standing(SizedPart part, Piece piece, Box hull) {
        return part.isTurnedWhenPlaced() ? board(part, piece, hull) : panel(part, piece, hull);
    }

    // ---- panels --------------------------------------------------------------------------------------------------

    private static PlacedSolid panel(SizedPart part, Piece piece, Box hull) {
        Axis through = part.standing().through();
        boolean insideIsHigh = piece.box().middle(through).isShorterThan(hull.middle(through));
        Vector u;
        Vector v;
        boolean mirrored;
        switch (part.standing()) {
            case FACES_FRONT -> {
                u = insideIsHigh ? Vector.X.negated() : Vector.X;
                v = Vector.Z;
                mirrored = insideIsHigh;
            }
            case FACES_SIDE -> {
                u = insideIsHigh ? Vector.Y : Vector.Y.negated();
                v = Vector.Z;
                mirrored = !insideIsHigh;
            }
            default -> {
                u = Vector.X;
                v = Vector.Y;
                mirrored = false;
            }
        }
        Solid solid = mirrored ? part.solid().mirrored() : part.solid();
        return new PlacedSolid(part.said().name(), piece.index(), solid, standing(piece.box(), u, v));
    }

    /** A frame with these two directions whose first octant is the box. */
    private static Pose standing(Box box, Vector u, Vector v) {
        Vector sum = u.plus(v).plus(u.cross(v));
        return Pose.of(
                new Vector(end(box, Axis.X, sum.x()), end(box, Axis.Y, sum.y()), end(box, Axis.Z, sum.z())), u, v);
    }

    private static double end(Box box, Axis axis, double direction) {
        return (direction > 0 ? box.low(axis) : box.high(axis)).inMillimetres();
    }

    // ---- boards --------------------------------------------------------------------------------------------------

    /** A board's INSIDE is its upper face where it lies flat, else the face that looks to the middle of its build. */
    private static PlacedSolid board(SizedPart part, Piece piece, Box hull) {
        Axis run = along(piece.box(), part.across().value(), null);
        Axis wide = along(piece.box(), part.up().value(), run);
        Vector u = run.unit();
        Vector v = wide.unit();
        Axis through = through(run, wide);
        boolean insideIsHigh = through == Axis.Z || piece.box().middle(through).isShorterThan(hull.middle(through));
        boolean isHigh = u.cross(v).dot(through.unit()) > 0;
        boolean mirrored = isHigh != insideIsHigh;
        Solid solid = mirrored ? part.solid().mirrored() : part.solid();
        Pose pose = standing(piece.box(), mirrored ? u.negated() : u, v);
        return new PlacedSolid(part.said().name(), piece.index(), solid, pose);
    }

    private static Axis through(Axis run, Axis wide) {
        return Arrays.stream(Axis.values())
                .filter(axis -> axis != run && axis != wide)
                .findFirst()
                .orElseThrow();
    }

    /** The axis on which the box has this extent, other than one already taken. */
    private static Axis along(Box box, Length extent, Axis taken) {
        for (Axis axis : Axis.values()) {
            if (axis != taken && box.extent(axis).equals(extent)) {
                return axis;
            }
        }
        throw new IllegalStateException("A box of none of its board's sizes.");
    }

    // ---- panes ---------------------------------------------------------------------------------------------------

    /** A pane in the rabbet of the part it is glazed into, in the middle of the opening, its face on the rabbet's floor. */
    private Optional<PlacedSolid> pane(Glazing glazing) {
        Optional<SizedPart> pane = sizing.of(glazing.pane());
        Optional<Trait.FitsOpening> fits = pane.flatMap(p -> p.said().trait(Trait.FitsOpening.class));
        List<Piece> into = glazing.into().stream()
                .flatMap(key -> assembly.of(key).stream())
                .toList();
        if (pane.isPresent()
                && fits.isEmpty()
                && !into.isEmpty()
                && into.stream().allMatch(this::has)) {
            return Optional.of(inFrame(pane.get(), into));
        }
        if (fits.isEmpty() || into.isEmpty() || !has(into.get(0))) {
            return Optional.empty();
        }
        PlacedSolid frame = of(into.get(0));
        Optional<Trait.RabbetIn> rabbet = sketch.part(frame.part()).stream()
                .flatMap(part -> part.traits(Trait.RabbetIn.class).stream())
                .filter(r -> r.opening().equals(fits.get().opening().opening()))
                .findFirst();
        return rabbet.map(step -> {
            SizedPart sized = pane.orElseThrow();
            Vector middle =
                    frame.solid().outline().opening(step.opening()).bounds().middle();
            Length floor = step.face() == Side.INSIDE
                    ? frame.solid().thickness().minus(step.deep())
                    : step.deep().minus(sized.thickness().value());
            Vector corner = new Vector(
                    middle.x() - sized.across().value().inMillimetres() / 2,
                    middle.y() - sized.up().value().inMillimetres() / 2,
                    floor.inMillimetres());
            Pose pose = new Pose(
                    frame.pose().toWorld(corner),
                    frame.pose().u(),
                    frame.pose().v(),
                    frame.pose().w());
            return new PlacedSolid(sized.said().name(), 0, sized.solid(), pose);
        });
    }

    /** A pane in the rabbet that is cut round a frame of boards once it is together; the boards lose the rabbet's wood. */
    private PlacedSolid inFrame(SizedPart pane, List<Piece> boards) {
        Frame frame = Frame.of(boards.stream().map(this::of).toList());
        Panes.Pocket pocket = sizing.pocketOf(pane.said()).orElseThrow();
        Length deep = pane.said().trait(Trait.FitsRabbet.class).orElseThrow().rabbetDeep();
        for (Piece board : boards) {
            solids.put(
                    board,
                    frame.rabbeted(of(board), "rabbet for " + pane.said().name(), pocket.wide(), pocket.high(), deep));
        }
        Pose pose = frame.lying(pane.across().value(), pane.up().value(), deep);
        return new PlacedSolid(pane.said().name(), 0, pane.solid(), pose);
    }
}
