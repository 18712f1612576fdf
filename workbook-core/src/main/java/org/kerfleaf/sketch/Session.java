package org.kerfleaf.sketch;

import java.time.Duration;
import java.util.Optional;

/**
 * A session in which a group builds, each builder one kit.
 *
 * @param time how long it lasts
 * @param builders how many build one each, if said
 * @param drills how many drills there are, if said
 * @param pilot how long one pilot hole takes, if said
 * @param cutBefore whether all is cut beforehand
 * @group the work
 */
public record Session(
        Origin origin,
        Duration time,
        Optional<Integer> builders,
        Optional<Integer> drills,
        Optional<Duration> pilot,
        boolean cutBefore)
        implements Declaration {
    /** @throws SketchException if it does not last */
    public Session {
        if (time.isZero() || time.isNegative()) {
            throw new SketchException("A session of no time: 90 min, say, would be right.");
        }
    }

    /** So many build one each, 1 or more. @example session("90 min").builders(24) */
    public Session builders(int many) {
        Optional<Integer> said = Optional.of(SketchRun.atLeastOne("Builders", many));
        return new Session(origin, time, said, drills, pilot, cutBefore);
    }

    /** So many drills for all of them, 1 or more. @example session("90 min").builders(24).drills(3).pilotHole("20 s") */
    public Session drills(int many) {
        Optional<Integer> said = Optional.of(SketchRun.atLeastOne("Drills", many));
        return new Session(origin, time, builders, said, pilot, cutBefore);
    }

    /** How long one pilot hole takes. @example session("90 min").builders(24).drills(3).pilotHole("20 s") */
    public Session pilotHole(String takes) {
        return new Session(origin, time, builders, drills, Optional.of(Times.of(takes)), cutBefore);
    }

    /** A grown-up cuts everything before the session. @example session("90 min").cutBeforehand() */
    public Session cutBeforehand() {
        return new Session(origin, time, builders, drills, pilot, true);
    }
}
