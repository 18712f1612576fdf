package org.kerfleaf.shape;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.kerfleaf.measure.Volume;

/** A piece of a part where it stands in the build: x to the right, y to the back, z up, standing before the door. */
public final class PlacedSolid {
    /** The name of the face that a drawing's slice leaves. */
    public static final String SLICE = "slice";

    private final String part;
    private final int piece;
    private final Solid solid;
    private final Pose pose;
    // Worked out when first asked for; two threads may both do it, with the same result.
    private volatile List<Face> faces;
    private volatile List<Vector> corners;
    private volatile Bounds bounds;

    /**
     * @param part its name
     * @param piece which of the equals its placing puts there, from 0
     * @param pose where the solid's frame stands in the build
     */
    public PlacedSolid(String part, int piece, Solid solid, Pose pose) {
        this.part = part;
        this.piece = piece;
        this.solid = solid;
        this.pose = pose;
    }

    public String part() {
        return part;
    }

    public int piece() {
        return piece;
    }

    public Solid solid() {
        return solid;
    }

    public Pose pose() {
        return pose;
    }

    /** The same piece elsewhere. */
    public PlacedSolid at(Pose elsewhere) {
        return new PlacedSolid(part, piece, solid, elsewhere);
    }

    /**
     * What of it lies behind a plane of the build: one more cut, whose face has the name {@link #SLICE}. The piece itself if all of
     * it does.
     *
     * @param normal one long, toward what is taken away
     * @param offset of the plane along its normal, from the build's origin, in millimetres
     * @return empty if nothing of it lies behind the plane
     */
    public Optional<PlacedSolid> behind(Vector normal, double offset) {
        Reach reach = project(normal);
        if (reach.most() <= offset + Touching.TOLERANCE.inMillimetres()) {
            return Optional.of(this);
        }
        if (reach.least() >= offset - Touching.TOLERANCE.inMillimetres()) {
            return Optional.empty();
        }
        Vector local = new Vector(normal.dot(pose.u()), normal.dot(pose.v()), normal.dot(pose.w()));
        Cut cut = new Cut(SLICE, local.normalised(), offset - normal.dot(pose.origin()));
        return Optional.of(new PlacedSolid(part, piece, solid.cut(cut), pose));
    }

    /** Its faces in the build, in the order of the solid's. */
    public List<Face> faces() {
        List<Face> found = faces;
        if (found == null) {
            found = solid.faces().stream().map(f -> f.placedAt(pose)).toList();
            faces = found;
        }
        return found;
    }

    /** The flat face of that name in the build. @throws IllegalArgumentException if there is none or it is round */
    public Face face(String name) {
        return solid.face(name).placedAt(pose);
    }

    public Bounds bounds() {
        Bounds found = bounds;
        if (found == null) {
            found = faces().stream().map(Face::bounds).reduce(Bounds::and).orElseThrow();
            bounds = found;
        }
        return found;
    }

    /** Its corners in the build, each once. */
    public List<Vector> corners() {
        List<Vector> found = corners;
        if (found == null) {
            found = solid.corners().stream().map(pose::toWorld).toList();
            corners = found;
        }
        return found;
    }

    /** The faces that have all of the solid behind them, in the build. */
    List<Face> hullFaces() {
        return IntStream.of(solid.hullFaces()).mapToObj(faces()::get).toList();
    }

    public Volume volume() {
        return solid.volume();
    }

    public Vector centroid() {
        return pose.toWorld(solid.centroid());
    }

    /** Whether a point of the build is in its wood, not on a face. */
    public boolean holds(Vector point) {
        return solid.holds(pose.toLocal(point));
    }

    /** How far it reaches along a direction. @param direction one long */
    public Reach project(Vector direction) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Vector corner : corners()) {
            least = Math.min(least, corner.dot(direction));
            most = Math.max(most, corner.dot(direction));
        }
        return new Reach(least, most);
    }

    /** From least to most along a direction, in millimetres from the build's origin. */
    public record Reach(double least, double most) {}

    @Override
    public boolean equals(Object other) {
        return this == other
                || other instanceof PlacedSolid that
                        && piece == that.piece
                        && part.equals(that.part)
                        && pose.equals(that.pose)
                        && solid.equals(that.solid);
    }

    @Override
    public int hashCode() {
        return part.hashCode() * 31 + piece;
    }

    /** {@code Side 2}. */
    @Override
    public String toString() {
        return part + " " + piece;
    }
}
