package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.shape.FaceEdge;
import org.kerfleaf.shape.Vector;

/** All faces and edges of some bodies in one view. */
final class Projection {
    /** Ends nearer than this are one, in millimetres. */
    private static final double SAME = 1e-3;

    private final List<Body> bodies;
    private final View view;
    private final Vector eye;
    private final List<ViewFace> faces = new ArrayList<>();
    private final List<Edge> edges = new ArrayList<>();

    /**
     * An edge in the view.
     *
     * @param nearFrom how near its start is; larger is nearer
     * @param faced whether a face toward the eye ends at it
     */
    record Edge(
            int body,
            double x1,
            double y1,
            double nearFrom,
            double x2,
            double y2,
            double nearTo,
            boolean faced,
            boolean arc) {}

    Projection(List<Body> bodies, View view) {
        this.bodies = List.copyOf(bodies);
        this.view = view;
        eye = view.toEye();
        for (int i = 0; i < bodies.size(); i++) {
            project(i);
        }
    }

    private void project(int number) {
        Map<Key, Use> uses = new LinkedHashMap<>();
        for (Body.Side side : bodies.get(number).sides()) {
            ViewFace face = new ViewFace(number, side, view, eye);
            faces.add(face);
            for (FaceEdge edge : side.edges()) {
                uses.computeIfAbsent(Key.of(edge), key -> new Use(edge)).add(edge, face.isFront());
            }
        }
        for (Use use : uses.values()) {
            if (use.isDrawn()) {
                add(number, use);
            }
        }
    }

    private void add(int number, Use use) {
        Vector from = use.edge.from();
        Vector to = use.edge.to();
        edges.add(new Edge(
                number,
                view.x(from),
                view.y(from),
                eye.dot(from),
                view.x(to),
                view.y(to),
                eye.dot(to),
                use.front,
                use.edge.group() > 0));
    }

    List<Body> bodies() {
        return bodies;
    }

    Vector eye() {
        return eye;
    }

    List<ViewFace> faces() {
        return faces;
    }

    List<Edge> edges() {
        return edges;
    }

    double minX() {
        return faces.stream().mapToDouble(ViewFace::minX).min().orElse(0);
    }

    double minY() {
        return faces.stream().mapToDouble(ViewFace::minY).min().orElse(0);
    }

    double maxX() {
        return faces.stream().mapToDouble(ViewFace::maxX).max().orElse(0);
    }

    double maxY() {
        return faces.stream().mapToDouble(ViewFace::maxY).max().orElse(0);
    }

    /** Both faces that share an edge, as far as it is the same edge for both. */
    private static final class Use {
        private final FaceEdge edge;
        private boolean smooth = true;
        private boolean front;
        private boolean back;

        Use(FaceEdge edge) {
            this.edge = edge;
        }

        void add(FaceEdge again, boolean isFront) {
            smooth &= again.smooth();
            front |= isFront;
            back |= !isFront;
        }

        /** Where a round surface goes on, only its silhouette is a line. */
        boolean isDrawn() {
            return !smooth || front && back;
        }
    }

    private record Key(long a, long b, long c, long d, long e, long f) {
        static Key of(FaceEdge edge) {
            Key there = of(edge.from(), edge.to());
            Key back = of(edge.to(), edge.from());
            return there.isBefore(back) ? there : back;
        }

        private static Key of(Vector p, Vector q) {
            return new Key(grid(p.x()), grid(p.y()), grid(p.z()), grid(q.x()), grid(q.y()), grid(q.z()));
        }

        private boolean isBefore(Key other) {
            return a != other.a ? a < other.a : b != other.b ? b < other.b : c <= other.c;
        }

        private static long grid(double millimetres) {
            return Math.round(millimetres / SAME);
        }
    }
}
