package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Mass;

/**
 * What hangs on a joint: it pushes straight down across the joint's fasteners, which share it alike.
 *
 * @param joint what carries it
 * @param load all of it, if it was said outright
 * @param share of another load, if it was said so
 * @group what it carries
 */
public record JointLoad(Origin origin, Origin joint, Optional<Mass> load, Optional<Carries.Share> share)
        implements Declaration {
    /** A load said outright. */
    public static JointLoad of(Joint joint, Mass load) {
        return new JointLoad(SketchRun.current().next(), joint.origin(), Optional.of(load), Optional.empty());
    }

    /** A share of another load. */
    public static JointLoad of(Joint joint, Carries.Share share) {
        return new JointLoad(SketchRun.current().next(), joint.origin(), Optional.empty(), Optional.of(share));
    }
}
