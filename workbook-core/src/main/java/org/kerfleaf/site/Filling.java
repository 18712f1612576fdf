package org.kerfleaf.site;

import static org.kerfleaf.reason.Given.given;

import java.util.Optional;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/**
 * What goes round the post, from the gravel up to the ground.
 *
 * @param with {@code concrete}, or the soil
 * @param volume of it, tamped or set
 * @param bags of concrete, by their weight; empty for soil
 * @param lifts how many layers it is tamped in at least; empty for concrete
 * @param toPutSomewhere dug soil that does not go back, loose
 */
public record Filling(
        String with,
        Figure<Volume> volume,
        Optional<Figure<Integer>> bags,
        Optional<Figure<Integer>> lifts,
        Figure<Volume> toPutSomewhere) {
    /** The thickest layer that can be tamped through: 4 to 6 in (100 to 150 mm), common practice. */
    public static final Length LIFT = Length.ofInches(6L);

    /** Concrete round a post of that section, from bags of that mass; the post stands on the gravel. */
    public static Filling concrete(Area post, Length across, Length inGround, Volume hole, Mass bag) {
        Figure<Volume> concrete = Concrete.around(post, across, inGround);
        return new Filling(
                "concrete",
                concrete,
                Optional.of(Concrete.bags(concrete.value(), bag)),
                Optional.empty(),
                PostHole.spoil(hole));
    }

    /** Soil tamped round a post of that section in lifts. */
    public static Filling tamped(String soil, Area post, Length across, Length inGround, Volume hole) {
        Figure<Volume> round = Concrete.around(post, across, inGround);
        Figure<Volume> back = Figure.of(
                round.value(),
                "(π/4 · across² - post's section) · depth",
                Reason.GEOMETRY,
                given("across", across),
                given("post's section", post),
                given("depth", inGround));
        int lifts = (int) Math.ceil(inGround.dividedBy(LIFT) - 1e-9);
        return new Filling(
                soil,
                back,
                Optional.empty(),
                Optional.of(Figure.of(
                        lifts,
                        "depth / 6 in (150 mm), rounded up; thinner lifts tamp better, down to 4 in (100 mm)",
                        Reason.COMMON_PRACTICE,
                        given("depth", inGround))),
                Figure.of(
                        hole.minus(back.value()).times(PostHole.SWELL),
                        "(hole - tamped back) · 1.25, since dug soil swells",
                        Reason.COMMON_PRACTICE,
                        given("hole", hole),
                        given("tamped back", back.value())));
    }
}
