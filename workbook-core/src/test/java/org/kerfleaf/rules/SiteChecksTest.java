package org.kerfleaf.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.site.PostHole;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.sketch.Reach;

class SiteChecksTest {
    private static final MeasureStyle INCHES = MeasureStyle.INCHES;

    /** The seed-swap cabinet's knob, 45 1/2 in (ADA 308: 15 to 48 in). */
    @Test
    void latchUse_seedSwapCabinet_isWithinReach() {
        Check check = latch(45.5);

        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check.result())
                .isEqualTo(
                        "The latch is 45 1/2 in above the ground, for an adult, standing or seated. Wanted: 15 in to 48 in.");
        assertThat(check.margin()).isEqualTo("2 1/2 in to spare");
        assertThat(latch(48).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(latch(48.25).advice()).isEqualTo("Set the post 1/4 in deeper, or cut it shorter.");
        assertThat(latch(15).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(latch(14).advice()).isEqualTo("A post 1 in longer would bring it within reach.");
    }

    /** ADA 307.3: 12 in over a path between 27 and 80 in above it. */
    @Test
    void besidePath_overThePath_isTwelveInchesAtMost() {
        assertThat(path(14, 24, 33.5).result())
                .isEqualTo("It stands out 14 in from the post, and the path begins 24 in away." + " Allowed: 12 in.");
        assertThat(path(36, 24, 33.5).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(path(36.5, 24, 33.5).verdict()).isEqualTo(Verdict.SHORT);
        assertThat(path(36.5, 24, 27).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(path(36.5, 24, 80).verdict()).isEqualTo(Verdict.HOLDS);
    }

    /** The seed-swap cabinet: 40 in in the ground; 50.1 in needed, 38.2 in with the doubling (IBC 1807.3.2.1, 1806.3.4). */
    @Test
    void postDepth_seedSwapCabinet_holdsWithTheDoublingOnly() {
        Check check = post(40, 50.1, 38.2);

        assertThat(check.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(check.result())
                .contains("needs 50 3/32 in, or 38 13/64 in with the soil's bearing doubled")
                .contains("only if the soil's bearing may be doubled")
                .contains(SitePlan.DEFERS);
        assertThat(post(51, 50.1, 38.2).result()).contains("without doubling");
        assertThat(post(38, 50.1, 38.2).verdict()).isEqualTo(Verdict.SHORT);
        assertThat(post(38, 50.1, 38.2).result()).contains("neither way").contains(SitePlan.DEFERS);
        assertThat(SiteChecks.postDepth(
                                "", Length.ofInches(40), Optional.empty(), Optional.empty(), Optional.empty(), INCHES)
                        .verdict())
                .isEqualTo(Verdict.SHORT);
    }

    @Test
    void postDepthByThumb_alwaysDefers() {
        Check check = SiteChecks.postDepthByThumb("", Length.ofInches(23), Length.ofInches(24), INCHES);

        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.result()).contains(SitePlan.DEFERS);
    }

    /** ADA 307.3: more than 12 in apart, the low edge at 27 in or lower. */
    @Test
    void betweenPosts_wideApart_beginsLow() {
        assertThat(between(12, 40).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(between(13, 27).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(between(13, 28).margin()).isEqualTo("over by 1 in");
        assertThat(between(13, 80).verdict()).isEqualTo(Verdict.HOLDS);
    }

    private static Check between(double apart, double low) {
        return SiteChecks.betweenPosts("", Length.ofInches(apart), Length.ofInches(low), INCHES);
    }

    /** ADA advisory 308.1: 20 to 36, 18 to 40, 16 to 44 in. */
    @ParameterizedTest
    @CsvSource({"CHILD_3_TO_4, 20, 36", "CHILD_5_TO_8, 18, 40", "CHILD_9_TO_12, 16, 44", "ADULT, 15, 48"})
    void reach_bandOfEachAge_endsWhereTheTableSays(Reach who, double low, double high) {
        assertThat(reach(who, low).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(reach(who, high).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(reach(who, low - 0.1).verdict()).isEqualTo(Verdict.SHORT);
        assertThat(reach(who, high + 0.1).verdict()).isEqualTo(Verdict.SHORT);
    }

    private static Check reach(Reach who, double height) {
        return SiteChecks.reach("Latch use", "knob", Length.ofInches(height), who, INCHES);
    }

    /** The seed-swap cabinet: hole 44 in, frost 36 in. */
    @Test
    void frostDepth_hole_goesBelowIt() {
        assertThat(frost(44).margin()).isEqualTo("8 in to spare");
        assertThat(frost(36).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(frost(35).advice()).isEqualTo("A hole of 36 in would stand below the frost.");
    }

    /** The seed-swap cabinet's hole: 2.0 cubic feet, a quarter more to put somewhere. */
    @Test
    void holeRoom_seedSwapCabinet_hasRoomToTamp() {
        Check check = hole(10);

        assertThat(check.result())
                .isEqualTo(
                        "A hole of 10 in is 2 cubic feet; 2.5 cubic feet to put somewhere. It is 6 1/2 in wider than the post."
                                + " Wanted: 4 in.");
        assertThat(hole(7.5).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(hole(7).advice()).isEqualTo("A hole 7 1/2 in across leaves room to tamp.");
    }

    /** 29 CFR 1926.651(b) and state law: 2 to 3 working days. */
    @Test
    void services_asked_isTheFirstStep() {
        assertThat(SiteChecks.services("", OptionalInt.of(3), INCHES).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(SiteChecks.services("", OptionalInt.of(2), INCHES).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(SiteChecks.services("", OptionalInt.of(1), INCHES).verdict()).isEqualTo(Verdict.SHORT);
        Check nobody = SiteChecks.services("", OptionalInt.empty(), INCHES);
        assertThat(nobody.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(nobody.advice()).contains("811");
    }

    /** NIOSH 94-110: 51 lb at its best place; the metric equation agrees. */
    @Test
    void limit_bestPlace_isTheLoadConstant() {
        assertThat(limit(10, 30, 10, 1).inPounds()).isCloseTo(51, within(1e-9));
        assertThat(limit(10, 30, 10, 2).inPounds()).isCloseTo(68, within(1e-9));
    }

    /** Second derivation: 23 kg · (25/H) · (1 - .003 |V - 75|) · (.82 + 4.5/D), in centimetres and rounded, is within 3 %. */
    @Test
    void limit_metricEquation_agrees() {
        double metric = 23 * (25 / 38.1) * (1 - 0.003 * Math.abs(50.8 - 75)) * (0.82 + 4.5 / 50.8);

        assertThat(limit(15, 20, 20, 1).inKilograms()).isCloseTo(metric, within(metric * 0.03));
    }

    @Test
    void lift_limit_isTheLine() {
        Mass limit = limit(15, 20, 20, 2);

        assertThat(LiftChecks.lift("Box", limit, limit, 2, INCHES).verdict()).isEqualTo(Verdict.HOLDS);
        Check heavy = LiftChecks.lift("Box", limit.plus(Mass.ofPounds(1)), limit, 2, INCHES);
        assertThat(heavy.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(heavy.margin()).isEqualTo("too heavy by 1.0 lb");
    }

    @Test
    void likeForLike_kitThatLacks_isNamed() {
        Check check = CostChecks.likeForLike(
                "A ready-made cabinet", List.of("post", "paint"), Optional.empty(), List.of(), INCHES);

        assertThat(check.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(check.result()).isEqualTo("The kit leaves out post and paint; this build has it priced in.");
        assertThat(CostChecks.likeForLike("", List.of(), Optional.empty(), List.of("gravel"), INCHES)
                        .verdict())
                .isEqualTo(Verdict.NOT_KNOWN);
        assertThat(CostChecks.likeForLike("", List.of(), Optional.empty(), List.of(), INCHES)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    /** The hole is 10 in round and 44 deep; the post's face is 3 1/2 in. */
    private static Check hole(double across) {
        Length wide = Length.ofInches(across);
        return SiteChecks.holeRoom(
                "",
                wide,
                Length.ofInches(3.5),
                PostHole.volume(wide, Length.ofInches(44)).value(),
                INCHES);
    }

    private static Check frost(long hole) {
        return SiteChecks.frostDepth("", Length.ofInches(hole), Length.ofInches(36), INCHES);
    }

    private static Check latch(double height) {
        return SiteChecks.reach("Latch use", "knob", Length.ofInches(height), Reach.ADULT, INCHES);
    }

    private static Check path(double proud, double toPath, double lowEdge) {
        return SiteChecks.besidePath(
                "", Length.ofInches(proud), Length.ofInches(toPath), Length.ofInches(lowEdge), INCHES);
    }

    private static Check post(double inGround, double plain, double doubled) {
        return SiteChecks.postDepth(
                "",
                Length.ofInches(inGround),
                Optional.of(Length.ofInches(plain)),
                Optional.of(Length.ofInches(doubled)),
                Optional.empty(),
                INCHES);
    }

    private static Mass limit(double out, double from, double up, int people) {
        return LiftChecks.limit(Length.ofInches(out), Length.ofInches(from), Length.ofInches(up), Ratio.of(1), people)
                .value();
    }
}
