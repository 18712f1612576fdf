package org.kerfleaf.sketch;

import java.util.Optional;
import org.kerfleaf.measure.Angle;

/**
 * The maker's mitre saw.
 *
 * @param stop the largest number its scale can be set to, from square, if said
 * @group what we buy
 */
public record MitreSaw(Origin origin, Optional<Angle> stop) implements Declaration {
    /** @throws SketchException if it stops at 0 degrees or less, or beyond 90 */
    public MitreSaw {
        stop.ifPresent(most -> {
            if (most.inDegrees() <= 0 || most.inDegrees() > 90) {
                throw new SketchException(
                        "A mitre saw that stops at %s: more than 0 and up to 90 degrees would be right."
                                .formatted(most));
            }
        });
    }

    /** The largest number its scale can be set to, from square. @example mitreSaw().stopsAt("50 deg") */
    public MitreSaw stopsAt(String most) {
        return new MitreSaw(origin, Optional.of(Angle.parse(most)));
    }
}
