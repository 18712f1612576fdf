package org.kerfleaf.saw;

import static org.kerfleaf.reason.Given.given;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.Count;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/**
 * How a router is set for a rabbet or groove: depth, passes, cutter and bearing, what is left under it.
 *
 * <p>Sources: geometry; that 1/8 in (3 mm) of depth is enough for one pass is in tool makers' manuals (seen in a copy).
 *
 * @param depth of the rabbet or groove
 * @param width of the rabbet or groove
 * @param thickness of what it is cut into
 * @param bite the most depth in one pass
 */
public record Routing(Length depth, Length width, Length thickness, Length bite) {
    /** What the reading of the whole depth is called. */
    public static final String DEPTH = "depth";

    /** What the reading of how many passes is called. */
    public static final String PASSES = "passes";

    private static final String MANUALS = "tool makers' manuals (seen in a copy)";

    /** How often the router goes round: depth / bite, rounded up. */
    public Figure<Count> passes() {
        long passes = depth.roundedTo(bite, RoundingMode.CEILING).nanometres() / bite.nanometres();
        return Figure.of(
                Count.of(passes), "depth / bite, rounded up", MANUALS, given("depth", depth), given("bite", bite));
    }

    /** What is left under it: thickness − depth. */
    public Figure<Length> lip() {
        return Figure.of(
                thickness.minus(depth),
                "thickness − depth",
                Reason.GEOMETRY,
                given("thickness", thickness),
                given("depth", depth));
    }

    /**
     * The bearing under a cutter that makes a rabbet so wide: cutter − 2 · width.
     *
     * @return zero or less if the cutter is too small for it
     */
    public Figure<Length> bearing(Length cutter) {
        return Figure.of(
                cutter.minus(width, width),
                "cutter − 2 · width",
                Reason.GEOMETRY,
                given("cutter", cutter),
                given("width", width));
    }

    /** Depth and passes, the width, and what is left under it. */
    private List<Reading> common() {
        List<Reading> set = new ArrayList<>();
        set.add(reading(DEPTH, said(depth)));
        set.add(reading(PASSES, passes()));
        set.add(reading(
                "deep in each pass",
                Figure.of(
                        depth.dividedBy(passes().value().number()),
                        "depth / passes",
                        Reason.GEOMETRY,
                        given("depth", depth),
                        given("passes", passes().value()))));
        set.add(reading("width", said(width)));
        set.add(reading("left under it", lip()));
        return set;
    }

    /** A groove or dado: its cutter is as wide as it, or narrower. */
    public List<Reading> groove() {
        return common();
    }

    /**
     * A rabbet, with the cutter and its bearing if the cutter is known.
     *
     * @param inside the corner radius of the opening it runs round inside; empty along an outer edge
     */
    public List<Reading> rabbet(Optional<Length> cutter, Optional<Length> inside) {
        List<Reading> set = common();
        cutter.filter(across -> bearing(across).value().isPositive()).ifPresent(across -> {
            set.add(reading("cutter", said(across)));
            set.add(reading("bearing", bearing(across)));
            inside.ifPresent(radius -> set.add(reading("radius left in its corners", corner(across, radius))));
        });
        return set;
    }

    /** Round an opening: the cutter's own radius, or where the bearing follows a rounder corner, that corner's and the width. */
    private Figure<Length> corner(Length cutter, Length opening) {
        boolean follows = opening.isLongerThan(bearing(cutter).value().half());
        return follows
                ? Figure.of(
                        opening.plus(width),
                        "the opening's corner radius + width, since the bearing follows it",
                        Reason.GEOMETRY,
                        given("corner", opening),
                        given("width", width))
                : Figure.of(cutter.half(), "cutter / 2", Reason.GEOMETRY, given("cutter", cutter));
    }

    /** What is not known, or does not go; else empty. */
    public String lacking(Optional<Length> cutter) {
        if (cutter.isEmpty()) {
            return "The cutter was not said, so its bearing is not known: it is as far across as the cutter less twice the"
                    + " width.";
        }
        return bearing(cutter.get()).value().isPositive()
                ? ""
                : "That cutter is too small: for this width it is more than twice the width across.";
    }

    private static <T extends Quantity> Reading reading(String what, Figure<T> value) {
        return new Reading(what, value);
    }

    private static Figure<Length> said(Length length) {
        return Figure.of(length, "as said", Reason.THE_WORKBOOK);
    }
}
