package org.kerfleaf.kernel.wire;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.sketch.Live;
import org.kerfleaf.sketch.Problem;
import org.kerfleaf.sketch.Sketch;

/** What the child says during a run, in this order: units, the sketch, live values, done. Or, when asked, what it weighs. */
public sealed interface Report {
    /** A unit is about to be run, or its value about to be read; {@code printed} was printed since the last one. */
    record Began(int unit, String printed) implements Report {}

    /** A unit was not run, because it needs another one that has no value. */
    record Skipped(int unit, int needs) implements Report {}

    /** A unit threw. */
    record Threw(int unit, Thrown thrown) implements Report {}

    /** All cells have run, and this is what they declare; no sketch if there are too many pieces. */
    record Gathered(Optional<Sketch> sketch, List<Problem> problems) implements Report {}

    /** A live value. */
    record Said(int unit, Live value) implements Report {}

    /**
     * The run is over.
     *
     * @param printed what was printed since the last report
     * @param spent whether the child should not be used again, because something of this run is left in it
     */
    record Done(String printed, boolean spent) implements Report {}

    /**
     * What the process holds while nothing runs.
     *
     * @param heapBytes bytes of values
     * @param classBytes bytes of classes, what the virtual machine calls metaspace
     * @param classes how many classes there are
     */
    record Weighed(long heapBytes, long classBytes, int classes) implements Report {}
}
