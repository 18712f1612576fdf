package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.kerfleaf.shape.Rings.Chord;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * The walls of a solid: of its outline, its openings and its pockets, and what a cut square to the sheet leaves.
 *
 * <p>Along a chord the wood's height changes only where another ring crosses it. Between two such places one look just beside
 * the chord tells from where to where the wall reaches; neighbours join into one polygon in (along, w), and the cuts clip it.
 */
final class WallFaces {
    /** How far beside a chord to look, in millimetres: beyond the nanometre grid, well within any piece of wood. */
    private static final double BESIDE = 1e-4;

    /** Nearer than this is one place, and lower than this is no wall. */
    private static final double SAME = 2e-6;

    private final Solid solid;
    private final Section section;
    private final double thickness;

    WallFaces(Solid solid, Section section) {
        this.solid = solid;
        this.section = section;
        this.thickness = solid.thickness().inMillimetres();
    }

    /** Takes each wall as it is found. */
    interface Taker {
        void take(Chord chord, Pose frame, Polygon polygon);
    }

    /** A stretch of wall. */
    private record Stretch(double from, double to, double low, double high) {
        boolean joins(Stretch next) {
            return next.from == to && Math.min(high, next.high) - Math.max(low, next.low) > SAME;
        }
    }

    void ofOutline(Taker taker) {
        for (Chord chord : section.walls) {
            List<Stretch> stretches = new ArrayList<>();
            double last = Double.NaN;
            for (double stop : stops(chord, section.pocketRings)) {
                if (stop > last) {
                    stretches.add(woodBeside(chord, last, stop));
                }
                last = stop;
            }
            walls(chord, stretches, false, taker);
        }
    }

    /** The wall that a cut square to the sheet leaves: all along its line, wherever there is wood. */
    void ofCut(Cut cut, Taker taker) {
        Chord chord = across(cut);
        List<List<Chord>> rings = new ArrayList<>(section.pocketRings);
        rings.add(section.walls);
        List<Stretch> stretches = new ArrayList<>();
        double last = Double.NaN;
        for (double stop : stops(chord, rings)) {
            if (stop > last) {
                double[] at = beside(chord, (last + stop) / 2, BESIDE);
                boolean wood = section.inSheet(at[0], at[1]);
                stretches.add(wood ? woodBeside(chord, last, stop) : new Stretch(last, stop, 0, 0));
            }
            last = stop;
        }
        walls(chord, stretches, false, taker);
    }

    /** The line of the cut right across the sheet and past it, the wood that is kept on its left. */
    private Chord across(Cut cut) {
        Envelope sheet = section.sheet.getEnvelopeInternal();
        double a = cut.normal().x();
        double b = cut.normal().y();
        double far = sheet.getWidth() + sheet.getHeight() + 1;
        double off = cut.offset() - a * sheet.centre().x - b * sheet.centre().y;
        double x = sheet.centre().x + off * a;
        double y = sheet.centre().y + off * b;
        return new Chord(cut.name(), x + far * b, y - far * a, x - far * b, y + far * a, 0, 1, false);
    }

    private Stretch woodBeside(Chord chord, double from, double to) {
        double[] at = beside(chord, (from + to) / 2, BESIDE);
        return new Stretch(from, to, section.low(at[0], at[1]), section.high(at[0], at[1]));
    }

    void ofPocket(int index, Taker taker) {
        List<List<Chord>> others = new ArrayList<>(section.pocketRings);
        others.set(index, section.walls);
        for (Chord chord : section.pocketRings.get(index)) {
            List<Stretch> stretches = new ArrayList<>();
            double last = Double.NaN;
            for (double stop : stops(chord, others)) {
                if (stop > last) {
                    stretches.add(pocketWall(index, chord, last, stop));
                }
                last = stop;
            }
            walls(chord, stretches, true, taker);
        }
    }

    private Stretch pocketWall(int index, Chord chord, double from, double to) {
        double[] air = beside(chord, (from + to) / 2, BESIDE);
        double[] wood = beside(chord, (from + to) / 2, -BESIDE);
        if (!section.inSheet(wood[0], wood[1]) || !section.inSheet(air[0], air[1])) {
            return new Stretch(from, to, 0, 0);
        }
        double low = section.low(wood[0], wood[1]);
        double high = section.high(wood[0], wood[1]);
        boolean inside = solid.pockets().get(index).side() == SheetSide.INSIDE;
        low = inside ? Math.max(low, section.floor(index)) : low;
        high = inside ? high : Math.min(high, section.floor(index));
        // Where two pockets end at one line, the wall they share is the first one's.
        for (int i = 0; i < index; i++) {
            if (section.inPocket(i, air[0], air[1]) && !section.inPocket(i, wood[0], wood[1])) {
                boolean from0 = solid.pockets().get(i).side() == SheetSide.OUTSIDE;
                low = from0 ? Math.max(low, section.floor(i)) : low;
                high = from0 ? high : Math.min(high, section.floor(i));
            }
        }
        return new Stretch(from, to, low, high);
    }

    /** A point beside the chord, to its left if the offset is positive. */
    private static double[] beside(Chord c, double along, double offset) {
        double dx = (c.x2() - c.x1()) / c.length();
        double dy = (c.y2() - c.y1()) / c.length();
        return new double[] {c.x1() + along * dx - offset * dy, c.y1() + along * dy + offset * dx};
    }

    /** Where along the chord the wall may change: its ends and where another ring's chords meet its line. */
    private static List<Double> stops(Chord chord, List<List<Chord>> rings) {
        TreeSet<Double> all = new TreeSet<>();
        double length = chord.length();
        double dx = (chord.x2() - chord.x1()) / length;
        double dy = (chord.y2() - chord.y1()) / length;
        for (List<Chord> ring : rings) {
            for (Chord c : ring) {
                double off1 = dx * (c.y1() - chord.y1()) - dy * (c.x1() - chord.x1());
                double off2 = dx * (c.y2() - chord.y1()) - dy * (c.x2() - chord.x1());
                double along1 = dx * (c.x1() - chord.x1()) + dy * (c.y1() - chord.y1());
                double along2 = dx * (c.x2() - chord.x1()) + dy * (c.y2() - chord.y1());
                if (Math.abs(off1) <= SAME) {
                    all.add(along1);
                }
                if (Math.abs(off1) > SAME && Math.abs(off2) > SAME && off1 * off2 < 0) {
                    all.add(along1 + off1 / (off1 - off2) * (along2 - along1));
                }
            }
        }
        List<Double> stops = new ArrayList<>();
        stops.add(0.0);
        for (double stop : all) {
            if (stop > stops.get(stops.size() - 1) + SAME && stop < length - SAME) {
                stops.add(stop);
            }
        }
        stops.add(length);
        return stops;
    }

    private void walls(Chord chord, List<Stretch> stretches, boolean backwards, Taker taker) {
        int first = 0;
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            boolean goesOn = i + 1 < stretches.size() && stretch.joins(stretches.get(i + 1));
            if (!goesOn) {
                if (stretch.high() - stretch.low() > SAME) {
                    wall(chord, stretches.subList(first, i + 1), backwards, taker);
                }
                first = i + 1;
            }
        }
    }

    private void wall(Chord chord, List<Stretch> stretches, boolean backwards, Taker taker) {
        double length = chord.length();
        Vector along = new Vector((chord.x2() - chord.x1()) / length, (chord.y2() - chord.y1()) / length, 0);
        along = along.normalised();
        Vector origin = new Vector(chord.x1(), chord.y1(), 0);
        // A pocket's wall is seen from in the pocket: its ring is walked the other way round.
        Vector u = backwards ? along.negated() : along;
        List<Coordinate> ring = new ArrayList<>();
        for (Stretch s : stretches) {
            add(ring, s.from(), s.low());
            add(ring, s.to(), s.low());
        }
        for (int i = stretches.size() - 1; i >= 0; i--) {
            add(ring, stretches.get(i).to(), stretches.get(i).high());
            add(ring, stretches.get(i).from(), stretches.get(i).high());
        }
        List<Polygon> left = List.of(Flat.polygon(ring));
        for (Cut cut : solid.cuts()) {
            double start = cut.offset() - cut.normal().dot(origin);
            left = SolidFaces.within(left, cut.normal().dot(along), cut.normal().z(), start);
        }
        for (Polygon polygon : left) {
            Polygon seen = backwards ? Flat.mapped(polygon, -1, 0, 0, 0, 1, 0) : polygon;
            taker.take(chord, Pose.of(origin, u, Vector.Z), seen);
        }
    }

    /** Leaves out points that say nothing new: repeated, or between two of one height. */
    private static void add(List<Coordinate> ring, double along, double w) {
        int last = ring.size() - 1;
        if (last >= 0 && ring.get(last).x == along && ring.get(last).y == w) {
            return;
        }
        if (last >= 1 && ring.get(last).y == w && ring.get(last - 1).y == w) {
            ring.remove(last);
        }
        ring.add(new Coordinate(along, w));
    }
}
