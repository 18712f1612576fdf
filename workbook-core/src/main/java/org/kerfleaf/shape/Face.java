package org.kerfleaf.shape;

import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * A flat face of a solid, or one facet of a round one.
 *
 * <p>Its name is the part's: INSIDE and OUTSIDE, an edge of the outline (TOP), an edge of an opening (doorway LEFT), a cut
 * (RIDGE), a pocket's floor or wall (rabbet FLOOR, rabbet LEFT). Facets of one arc share a name, and so do the pieces of a face
 * that a groove divides.
 */
public final class Face {
    private final String name;
    private final Pose frame;
    private final Polygon polygon;

    Face(String name, Pose frame, Polygon polygon) {
        this.name = name;
        this.frame = frame;
        this.polygon = polygon;
    }

    public String name() {
        return name;
    }

    /** Where the face lies: its w is the outward normal. */
    public Pose frame() {
        return frame;
    }

    /** The face in its frame's (u, v), in millimetres; not to be changed. */
    public Polygon polygon() {
        return polygon;
    }

    /** Out of the wood, one long. */
    public Vector normal() {
        return frame.w();
    }

    /** Whether it is one facet of an arc. */
    public boolean isFacet() {
        throw new UnsupportedOperationException("not built yet");
    }

    /** All its edges: the outer ring first, then those round what is cut out of it. */
    public List<FaceEdge> edges() {
        throw new UnsupportedOperationException("not built yet");
    }

    /** The corners of its outer ring, counter-clockwise when looked at from outside. */
    public List<Vector> corners() {
        throw new UnsupportedOperationException("not built yet");
    }

    public Bounds bounds() {
        throw new UnsupportedOperationException("not built yet");
    }

    /** The area of the flat polygon, in square millimetres; where arcs count exactly, ask {@link Solid#area}. */
    public double squareMillimetres() {
        return polygon.getArea();
    }
}
