package org.kerfleaf.joint;

import org.kerfleaf.shape.Vector;

/** How near two straight pieces of a line come to each other. */
final class Segments {
    private static final double PARALLEL = 1e-12;

    private Segments() {}

    /**
     * The least distance between two segments: the nearest points of both lines, held between the ends by turns (C. Ericson,
     * Real-Time Collision Detection, 2005, 5.1.9; from memory).
     */
    static double distance(Vector p, Vector pEnd, Vector q, Vector qEnd) {
        Vector d = pEnd.minus(p);
        Vector e = qEnd.minus(q);
        Vector r = p.minus(q);
        double a = d.dot(d);
        double c = e.dot(e);
        double b = d.dot(e);
        double onP = d.dot(r);
        double onQ = e.dot(r);
        double square = a * c - b * b;
        double s = square > PARALLEL * a * c ? held((b * onQ - onP * c) / square) : 0;
        double t = (b * s + onQ) / c;
        if (t < 0 || t > 1) {
            t = held(t);
            s = held((b * t - onP) / a);
        }
        return p.plus(d.times(s)).minus(q.plus(e.times(t))).length();
    }

    private static double held(double share) {
        return Math.min(1, Math.max(0, share));
    }
}
