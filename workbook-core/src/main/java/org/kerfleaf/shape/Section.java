package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.shape.Rings.Chord;
import org.locationtech.jts.geom.Polygon;

/**
 * A solid's rings as chords, and the wood over each point of the sheet: there it is one interval of w, for pockets come from
 * the two faces only.
 */
final class Section {
    /** How far a chord may lie from its arc, in millimetres: at a scale of 1:2 no pen shows it. */
    static final double SAGITTA = 0.1;

    /** Wood thinner than this is rounding: half a nanometre. */
    static final double NOTHING = 5e-7;

    private final double thickness;
    private final List<Pocket> pockets;

    /** The outer ring counter-clockwise and the openings clockwise: wood on the left. */
    final List<Chord> walls = new ArrayList<>();

    /** Each pocket's ring, counter-clockwise. */
    final List<List<Chord>> pocketRings = new ArrayList<>();

    final Polygon sheet;
    final List<Polygon> pocketShapes;

    Section(Solid solid) {
        thickness = solid.thickness().inMillimetres();
        pockets = solid.pockets();
        Outline outline = solid.outline();
        walls.addAll(Rings.chords(outline, SAGITTA, "", 0));
        int groups = last(walls);
        for (String opening : outline.openings()) {
            List<Chord> ring = Rings.chords(outline.opening(opening), SAGITTA, opening + " ", groups);
            groups = Math.max(groups, last(ring));
            walls.addAll(reversed(ring));
        }
        for (Pocket pocket : pockets) {
            List<Chord> ring = Rings.chords(pocket.shape(), SAGITTA, pocket.name() + " ", groups);
            groups = Math.max(groups, last(ring));
            pocketRings.add(ring);
        }
        sheet = Flat.polygon(outline, SAGITTA);
        pocketShapes =
                pockets.stream().map(p -> Flat.polygon(p.shape(), SAGITTA)).toList();
    }

    private static int last(List<Chord> chords) {
        return chords.stream().mapToInt(Chord::group).max().orElse(0);
    }

    private static List<Chord> reversed(List<Chord> ring) {
        List<Chord> reversed = new ArrayList<>();
        for (int i = ring.size() - 1; i >= 0; i--) {
            Chord c = ring.get(i);
            boolean smooth = ring.get((i + ring.size() - 1) % ring.size()).smoothEnd();
            reversed.add(new Chord(c.name(), c.x2(), c.y2(), c.x1(), c.y1(), c.group(), c.stretch(), smooth));
        }
        return reversed;
    }

    boolean inSheet(double x, double y) {
        return encloses(walls, x, y);
    }

    boolean inPocket(int index, double x, double y) {
        return encloses(pocketRings.get(index), x, y);
    }

    /** The lower end of the wood over a point of the sheet, cuts aside. */
    double low(double x, double y) {
        double low = 0;
        for (int i = 0; i < pockets.size(); i++) {
            if (pockets.get(i).side() == SheetSide.OUTSIDE && inPocket(i, x, y)) {
                low = Math.max(low, depth(i));
            }
        }
        return low;
    }

    /** The upper end of the wood over a point of the sheet, cuts aside. */
    double high(double x, double y) {
        double high = thickness;
        for (int i = 0; i < pockets.size(); i++) {
            if (pockets.get(i).side() == SheetSide.INSIDE && inPocket(i, x, y)) {
                high = Math.min(high, floor(i));
            }
        }
        return high;
    }

    double depth(int pocket) {
        return pockets.get(pocket).depth().inMillimetres();
    }

    /** The w of a pocket's floor. */
    double floor(int pocket) {
        return pockets.get(pocket).side() == SheetSide.INSIDE ? thickness - depth(pocket) : depth(pocket);
    }

    /** Whether a ray to the right crosses the rings an odd number of times. */
    private static boolean encloses(List<Chord> rings, double x, double y) {
        boolean in = false;
        for (Chord c : rings) {
            if (c.y1() > y != c.y2() > y) {
                double at = c.x1() + (y - c.y1()) / (c.y2() - c.y1()) * (c.x2() - c.x1());
                in ^= at > x;
            }
        }
        return in;
    }
}
