package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.joint.EdgeDistance;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.LineThrough;
import org.kerfleaf.shape.LineThrough.Stretch;
import org.kerfleaf.shape.Touch;
import org.kerfleaf.shape.Touching;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Bolt;
import org.kerfleaf.sketch.Fastener;
import org.kerfleaf.sketch.Lag;
import org.kerfleaf.sketch.Nail;
import org.kerfleaf.sketch.Screw;

/**
 * Drives a fastener through a contact at any place of it, square to the contact: where head and tip come to lie.
 *
 * @param through the piece it is driven through
 * @param into what it ends in; for a bolt every further piece, in order
 */
record Driver(Bodies bodies, Fastener said, Touch place, Piece through, List<Piece> into) {
    /** Stretches of wood nearer than this follow each other, in millimetres: two contacts' tolerance. */
    private static final double NEXT = 2 * Touching.TOLERANCE.inMillimetres();

    /**
     * A fastener in its place.
     *
     * @param from the face its head lies on
     * @param wood how much wood of the part it ends in lies on its way, from the contact to where it would come out
     */
    record Driven(DrivenFastener fastener, Face from, Length wood) {}

    /** The shank's diameter, if it is known. */
    Optional<Length> diameter() {
        if (said instanceof Screw screw) {
            return Optional.of(WoodScrew.diameter(screw.gauge()).value());
        }
        if (said instanceof Lag lag) {
            return Optional.of(lag.diameter());
        }
        if (said instanceof Nail nail) {
            return nail.diameter();
        }
        return said instanceof Bolt bolt ? Optional.of(bolt.diameter()) : Optional.empty();
    }

    /** How far it should be from an edge or an opening, drilled first; nothing where the shank is not known. */
    double edge() {
        return least(EdgeDistance.EDGE);
    }

    /** How far it should be from an end, drilled first; nothing where the shank is not known. */
    double end() {
        return least(EdgeDistance.END_PULLED);
    }

    private double least(EdgeDistance distance) {
        return diameter()
                .map(d -> distance.least(d, true).value().inMillimetres())
                .orElse(0.0);
    }

    /** The fastener driven there; empty if an opening or a hole is in its way. */
    Optional<Driven> at(double along, double across) {
        Vector point = place.at(along, across);
        Vector way = place.frame().w();
        List<Stretch> back = LineThrough.of(bodies.of(through), point, way.negated());
        if (back.size() != 1 || Math.abs(back.get(0).enter()) > NEXT) {
            return Optional.empty();
        }
        double thick = back.get(0).leave();
        double end = end(point, way, thick);
        if (Double.isNaN(end) || kind() == DrivenFastener.Kind.SCREW && isCrossed(along, across, end)) {
            return Optional.empty();
        }
        DrivenFastener fastener =
                new DrivenFastener(kind(), point.minus(way.times(thick)), point.plus(way.times(end)), diameter());
        return Optional.of(new Driven(fastener, back.get(0).out(), wood(point, way)));
    }

    private DrivenFastener.Kind kind() {
        if (said instanceof Screw || said instanceof Lag) {
            return DrivenFastener.Kind.SCREW;
        }
        return said instanceof Nail ? DrivenFastener.Kind.NAIL : DrivenFastener.Kind.BOLT;
    }

    private Length wood(Vector point, Vector way) {
        return LineThrough.of(bodies.of(into.get(into.size() - 1)), point, way).stream()
                .filter(s -> s.leave() > NEXT)
                .findFirst()
                .map(s -> Length.ofMillimetres(s.leave()))
                .orElse(Length.ZERO);
    }

    /** How far past the contact it ends, in millimetres; not a number if there is no wood for it. */
    private double end(Vector point, Vector way, double thick) {
        if (said instanceof Bolt) {
            return farSide(point, way);
        }
        List<Stretch> ahead = LineThrough.of(bodies.of(into.get(0)), point, way);
        double sunk = said instanceof Screw ? WoodScrew.COUNTERSINK.inMillimetres() : 0;
        double end = said.said().orElseThrow().inMillimetres() + sunk - thick;
        return startsHere(ahead) && !meetsGap(ahead, end) ? end : Double.NaN;
    }

    /** Where the last of the pieces ends that lie on each other in line. */
    private double farSide(Vector point, Vector way) {
        double end = 0;
        for (Piece piece : into) {
            List<Stretch> ahead = new ArrayList<>(LineThrough.of(bodies.of(piece), point, way));
            double from = end;
            ahead.removeIf(s -> Math.abs(s.enter() - from) > NEXT);
            if (ahead.isEmpty()) {
                return Double.NaN;
            }
            end = ahead.get(0).leave();
        }
        return end;
    }

    private static boolean startsHere(List<Stretch> ahead) {
        return ahead.stream().anyMatch(s -> Math.abs(s.enter()) <= NEXT);
    }

    /** Whether it comes out of the wood into a hole and goes in again behind it; a tip that only comes out is another rule's. */
    private static boolean meetsGap(List<Stretch> ahead, double end) {
        List<Stretch> met = ahead.stream()
                .filter(s -> s.leave() > NEXT && s.enter() > -NEXT)
                .toList();
        return met.size() > 1 && met.get(0).leave() < end;
    }

    /** Whether a hole runs into the shank from the side, in either part. */
    private boolean isCrossed(double along, double across, double end) {
        double radius = diameter().orElseThrow().half().inMillimetres();
        Vector way = place.frame().w();
        for (double[] side : new double[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
            Vector beside = place.at(along + radius * side[0], across + radius * side[1]);
            if (meetsGap(LineThrough.of(bodies.of(into.get(0)), beside, way), end)
                    || LineThrough.of(bodies.of(through), beside, way.negated()).size() > 1) {
                return true;
            }
        }
        return false;
    }
}
