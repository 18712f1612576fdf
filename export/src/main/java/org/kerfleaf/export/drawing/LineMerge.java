package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * One line where several lie on each other. What is new goes before what was there, what is seen before what is hidden; so
 * touching parts draw their common edge once and dashes do not fuse.
 */
final class LineMerge {
    /** Lines whose directions differ by less are parallel, in radians. */
    private static final double ANGLE = 1e-4;

    /** Parallel lines nearer than this are one, in millimetres of the view. */
    private static final double OFFSET = 0.05;

    /** Stretches not farther apart than this are one, and shorter ones are none. */
    private static final double GAP = 0.05;

    private static final Shown.State[] FIRST_NEW = {Shown.State.NEW, Shown.State.PLAIN, Shown.State.EARLIER};

    private LineMerge() {}

    /** A line said by its direction, its distance from the origin and where it begins and ends along itself. */
    private record Said(double angle, double offset, double from, double to, DrawnLine line) {
        static Said of(DrawnLine line) {
            double angle = StrictMath.atan2(line.y2() - line.y1(), line.x2() - line.x1());
            angle += angle < -ANGLE / 2 ? StrictMath.PI : 0;
            angle -= angle >= StrictMath.PI - ANGLE / 2 ? StrictMath.PI : 0;
            double c = StrictMath.cos(angle);
            double s = StrictMath.sin(angle);
            double a = c * line.x1() + s * line.y1();
            double b = c * line.x2() + s * line.y2();
            double offset = c * (line.y1() + line.y2()) / 2 - s * (line.x1() + line.x2()) / 2;
            return new Said(angle, offset, Math.min(a, b), Math.max(a, b), line);
        }
    }

    static List<DrawnLine> merged(List<DrawnLine> lines) {
        List<Said> said = new ArrayList<>(lines.stream().map(Said::of).toList());
        said.sort(Comparator.comparingDouble(Said::angle));
        List<DrawnLine> merged = new ArrayList<>();
        for (int i = 0; i < said.size(); ) {
            int end = i;
            while (end < said.size() && said.get(end).angle() - said.get(i).angle() < ANGLE) {
                end++;
            }
            parallel(said.subList(i, end), merged);
            i = end;
        }
        return ArcChains.chained(merged);
    }

    private static void parallel(List<Said> said, List<DrawnLine> merged) {
        List<Said> sorted = new ArrayList<>(said);
        sorted.sort(Comparator.comparingDouble(Said::offset));
        for (int i = 0; i < sorted.size(); ) {
            int end = i;
            while (end < sorted.size()
                    && sorted.get(end).offset() - sorted.get(i).offset() < OFFSET) {
                end++;
            }
            oneLine(sorted.subList(i, end), merged);
            i = end;
        }
    }

    private static void oneLine(List<Said> said, List<DrawnLine> merged) {
        Map<Shown.State, Spans> seen = new EnumMap<>(Shown.State.class);
        Map<Shown.State, Spans> hidden = new EnumMap<>(Shown.State.class);
        for (Said one : said) {
            (one.line().hidden() ? hidden : seen)
                    .computeIfAbsent(one.line().state(), state -> new Spans())
                    .add(one.from(), one.to());
        }
        boolean arc = said.stream().allMatch(one -> one.line().arc());
        Spans taken = new Spans();
        for (Map<Shown.State, Spans> layer : List.of(seen, hidden)) {
            for (Shown.State state : FIRST_NEW) {
                Spans spans = layer.get(state);
                if (spans == null) {
                    continue;
                }
                List<Spans.Span> rest = Spans.minus(spans.joined(GAP), taken.joined(0));
                for (Spans.Span span : rest) {
                    taken.add(span.from(), span.to());
                    if (span.length() > GAP) {
                        merged.add(line(said.get(0), span, layer == hidden, state, arc));
                    }
                }
            }
        }
    }

    private static DrawnLine line(Said on, Spans.Span span, boolean hidden, Shown.State state, boolean arc) {
        double c = StrictMath.cos(on.angle());
        double s = StrictMath.sin(on.angle());
        double ox = -s * on.offset();
        double oy = c * on.offset();
        return DrawnLine.of(
                ox + c * span.from(), oy + s * span.from(), ox + c * span.to(), oy + s * span.to(), hidden, state, arc);
    }
}
