package org.kerfleaf.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/** A straight line through a placed piece: where it runs in wood, as a drill would. */
public final class LineThrough {
    /** Wood thinner than this is none, in millimetres. */
    private static final double THIN = Touching.TOLERANCE.inMillimetres();

    private LineThrough() {}

    /**
     * A stretch in wood.
     *
     * @param enter how far along the line it goes in, in millimetres; negative behind its start
     * @param leave how far along the line it comes out
     * @param out the face it comes out of, in the build
     */
    public record Stretch(double enter, double leave, Face out) {}

    private record Crossing(double at, Face face) {}

    /**
     * Every stretch of the endless line that lies in the piece's wood, in order.
     *
     * @param way one long
     */
    public static List<Stretch> of(PlacedSolid solid, Vector from, Vector way) {
        List<Crossing> crossings = new ArrayList<>();
        for (Face face : solid.faces()) {
            double toward = face.normal().dot(way);
            if (Math.abs(toward) > TouchSearch.OPPOSITE) {
                double at = -face.inFront(from) / toward;
                if (isOn(face, from.plus(way.times(at)))) {
                    crossings.add(new Crossing(at, face));
                }
            }
        }
        crossings.sort(Comparator.comparingDouble(Crossing::at));
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 1; i < crossings.size(); i++) {
            double enter = crossings.get(i - 1).at();
            Crossing end = crossings.get(i);
            if (end.at() - enter > THIN && solid.holds(from.plus(way.times((enter + end.at()) / 2)))) {
                stretches.add(new Stretch(enter, end.at(), end.face()));
            }
        }
        return stretches;
    }

    private static boolean isOn(Face face, Vector point) {
        Vector local = face.frame().toLocal(point);
        return SimplePointInAreaLocator.locate(new Coordinate(local.x(), local.y()), face.polygon())
                != Location.EXTERIOR;
    }
}
