package org.kerfleaf.saw;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.saw.SawSetting.Straightedge;

/**
 * Where to clamp the straightedge for a hand-held circular saw, by the distances of one saw.
 *
 * <p>On the keep side the blade's near face runs on the line: base edge to blade. On the waste side the far face does, so the
 * kerf is added. (Geometry.) The distances are true for an upright blade only, since a blade tilts about a pivot of its own.
 *
 * @param kerf the width of the cut, if measured; without it there is no line on the waste side
 * @param left from the base's left edge to the near face of the blade, if measured
 * @param right from the base's right edge to the near face of the blade, if measured
 */
public record Straightedges(Optional<Length> kerf, Optional<Length> left, Optional<Length> right) {
    /** All the ways to clamp it that the measured distances allow: left of the saw first, keep side before waste side. */
    public List<Straightedge> lines() {
        List<Straightedge> lines = new ArrayList<>();
        left.ifPresent(base -> add(lines, "left of the saw", base));
        right.ifPresent(base -> add(lines, "right of the saw", base));
        return List.copyOf(lines);
    }

    private void add(List<Straightedge> lines, String where, Length base) {
        lines.add(new Straightedge(
                where + ", on the keep side",
                Figure.of(
                        base,
                        "on the keep side: base edge to the near face of the blade",
                        Reason.GEOMETRY,
                        given("base edge to blade", base))));
        kerf.ifPresent(width -> lines.add(new Straightedge(
                where + ", on the waste side",
                Figure.of(
                        base.plus(width),
                        "on the waste side: base edge to the near face of the blade, and the kerf",
                        Reason.GEOMETRY,
                        given("base edge to blade", base),
                        given("kerf", width)))));
    }
}
