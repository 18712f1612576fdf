package org.kerfleaf.export.drawing;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.Pose;
import org.kerfleaf.shape.Vector;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * The faces that lie in the plane of a slice, each hatched so that it stands off from its neighbours. What is too thin for hatching
 * and all glass is filled black (ISO 128-3, thin sections), with a white line between two of that kind.
 */
final class CutFaces {
    /** Faces so near to the plane lie in it, in millimetres. */
    private static final double IN_PLANE = 0.02;

    /** Faces nearer than this are neighbours, in millimetres. */
    private static final double NEIGHBOURS = 1;

    /** Narrower than this on paper is too thin for hatching. */
    private static final double THIN = 1.1;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** None. */
    static final CutFaces NONE = new CutFaces();

    /** One face in the plane, in millimetres of the view. */
    private record Cut(String piece, boolean glass, double[][] rings, Polygon polygon) {
        double wide() {
            return 2 * polygon.getArea() / polygon.getLength();
        }
    }

    private final List<Cut> cuts = new ArrayList<>();
    private final Map<String, Integer> kinds = new LinkedHashMap<>();

    private CutFaces() {}

    /** @param level of the plane, along the way to the eye from the build's origin */
    static CutFaces of(List<Shown> shown, View view, double level) {
        CutFaces all = new CutFaces();
        for (Shown one : shown) {
            for (Face face : one.drawn().faces()) {
                boolean toEye = face.normal().dot(view.toEye()) > 1 - 1e-9;
                if (toEye && Math.abs(face.frame().origin().dot(view.toEye()) - level) < IN_PLANE) {
                    all.cuts.add(cut(one, face, view));
                }
            }
        }
        all.cuts.forEach(cut -> all.kinds.computeIfAbsent(cut.piece(), all::freeKind));
        return all;
    }

    private static Cut cut(Shown shown, Face face, View view) {
        Polygon polygon = face.polygon();
        double[][] rings = new double[1 + polygon.getNumInteriorRing()][];
        rings[0] = ring(face.frame(), polygon.getExteriorRing(), view);
        for (int i = 1; i < rings.length; i++) {
            rings[i] = ring(face.frame(), polygon.getInteriorRingN(i - 1), view);
        }
        Coordinate[] shell = new Coordinate[rings[0].length / 2 + 1];
        for (int i = 0; i < shell.length; i++) {
            int at = 2 * i % rings[0].length;
            shell[i] = new Coordinate(rings[0][at], rings[0][at + 1]);
        }
        String piece = shown.solid().part() + "\n" + shown.solid().piece();
        return new Cut(piece, shown.seeThrough(), rings, FACTORY.createPolygon(shell));
    }

    private static double[] ring(Pose frame, LineString ring, View view) {
        double[] xy = new double[2 * (ring.getNumPoints() - 1)];
        for (int i = 0; i < xy.length; i += 2) {
            Coordinate c = ring.getCoordinateN(i / 2);
            Vector at = frame.toWorld(new Vector(c.x, c.y, 0));
            xy[i] = view.x(at);
            xy[i + 1] = view.y(at);
        }
        return xy;
    }

    /** The first kind of hatching that no neighbour has. */
    private int freeKind(String piece) {
        boolean[] taken = new boolean[Hatching.kinds()];
        for (Cut own : cuts) {
            for (Cut other : cuts) {
                Integer kind = kinds.get(other.piece());
                if (own.piece().equals(piece)
                        && kind != null
                        && own.polygon().isWithinDistance(other.polygon(), NEIGHBOURS)) {
                    taken[kind] = true;
                }
            }
        }
        for (int kind = 0; kind < taken.length; kind++) {
            if (!taken[kind]) {
                return kind;
            }
        }
        return 0;
    }

    /** The kinds of hatching that a part's pieces have. */
    Set<Integer> kinds(String part) {
        Set<Integer> found = new TreeSet<>();
        kinds.forEach((piece, kind) -> {
            if (piece.startsWith(part + "\n")) {
                found.add(kind);
            }
        });
        return found;
    }

    boolean isEmpty() {
        return cuts.isEmpty();
    }

    /** The area of all of them, in square millimetres of the build. */
    double area() {
        return cuts.stream()
                .mapToDouble(cut -> {
                    double area = 0;
                    for (int i = 0; i < cut.rings().length; i++) {
                        area += (i == 0 ? 1 : -1) * Math.abs(twiceArea(cut.rings()[i])) / 2;
                    }
                    return area;
                })
                .sum();
    }

    private static double twiceArea(double[] ring) {
        double sum = 0;
        for (int i = 0; i < ring.length; i += 2) {
            int next = (i + 2) % ring.length;
            sum += ring[i] * ring[next + 1] - ring[next] * ring[i + 1];
        }
        return sum;
    }

    /** @param ends the edges of broken ends, which are drawn as such */
    void paint(Ink ink, OnPaper paper, List<double[]> ends, double outline) {
        for (Cut cut : cuts) {
            Path2D shape = new Path2D.Double(Path2D.WIND_EVEN_ODD);
            double[][] rings = new double[cut.rings().length][];
            for (int i = 0; i < rings.length; i++) {
                rings[i] = on(paper, cut.rings()[i]);
                shape.append(Ink.polygon(rings[i]), false);
            }
            if (isBlack(cut, paper)) {
                ink.fill(shape, Ink.BLACK);
                boolean beside = cuts.stream()
                        .anyMatch(other -> other != cut
                                && isBlack(other, paper)
                                && other.polygon().isWithinDistance(cut.polygon(), NEIGHBOURS));
                ink.stroke(shape, beside ? Ink.WHITE : Ink.BLACK, beside ? Ink.NARROW : Ink.FINE);
            } else {
                ink.fill(shape, Ink.WHITE);
                ink.stroke(Hatching.kind(kinds.get(cut.piece())).within(rings), Ink.BLACK, Ink.FINE);
                for (double[] ring : cut.rings()) {
                    outline(ink, ring, paper, ends, outline);
                }
            }
        }
    }

    private static void outline(Ink ink, double[] ring, OnPaper paper, List<double[]> ends, double width) {
        for (int i = 0; i < ring.length; i += 2) {
            int next = (i + 2) % ring.length;
            double[] on = on(paper, new double[] {ring[i], ring[i + 1], ring[next], ring[next + 1]});
            if (Broken.isEnd(ends, ring[i], ring[i + 1], ring[next], ring[next + 1])) {
                ink.strokeRound(Broken.zigzag(on, true), Ink.BLACK, Ink.NARROW);
            } else {
                ink.strokeRound(Ink.open(on), Ink.BLACK, width);
            }
        }
    }

    private static boolean isBlack(Cut cut, OnPaper paper) {
        return cut.glass() || cut.wide() / paper.times() < THIN;
    }

    private static double[] on(OnPaper paper, double[] ring) {
        double[] xy = new double[ring.length];
        for (int i = 0; i < xy.length; i += 2) {
            xy[i] = paper.x(ring[i]);
            xy[i + 1] = paper.y(ring[i + 1]);
        }
        return xy;
    }
}
