package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.shape.Rings.Chord;
import org.locationtech.jts.geom.Polygon;

/**
 * The faces of a solid, each worked out in its own plane from the definition.
 *
 * <p>Sheet faces and pocket floors are the outline at their w, clipped by the cuts there, less pockets. Walls are in
 * {@link WallFaces}. A cut face is worked out in (u, v), where its w is a linear function, and then lifted into its plane.
 */
final class SolidFaces {
    /** Two planes nearer than this are one, in millimetres. */
    private static final double NEAR = 1e-9;

    private final Solid solid;
    private final Section section;
    private final EdgeMarks marks;
    private final double thickness;
    private final List<Face> faces = new ArrayList<>();

    private SolidFaces(Solid solid, Section section) {
        this.solid = solid;
        this.section = section;
        this.marks = new EdgeMarks(section);
        this.thickness = solid.thickness().inMillimetres();
    }

    static List<Face> of(Solid solid, Section section) {
        SolidFaces run = new SolidFaces(solid, section);
        run.sheetFace(SheetSide.OUTSIDE);
        run.sheetFace(SheetSide.INSIDE);
        WallFaces walls = new WallFaces(solid, section);
        walls.ofOutline((chord, frame, polygon) -> run.add(chord.name(), frame, polygon, chord));
        for (Cut cut : solid.cuts()) {
            if (cut.isSquare()) {
                walls.ofCut(cut, (chord, frame, polygon) -> run.add(chord.name(), frame, polygon, chord));
            } else {
                run.cutFace(cut);
            }
        }
        for (int i = 0; i < solid.pockets().size(); i++) {
            run.pocketFloor(i);
            walls.ofPocket(i, (chord, frame, polygon) -> run.add(chord.name(), frame, polygon, chord));
        }
        return List.copyOf(run.faces);
    }

    private void add(String name, Pose frame, Polygon polygon, Chord chord) {
        faces.add(new Face(name, frame, polygon, chord.group(), chord.stretch(), marks));
    }

    private void sheetFace(SheetSide side) {
        double w = side == SheetSide.INSIDE ? thickness : 0;
        List<Polygon> left = atHeight(List.of(section.sheet), w);
        for (int i = 0; i < solid.pockets().size(); i++) {
            if (solid.pockets().get(i).side() == side) {
                left = Flat.without(left, section.pocketShapes.get(i));
            }
        }
        level(side.name(), left, w, side == SheetSide.INSIDE);
    }

    private void pocketFloor(int index) {
        Pocket pocket = solid.pockets().get(index);
        double w = section.floor(index);
        List<Polygon> left = atHeight(Flat.shared(section.sheet, section.pocketShapes.get(index)), w);
        for (int i = 0; i < solid.pockets().size(); i++) {
            if (i != index && takesFloor(i, index)) {
                left = Flat.without(left, section.pocketShapes.get(i));
            }
        }
        level(pocket.name() + " FLOOR", left, w, pocket.side() == SheetSide.INSIDE);
    }

    /** Whether a pocket takes away another's floor: it is deeper, as deep and earlier, or comes through from the other side. */
    private boolean takesFloor(int other, int index) {
        if (solid.pockets().get(other).side() == solid.pockets().get(index).side()) {
            double deeper = section.depth(other) - section.depth(index);
            return deeper > 0 || deeper == 0 && other < index;
        }
        return section.depth(other) + section.depth(index) > thickness - Section.NOTHING;
    }

    private List<Polygon> atHeight(List<Polygon> polygons, double w) {
        List<Polygon> left = polygons;
        for (Cut cut : solid.cuts()) {
            left = within(
                    left,
                    cut.normal().x(),
                    cut.normal().y(),
                    cut.offset() - cut.normal().z() * w);
        }
        return left;
    }

    private void level(String name, List<Polygon> polygons, double w, boolean up) {
        Vector origin = new Vector(0, 0, w);
        Pose frame = up ? Pose.of(origin, Vector.X, Vector.Y) : Pose.of(origin, Vector.X.negated(), Vector.Y);
        for (Polygon polygon : polygons) {
            Polygon seen = up ? polygon : Flat.mapped(polygon, -1, 0, 0, 0, 1, 0);
            faces.add(new Face(name, frame, seen, 0, 1, marks));
        }
    }

    private void cutFace(Cut cut) {
        Vector n = cut.normal();
        // The cut's w over (u, v) is a + b·u + c·v.
        double a = cut.offset() / n.z();
        double b = -n.x() / n.z();
        double c = -n.y() / n.z();
        List<Polygon> left = within(List.of(section.sheet), b, c, thickness - a);
        left = within(left, -b, -c, a);
        int index = solid.cuts().indexOf(cut);
        for (int i = 0; i < solid.cuts().size(); i++) {
            Cut other = solid.cuts().get(i);
            if (i != index) {
                Vector o = other.normal();
                double nu = o.x() + o.z() * b;
                double nv = o.y() + o.z() * c;
                // Of two cuts in one plane the first keeps the face.
                double margin = i < index && isLevel(nu, nv) ? 2 * NEAR : 0;
                left = within(left, nu, nv, other.offset() - o.z() * a - margin);
            }
        }
        for (int i = 0; i < solid.pockets().size(); i++) {
            boolean inside = solid.pockets().get(i).side() == SheetSide.INSIDE;
            double floor = section.floor(i);
            List<Polygon> taken = List.of(section.pocketShapes.get(i));
            taken = inside ? within(taken, -b, -c, a - floor) : within(taken, b, c, floor - a);
            for (Polygon polygon : taken) {
                left = Flat.without(left, polygon);
            }
        }
        Pose frame = Pose.facing(n.times(cut.offset()), n);
        for (Polygon polygon : left) {
            faces.add(new Face(cut.name(), frame, lifted(polygon, frame, a, b, c), 0, 1, marks));
        }
    }

    /** Keeps where nu·u + nv·v <= d; where the line has no direction, all or nothing. */
    static List<Polygon> within(List<Polygon> polygons, double nu, double nv, double d) {
        if (isLevel(nu, nv)) {
            return d >= -NEAR ? polygons : List.of();
        }
        return Flat.clipped(polygons, new HalfPlane(nu, nv, d));
    }

    private static boolean isLevel(double nu, double nv) {
        return StrictMath.hypot(nu, nv) < 1e-9;
    }

    private static Polygon lifted(Polygon polygon, Pose frame, double a, double b, double c) {
        Vector o = frame.toLocal(new Vector(0, 0, a));
        Vector u = new Vector(1, 0, b);
        Vector v = new Vector(0, 1, c);
        return Flat.mapped(
                polygon,
                frame.u().dot(u),
                frame.u().dot(v),
                o.x(),
                frame.v().dot(u),
                frame.v().dot(v),
                o.y());
    }
}
