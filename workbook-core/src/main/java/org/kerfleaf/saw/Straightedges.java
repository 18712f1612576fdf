package org.kerfleaf.saw;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.saw.SawSetting.Straightedge;

/**
 * Where to clamp the straightedge for a hand-held circular saw, by the distances of one saw.
 *
 * <p>On the keep side the blade's near face runs on the line: base edge to blade. On the waste side the far face does, so the
 * kerf is added; tilted, the kerf is kerf / cos tilt wide at the base. (Geometry.) A blade tilts about a point of its own, so
 * each tilt has distances of its own, which are measured.
 *
 * @param kerf the width of the cut, if measured; without it there is no line on the waste side
 * @param base what was measured
 */
public record Straightedges(Optional<Length> kerf, List<Base> base) {
    /** Nearer than this a saw's scale shows no difference, in degrees: half of a half-degree step. */
    private static final double SAME_TILT = 0.25;

    public Straightedges {
        base = List.copyOf(base);
    }

    /** From one edge of the base ({@code left}, {@code right}) to the near face of the blade, at a tilt. */
    public record Base(String side, Angle tilt, Length distance) {}

    /** From the line, all the ways to clamp it that were measured at that tilt: keep side before waste side. */
    public List<Straightedge> lines(Angle tilt) {
        List<Straightedge> lines = new ArrayList<>();
        for (Base measured : at(tilt)) {
            lines.add(new Straightedge(
                    where(measured, "keep"),
                    Figure.of(
                            measured.distance(),
                            "on the keep side: base edge to the near face of the blade",
                            Reason.GEOMETRY,
                            given("base edge to blade", measured.distance()))));
            kerf.ifPresent(width -> lines.add(new Straightedge(
                    where(measured, "waste"),
                    Figure.of(
                            measured.distance().plus(tilt.lengthOver(width)),
                            "on the waste side: base edge to the near face of the blade, and the kerf"
                                    + (tilt.isZero() ? "" : " / cos tilt"),
                            Reason.GEOMETRY,
                            given("base edge to blade", measured.distance()),
                            given("kerf", width),
                            given("tilt", tilt)))));
        }
        return List.copyOf(lines);
    }

    /** From the edge of the piece in hand for an upright cut so far in; where the straightedge would lie off the piece it is left out. */
    public List<Straightedge> fromEdge(Length set) {
        List<Straightedge> lines = new ArrayList<>();
        for (Base measured : at(Angle.ZERO)) {
            Length keep = set.minus(measured.distance());
            if (keep.isPositive()) {
                lines.add(new Straightedge(
                        where(measured, "keep"),
                        Figure.of(
                                keep,
                                "on the keep side: set − base edge to blade",
                                Reason.GEOMETRY,
                                given("set", set),
                                given("base edge to blade", measured.distance()))));
            }
            kerf.ifPresent(width -> lines.add(new Straightedge(
                    where(measured, "waste"),
                    Figure.of(
                            set.plus(width, measured.distance()),
                            "on the waste side: set + kerf + base edge to blade",
                            Reason.GEOMETRY,
                            given("set", set),
                            given("kerf", width),
                            given("base edge to blade", measured.distance())))));
        }
        return List.copyOf(lines);
    }

    private List<Base> at(Angle tilt) {
        return base.stream()
                .filter(b -> Math.abs(b.tilt().minus(tilt).inDegrees()) < SAME_TILT)
                .toList();
    }

    private static String where(Base base, String side) {
        return "%s of the saw, on the %s side".formatted(base.side(), side);
    }

    /** What to measure, if anything is lacking at that tilt; else empty. */
    public String lacking(Angle tilt) {
        if (at(tilt).isEmpty()) {
            return tilt.isZero()
                    ? "How far from the line the straightedge stands is not known: measure from the edge of the base to the near"
                            + " face of the blade, left and right."
                    : "How far from the line the straightedge stands at this tilt is not known, since a blade tilts about a"
                            + " point of its own: clamp a straightedge on scrap, make a cut at this tilt, and measure from"
                            + " the straightedge to the near side of the cut, on the face that is up.";
        }
        return kerf.isEmpty() ? "On the waste side add the kerf, which was not said." : "";
    }
}
