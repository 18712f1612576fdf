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
    /** The largest number its scale can be set to, from square. @example mitreSaw().stopsAt("50 deg") */
    public MitreSaw stopsAt(String most) {
        return new MitreSaw(origin, Optional.of(Angle.parse(most)));
    }
}
