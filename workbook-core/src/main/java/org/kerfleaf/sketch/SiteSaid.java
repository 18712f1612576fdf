package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Length;

/**
 * What was said of the place.
 *
 * @param besidePath how far from a path it stands, if said
 * @param rainedOn whether rain falls on it, if said
 * @group the place
 */
public record SiteSaid(Origin origin, Optional<Length> besidePath, Optional<Boolean> rainedOn) implements Declaration {
    /** How far from a path it stands. @example site().besidePath("24 in") */
    public SiteSaid besidePath(String distance) {
        return new SiteSaid(origin, Optional.of(SketchRun.length(distance)), rainedOn);
    }

    /** Rain falls on it. @example site().outdoors() */
    public SiteSaid outdoors() {
        return new SiteSaid(origin, besidePath, Optional.of(true));
    }

    /** No rain falls on it. @example site().underRoof() */
    public SiteSaid underRoof() {
        return new SiteSaid(origin, besidePath, Optional.of(false));
    }
}
