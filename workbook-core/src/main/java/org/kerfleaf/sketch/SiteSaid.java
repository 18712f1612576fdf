package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Length;

/** What was said of the place: how far from a path it stands. @group the place */
public record SiteSaid(Origin origin, Optional<Length> besidePath) implements Declaration {
    /** How far from a path it stands. @example site().besidePath("24 in") */
    public SiteSaid besidePath(String distance) {
        return new SiteSaid(origin, Optional.of(SketchRun.length(distance)));
    }
}
