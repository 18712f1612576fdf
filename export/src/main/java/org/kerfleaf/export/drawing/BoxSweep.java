package org.kerfleaf.export.drawing;

import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.Vector;

/** A box that moves straight past another: when on its way the two overlap, axis by axis (the slab method). */
final class BoxSweep {
    /** Boxes that overlap by less only touch, in millimetres. */
    private static final double TOUCH = 0.05;

    private BoxSweep() {}

    /** Whether one box, moved straight by that, meets another that it is clear of at first. */
    static boolean meet(Bounds moved, Bounds other, Vector by) {
        double from = 0;
        double to = 1;
        boolean clear = false;
        for (Axis axis : Axis.values()) {
            double speed = Broken.of(axis, by);
            double before = Broken.of(axis, other.low()) - Broken.of(axis, moved.high()) + TOUCH;
            double after = Broken.of(axis, other.high()) - Broken.of(axis, moved.low()) - TOUCH;
            clear |= before >= 0 || after <= 0;
            if (Math.abs(speed) < 1e-9) {
                if (before >= 0 || after <= 0) {
                    return false;
                }
            } else {
                from = Math.max(from, Math.min(before / speed, after / speed));
                to = Math.min(to, Math.max(before / speed, after / speed));
            }
        }
        return clear && to - from > 1e-9;
    }
}
