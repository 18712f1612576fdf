package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Chords of a round edge in one line from end to end, so that dashes run on over them. */
final class ArcChains {
    /** Ends nearer than this meet, in millimetres of the view. */
    private static final double MEET = 0.06;

    private final List<DrawnLine> chords;
    private final Map<Long, List<Integer>> ends = new HashMap<>();
    private final boolean[] used;

    private ArcChains(List<DrawnLine> chords) {
        this.chords = chords;
        used = new boolean[chords.size()];
        for (int i = 0; i < chords.size(); i++) {
            DrawnLine chord = chords.get(i);
            note(i, chord.x1(), chord.y1());
            note(i, chord.x2(), chord.y2());
        }
    }

    static List<DrawnLine> chained(List<DrawnLine> lines) {
        List<DrawnLine> result =
                new ArrayList<>(lines.stream().filter(l -> !l.arc()).toList());
        ArcChains chains = new ArcChains(lines.stream().filter(DrawnLine::arc).toList());
        for (int i = 0; i < chains.chords.size(); i++) {
            if (!chains.used[i]) {
                result.add(chains.chain(i));
            }
        }
        return result;
    }

    private void note(int chord, double x, double y) {
        ends.computeIfAbsent(cell(cell(x), cell(y)), key -> new ArrayList<>()).add(chord);
    }

    private DrawnLine chain(int first) {
        used[first] = true;
        DrawnLine start = chords.get(first);
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {start.x2(), start.y2()});
        grow(points, start);
        List<double[]> back = new ArrayList<>();
        back.add(new double[] {start.x1(), start.y1()});
        grow(back, start);
        List<double[]> all = new ArrayList<>();
        for (int i = back.size() - 1; i >= 0; i--) {
            all.add(back.get(i));
        }
        all.addAll(points);
        double[] xy = new double[2 * all.size()];
        for (int i = 0; i < all.size(); i++) {
            xy[2 * i] = all.get(i)[0];
            xy[2 * i + 1] = all.get(i)[1];
        }
        return new DrawnLine(xy, start.hidden(), start.state(), true);
    }

    private void grow(List<double[]> points, DrawnLine like) {
        while (true) {
            double[] tip = points.get(points.size() - 1);
            int next = next(tip, like);
            if (next < 0) {
                return;
            }
            used[next] = true;
            DrawnLine chord = chords.get(next);
            boolean forward = near(chord.x1(), chord.y1(), tip);
            points.add(forward ? new double[] {chord.x2(), chord.y2()} : new double[] {chord.x1(), chord.y1()});
        }
    }

    private int next(double[] tip, DrawnLine like) {
        for (int dx = -1; dx <= 1; dx++) {
            for (int dy = -1; dy <= 1; dy++) {
                for (int i : ends.getOrDefault(cell(cell(tip[0]) + dx, cell(tip[1]) + dy), List.of())) {
                    DrawnLine chord = chords.get(i);
                    boolean meets = near(chord.x1(), chord.y1(), tip) || near(chord.x2(), chord.y2(), tip);
                    if (!used[i] && meets && chord.hidden() == like.hidden() && chord.state() == like.state()) {
                        return i;
                    }
                }
            }
        }
        return -1;
    }

    private static boolean near(double x, double y, double[] tip) {
        return Math.abs(x - tip[0]) < MEET && Math.abs(y - tip[1]) < MEET;
    }

    private static long cell(double at) {
        return (long) Math.floor(at / MEET);
    }

    private static long cell(long x, long y) {
        return x * 0x1_0000_0000L + (int) y;
    }
}
