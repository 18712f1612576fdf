package org.kerfleaf.site;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/** Bagged concrete round a post. */
public final class Concrete {
    private static final String BAG_SHEETS =
            "bag makers' data sheets: 0.0075 ft³ from each pound of dry mix (seen in a copy)";
    private static final double CUBIC_FEET_PER_POUND = 0.0075;
    private static final double CUBIC_INCHES_IN_FOOT = 1728;
    private static final double CUBIC_MILLIMETRES_IN_INCH = 16_387.064;

    private Concrete() {}

    /** What one bag makes. */
    public static Figure<Volume> makes(Mass bag) {
        double cubicFeet = bag.inPounds() * CUBIC_FEET_PER_POUND;
        return Figure.of(
                Volume.ofCubicMillimetres(cubicFeet * CUBIC_INCHES_IN_FOOT * CUBIC_MILLIMETRES_IN_INCH),
                "0.0075 ft³ from each pound of dry mix",
                BAG_SHEETS,
                given("bag", bag));
    }

    /** Concrete round a post over the whole depth: (π/4 · across² - post's section) · depth. */
    public static Figure<Volume> around(Area postSection, Length across, Length depth) {
        Volume round = PostHole.volume(across, depth).value();
        return Figure.of(
                round.minus(postSection.by(depth)),
                "(π/4 · across² - post's section) · depth",
                Reason.GEOMETRY,
                given("across", across),
                given("post's section", postSection),
                given("depth", depth));
    }

    /** How many bags, nothing wasted. */
    public static Figure<Integer> bags(Volume concrete, Mass bag) {
        Volume each = makes(bag).value();
        return Figure.of(
                (int) Math.ceil(concrete.dividedBy(each) - 1e-9),
                "concrete / yield of a bag, rounded up",
                BAG_SHEETS,
                given("concrete", concrete),
                given("a bag makes", each));
    }
}
