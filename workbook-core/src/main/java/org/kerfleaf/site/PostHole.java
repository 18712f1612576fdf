package org.kerfleaf.site;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/** A round hole, what goes into it, and the heights above it. */
public final class PostHole {
    /** How much larger dug soil lies than it lay: common practice, no source. */
    public static final double SWELL = 1.25;

    private PostHole() {}

    /** The volume of a round hole, or of a layer in it: π/4 · across² · deep. */
    public static Figure<Volume> volume(Length across, Length deep) {
        return Figure.of(
                across.by(across).times(Math.PI / 4).by(deep),
                "π/4 · across² · deep",
                Reason.GEOMETRY,
                given("across", across),
                given("deep", deep));
    }

    /** What must be put somewhere: the hole's volume and a quarter of it. */
    public static Figure<Volume> spoil(Volume hole) {
        return Figure.of(
                hole.times(SWELL),
                "hole · 1.25, since dug soil swells",
                Reason.COMMON_PRACTICE,
                given("hole", hole),
                given("swell", Ratio.of(SWELL)));
    }

    /** How much of the post is below grade, if it stands on the gravel: deep - gravel. */
    public static Figure<Length> inGround(Length deep, Length gravel) {
        return Figure.of(
                deep.minus(gravel), "deep - gravel", Reason.GEOMETRY, given("deep", deep), given("gravel", gravel));
    }

    /** The post's top above grade: post - in the ground. */
    public static Figure<Length> postTop(Length post, Length inGround) {
        return Figure.of(
                post.minus(inGround),
                "post - in the ground",
                Reason.GEOMETRY,
                given("post", post),
                given("in the ground", inGround));
    }

    /** A height above grade from the one below it and what lies between: the post's top and a seat, a box's underside and its knob. */
    public static Figure<Length> above(String lowerName, Length lower, String betweenName, Length between) {
        return Figure.of(
                lower.plus(between),
                lowerName + " + " + betweenName,
                Reason.GEOMETRY,
                given(lowerName, lower),
                given(betweenName, between));
    }
}
