package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.shape.Rings.Chord;

/** Tells which edges of faces belong to an arc, and round which the surface goes on smoothly. */
final class EdgeMarks {
    private static final double ON = 1e-5;

    private final List<Chord> round = new ArrayList<>();
    private final List<Chord> smooth = new ArrayList<>();

    EdgeMarks(Section section) {
        List<List<Chord>> rings = new ArrayList<>(section.pocketRings);
        rings.add(section.walls);
        for (List<Chord> ring : rings) {
            ring.stream().filter(c -> c.group() > 0).forEach(round::add);
            ring.stream().filter(Chord::smoothEnd).forEach(smooth::add);
        }
    }

    /** The edge in the solid's frame. */
    FaceEdge marked(Vector from, Vector to) {
        if (isNear(from, to.x(), to.y())) {
            boolean goesOn = smooth.stream().anyMatch(c -> isNear(from, c.x2(), c.y2()));
            return new FaceEdge(from, to, 0, goesOn);
        }
        int group = round.stream()
                .filter(c -> isOn(c, from) && isOn(c, to))
                .mapToInt(Chord::group)
                .findFirst()
                .orElse(0);
        return new FaceEdge(from, to, group, false);
    }

    private static boolean isNear(Vector point, double x, double y) {
        return Math.abs(point.x() - x) < ON && Math.abs(point.y() - y) < ON;
    }

    private static boolean isOn(Chord c, Vector point) {
        double dx = (c.x2() - c.x1()) / c.length();
        double dy = (c.y2() - c.y1()) / c.length();
        double off = dx * (point.y() - c.y1()) - dy * (point.x() - c.x1());
        double along = dx * (point.x() - c.x1()) + dy * (point.y() - c.y1());
        return Math.abs(off) < ON && along > -ON && along < c.length() + ON;
    }
}
