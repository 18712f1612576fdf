package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.kerfleaf.joint.GuideLine;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;
import org.locationtech.jts.geom.Envelope;

/** One face of one piece with what is marked on it, in the frame in which it lies on the bench. */
final class MarkedFace {
    /** Marks nearer than this are the same, in millimetres. */
    private static final double SAME = 0.02;

    private final Piece piece;
    private final Solid drawn;
    private final SheetSide up;
    private final boolean edge;
    /** From the build to the drawing. */
    private final Pose bench;

    private final List<GuideLine> guides = new ArrayList<>();
    private final List<Vector> holes = new ArrayList<>();
    private final Set<String> drilling = new LinkedHashSet<>();

    private MarkedFace(Piece piece, Solid drawn, SheetSide up, boolean edge, Pose bench) {
        this.piece = piece;
        this.drawn = drawn;
        this.up = up;
        this.edge = edge;
        this.bench = bench;
    }

    /** One of the wide faces. */
    static MarkedFace wide(Piece piece, PlacedSolid solid, SheetSide up) {
        Pose lying = Marking.lying(solid.solid(), up);
        Pose bench = Pose.of(
                        lying.toLocal(Vector.ZERO),
                        new Vector(lying.u().x(), lying.v().x(), lying.w().x()),
                        new Vector(lying.u().y(), lying.v().y(), lying.w().y()))
                .then(solid.pose());
        return new MarkedFace(piece, solid.solid(), up, false, bench);
    }

    /** A narrow face, its longer side level. */
    static MarkedFace edge(Piece piece, PlacedSolid solid, Face face) {
        Envelope box = face.polygon().getEnvelopeInternal();
        boolean level = box.getWidth() >= box.getHeight();
        Pose at = face.frame();
        Vector corner = at.toWorld(new Vector(box.getMinX(), level ? box.getMinY() : box.getMaxY(), 0));
        Pose bench =
                level ? Pose.of(corner, at.u(), at.v()) : Pose.of(corner, at.v().negated(), at.u());
        PlacedSolid.Reach reach = solid.project(face.normal());
        Solid drawn = Solid.of(
                Outline.rectangle(
                        Length.ofMillimetres(Math.max(box.getWidth(), box.getHeight())),
                        Length.ofMillimetres(Math.min(box.getWidth(), box.getHeight()))),
                Length.ofMillimetres(reach.most() - reach.least()));
        return new MarkedFace(piece, drawn, SheetSide.INSIDE, true, bench);
    }

    Piece piece() {
        return piece;
    }

    Solid drawn() {
        return drawn;
    }

    SheetSide up() {
        return up;
    }

    boolean isEdge() {
        return edge;
    }

    List<GuideLine> guides() {
        return guides;
    }

    List<Vector> holes() {
        return holes;
    }

    Set<String> drilling() {
        return drilling;
    }

    /** Where in the build the drawing's right lies. */
    Vector right() {
        return bench.u();
    }

    /** Where in the build the drawing's upper edge lies. */
    Vector upper() {
        return bench.v();
    }

    /** Where in the build the face looks. */
    Vector out() {
        return bench.w();
    }

    void guide(Vector from, Vector to, String words) {
        guides.add(new GuideLine(flat(from), flat(to), words));
    }

    void hole(Vector head, String drill) {
        holes.add(flat(head));
        drilling.add(drill);
    }

    private Vector flat(Vector point) {
        Vector local = bench.toLocal(point);
        return new Vector(local.x(), local.y(), 0);
    }

    /** Whether one drawing does for both. */
    boolean isLike(MarkedFace other) {
        return isLike(other, false);
    }

    /** Whether the other is this with left and right exchanged. */
    boolean isMirrorOf(MarkedFace other) {
        return isLike(other, true);
    }

    private boolean isLike(MarkedFace other, boolean mirrored) {
        double sum = drawn.outline().bounds().low().x()
                + drawn.outline().bounds().high().x();
        return edge == other.edge
                && holes.size() == other.holes.size()
                && guides.size() == other.guides.size()
                && drilling.equals(other.drilling)
                && areSame(corners(), other.corners(), mirrored, sum)
                && areSame(holes, other.holes, mirrored, sum)
                && areSame(middles(), other.middles(), mirrored, sum);
    }

    private List<Vector> corners() {
        Pose lying = Marking.lying(drawn, up);
        return drawn.corners().stream().map(lying::toWorld).toList();
    }

    private List<Vector> middles() {
        return guides.stream().map(g -> g.from().plus(g.to()).times(0.5)).toList();
    }

    private static boolean areSame(List<Vector> some, List<Vector> others, boolean mirrored, double sum) {
        return some.size() == others.size()
                && some.stream()
                        .map(p -> mirrored ? new Vector(sum - p.x(), p.y(), p.z()) : p)
                        .allMatch(p -> others.stream().anyMatch(q -> q.minus(p).length() < SAME));
    }
}
