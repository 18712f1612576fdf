package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
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
    private final int group;
    private final double stretch;
    private final EdgeMarks marks;
    private final Pose placed;
    // Worked out when first asked for; two threads may both do it, with the same result.
    private volatile List<FaceEdge> edges;
    private volatile List<Vector> corners;
    private volatile Bounds bounds;

    /**
     * @param group the arc it is a facet of, 0 for none
     * @param stretch how much longer the arc is than the facet
     */
    Face(String name, Pose frame, Polygon polygon, int group, double stretch, EdgeMarks marks) {
        this(name, frame, polygon, group, stretch, marks, Pose.HOME);
    }

    private Face(String name, Pose frame, Polygon polygon, int group, double stretch, EdgeMarks marks, Pose placed) {
        this.name = name;
        this.frame = frame;
        this.polygon = polygon;
        this.group = group;
        this.stretch = stretch;
        this.marks = marks;
        this.placed = placed;
    }

    /** This face where the part's frame stands in that pose. */
    Face placedAt(Pose pose) {
        return new Face(name, frame.then(pose), polygon, group, stretch, marks, placed.then(pose));
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

    /** The arc it is a facet of, from 1 within the part; 0 for a flat face. */
    public int group() {
        return group;
    }

    /** Whether it is one facet of an arc. */
    public boolean isFacet() {
        return group > 0;
    }

    /** All its edges: the outer ring first, then those round what is cut out of it; wood on their left, seen from outside. */
    public List<FaceEdge> edges() {
        List<FaceEdge> found = edges;
        if (found == null) {
            found = new ArrayList<>();
            for (List<Coordinate> ring : Flat.rings(polygon)) {
                for (int i = 0; i < ring.size(); i++) {
                    Vector from = point(ring.get(i));
                    Vector to = point(ring.get((i + 1) % ring.size()));
                    FaceEdge mark = marks.marked(placed.toLocal(from), placed.toLocal(to));
                    found.add(new FaceEdge(from, to, mark.group(), mark.smooth()));
                }
            }
            found = List.copyOf(found);
            edges = found;
        }
        return found;
    }

    /** The corners of its outer ring, counter-clockwise when looked at from outside. */
    public List<Vector> corners() {
        List<Vector> found = corners;
        if (found == null) {
            found = Flat.rings(polygon).get(0).stream().map(this::point).toList();
            corners = found;
        }
        return found;
    }

    public Bounds bounds() {
        Bounds found = bounds;
        if (found == null) {
            found = Bounds.of(corners());
            bounds = found;
        }
        return found;
    }

    /** The area of the flat polygon, in square millimetres; where arcs count exactly, ask {@link Solid#area}. */
    public double squareMillimetres() {
        return polygon.getArea();
    }

    /** How far a point is in front of the face's plane, in millimetres; negative behind it. */
    public double inFront(Vector point) {
        return point.minus(frame.origin()).dot(frame.w());
    }

    double stretch() {
        return stretch;
    }

    private Vector point(Coordinate at) {
        return frame.toWorld(new Vector(at.x, at.y, 0));
    }

    @Override
    public String toString() {
        return name + " " + frame.w();
    }
}
