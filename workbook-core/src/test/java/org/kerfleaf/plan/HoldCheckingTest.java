package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.sketch.Side.BACK;
import static org.kerfleaf.sketch.Way.LEFT_TO_RIGHT;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.kerfleaf.joint.FastenerSetting;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.rules.HoldChecks;
import org.kerfleaf.sketch.Joint;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Screw;
import org.kerfleaf.sketch.SketchException;

/** A cleat of 1x3 screwed on a rail of 2x4, 20 in long: each rule for it once short and once holding. */
class HoldCheckingTest {
    /** A 1x3 is 3/4 in thick and lies on the 3 1/2 in face of a 2x4. */
    private static Plan cleat(String species, Screw screw, UnaryOperator<Joint> more) {
        return Bench.plan(b -> {
            Lumber plain = lumber("2x4").lengths("8 ft");
            Lumber two4 = b.keep(species.isEmpty() ? plain : plain.species(species));
            Lumber one3 = b.keep(lumber("1x3").lengths("8 ft"));
            var rail = b.keep(board("Rail", two4).cutTo("20 in"));
            var cleat = b.keep(board("Cleat", one3).cutTo("20 in"));
            var railIn = b.keep(place(rail).running(LEFT_TO_RIGHT).flat());
            var cleatIn = b.keep(place(cleat).running(LEFT_TO_RIGHT).flat().onTopOf(railIn));
            b.keep(more.apply(fasten(cleatIn).to(railIn).screwed(screw).times(4)));
        });
    }

    private static Screw eight(String length) {
        return new Screw(
                new org.kerfleaf.sketch.Origin(9, 9, 9, 1),
                8,
                Length.parse(length),
                org.kerfleaf.sketch.Metal.NOT_SAID,
                1,
                java.util.Optional.empty());
    }

    private static Check check(Plan plan, String rule) {
        return plan.checks().stream()
                .filter(c -> c.name().startsWith(rule + ":"))
                .findFirst()
                .orElseThrow(() -> new AssertionError(rule + " is none of "
                        + plan.checks().stream().map(Check::name).toList()));
    }

    private static Verdict verdict(Plan plan, String rule) {
        return check(plan, rule).verdict();
    }

    // ---- what is said of each fastener -------------------------------------------------------------------------

    /** 2850 · 0.50² · 0.164 = 116.85 lb/in (NDS 2018 12.2-2); thread 1 1/2 - 3/4 + 1/16 = 13/16, less than two thirds of 1 1/2. */
    @Test
    void setting_numberEightIntoLarch_isAsWorkedOutByHand() {
        Fastened four =
                cleat("douglas fir larch", eight("1 1/2 in"), j -> j).fastened().get(0);
        FastenerSetting setting = four.setting();
        assertThat(four.count()).isEqualTo(4);
        assertThat(setting.clearance().orElseThrow().value().inInches()).isEqualTo(11 / 64.0);
        assertThat(setting.pilot().orElseThrow().value().inInches()).isEqualTo(5 / 64.0);
        assertThat(setting.leadHole()).as("none is asked up to 0.5").isEmpty();
        assertThat(setting.reach().orElseThrow().value().inInches()).isEqualTo(0.8125);
        assertThat(setting.diameters().orElseThrow().value().value()).isCloseTo(0.8125 / 0.164, within(1e-9));
        assertThat(setting.tip().orElseThrow().value().inInches()).isEqualTo(1.5 - 0.8125);
        assertThat(setting.holds().orElseThrow().value().inPounds())
                .isCloseTo(2850 * 0.25 * 0.164 * 0.8125, within(1e-6));
        assertThat(setting.holdsDamp().orElseThrow().value().inPounds())
                .isCloseTo(0.7 * 2850 * 0.25 * 0.164 * 0.8125, within(1e-6));
    }

    /** NDS 2018 12.1.5 with root 0.131 in of appendix L: 70 % between 0.5 and 0.6, 90 % above, to the nearest 1/64 in. */
    @Test
    void leadHole_followsTheWood() {
        assertThat(lead("southern pine")).isEqualTo(6 / 64.0);
        assertThat(lead("white oak")).isEqualTo(8 / 64.0);
    }

    private static double lead(String species) {
        return cleat(species, eight("2 in"), j -> j)
                .fastened()
                .get(0)
                .setting()
                .leadHole()
                .orElseThrow()
                .value()
                .inInches();
    }

    @Test
    void holds_ofAWoodNobodySaid_isNotKnown() {
        FastenerSetting setting =
                cleat("", eight("1 1/2 in"), j -> j).fastened().get(0).setting();
        assertThat(setting.holds()).isEmpty();
        assertThat(setting.notHeld()).contains("say its species");
    }

    // ---- rules, one word apart -----------------------------------------------------------------------------------

    @Test
    void jacking_dependsOnTheClearanceHole() {
        assertThat(verdict(cleat("hem-fir", eight("2 in"), j -> j), "Jacking")).isEqualTo(Verdict.HOLDS);
        Check not = check(cleat("hem-fir", eight("2 in"), Joint::notDrilled), "Jacking");
        assertThat(not.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(not.advice()).isEqualTo("Drill a clearance hole of 11/64 in through the first part.");
        // A third of 2 1/4 in is 3/4 in of plain shank, as much as the cleat is thick.
        assertThat(verdict(cleat("hem-fir", eight("2 1/4 in"), Joint::notDrilled), "Jacking"))
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void pilot_isAskedInDenseWood() {
        assertThat(verdict(cleat("hem-fir", eight("2 in"), Joint::notDrilled), "Pilot hole"))
                .as("2 1/2 in from the end")
                .isEqualTo(Verdict.SHORT);
        UnaryOperator<Joint> one = j -> j.times(1).notDrilled();
        assertThat(verdict(cleat("hem-fir", eight("2 in"), one), "Pilot hole")).isEqualTo(Verdict.HOLDS);
        assertThat(verdict(cleat("white oak", eight("2 in"), one), "Pilot hole"))
                .isEqualTo(Verdict.SHORT);
        assertThat(verdict(cleat("", eight("2 in"), one), "Pilot hole")).isEqualTo(Verdict.NOT_KNOWN);
        assertThat(verdict(cleat("white oak", eight("2 in"), j -> j), "Pilot hole"))
                .isEqualTo(Verdict.HOLDS);
    }

    /** Four stand in a row, the first 10 diameters, 1.64 in, from the end; not drilled it wants 15, 2.46 in. */
    @Test
    void endDistance_isMeasuredAsPlaced() {
        Plan drilled = cleat("hem-fir", eight("2 in"), j -> j);
        assertThat(drilled.fastened().get(0).clearances().end().orElseThrow().inInches())
                .isCloseTo(1.64, within(1e-6));
        assertThat(verdict(drilled, "End distance")).isEqualTo(Verdict.HOLDS);
        assertThat(verdict(cleat("hem-fir", eight("2 in"), Joint::notDrilled), "End distance"))
                .isEqualTo(Verdict.SHORT);
    }

    @Test
    void rowDistance_ofTooMany_isShort() {
        assertThat(verdict(cleat("hem-fir", eight("2 in"), j -> j), "Row distance"))
                .isEqualTo(Verdict.HOLDS);
        assertThat(verdict(cleat("hem-fir", eight("2 in"), j -> j.times(14)), "Row distance"))
                .isEqualTo(Verdict.SHORT);
    }

    /** Thread 1.3125 in at 86.41 lb/in (G 0.43): 113.4 lb each, 453.7 lb of four. */
    @Test
    void pull_isHeldAgainstAllOfThem() {
        assertThat(verdict(cleat("hem-fir", eight("2 in"), j -> j.pulledBy("450 lb")), "Pull"))
                .isEqualTo(Verdict.HOLDS);
        Check more = check(cleat("hem-fir", eight("2 in"), j -> j.pulledBy("460 lb")), "Pull");
        assertThat(more.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(more.result()).contains("113.4 lb each, 453.7 lb together");
        assertThat(verdict(cleat("", eight("2 in"), j -> j.pulledBy("5 lb")), "Pull"))
                .isEqualTo(Verdict.NOT_KNOWN);
    }

    /** A rail screwed to the end of a joist: nothing is relied on there; a lag screw keeps 0.75 (NDS 2018 12.5.2). */
    private static Plan joist(UnaryOperator<Joint> with) {
        return Bench.plan(b -> {
            Lumber two4 = b.keep(lumber("2x4").species("spruce-pine-fir").lengths("8 ft"));
            var rail = b.keep(board("Rail", two4).cutTo("20 in"));
            var joist = b.keep(board("Joist", two4).cutTo("12 in"));
            var railIn = b.keep(place(rail).running(LEFT_TO_RIGHT));
            var joistIn = b.keep(
                    place(joist).running(org.kerfleaf.sketch.Way.FRONT_TO_BACK).behind(railIn));
            b.keep(with.apply(fasten(railIn).to(joistIn)).times(2));
        });
    }

    @Test
    void endGrain_holdsNoPull() {
        UnaryOperator<Joint> screws = j -> j.screwed(woodScrew(8, "3 in"));
        assertThat(verdict(joist(screws), "Pull in end grain")).isEqualTo(Verdict.NOT_KNOWN);
        Check pulled = check(joist(j -> screws.apply(j).pulledBy("10 lb")), "Pull");
        assertThat(pulled.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(pulled.advice()).contains("cleat");
        assertThat(verdict(joist(j -> j.lagged(lagScrew("3/8 in", "4 in")).pulledBy("10 lb")), "Pull"))
                .isEqualTo(Verdict.HOLDS);
    }

    /** 1800 · 0.42^1.5 · 0.375^0.75 · (2 1/2 - 7/32) = 535.6 lb in side grain, 401.7 in end grain. */
    @Test
    void lag_inEndGrain_keepsThreeQuarters() {
        FastenerSetting setting = joist(j -> j.lagged(lagScrew("3/8 in", "4 in")))
                .fastened()
                .get(0)
                .setting();
        assertThat(setting.holds().orElseThrow().value().inPounds()).isCloseTo(0.75 * 535.6, within(0.05));
        assertThat(setting.clearance().orElseThrow().value().inInches()).isEqualTo(0.375);
        assertThat(setting.pilot().orElseThrow().value().inInches()).isEqualTo(13 / 64.0);
    }

    // ---- brackets ---------------------------------------------------------------------------------------------------

    /** 120 lb · 5 in / 9 in / 3 = 22.2 lb; a No. 10 x 2 1/2 in holds 95.5 · 1 2/3 = 159.2 lb at G 0.42. */
    private static Plan brackets(String apart, String weight, String studs) {
        return Bench.plan(b -> {
            var shelf = b.keep(
                    board("Shelf", b.keep(lumber("1x10").lengths("8 ft"))).cutTo("72 in"));
            var shelfIn = b.keep(place(shelf).running(LEFT_TO_RIGHT).flat());
            var bracket = fitting("bracket").thick(length("1/8 in")).comesWith(woodScrew(10, "2 1/2 in"));
            b.keep(fit(apart.isEmpty() ? bracket : bracket.screwsApart(apart))
                    .times(3)
                    .at(shelfIn, BACK)
                    .toStudsOf(studs)
                    .carrying(weight, "5 in"));
        });
    }

    @Test
    void bracketPull_dependsOnTheHeightBetweenItsScrews() {
        Check holds = check(brackets("9 in", "120 lb", "spruce-pine-fir"), "Bracket pull");
        assertThat(holds.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(holds.result()).contains("22.2 lb at each top screw", "Allowed: 159.2 lb");
        assertThat(verdict(brackets("1 1/4 in", "120 lb", "spruce-pine-fir"), "Bracket pull"))
                .isEqualTo(Verdict.SHORT);
        assertThat(List.of(
                        verdict(brackets("", "120 lb", "spruce-pine-fir"), "Bracket pull"),
                        verdict(brackets("9 in", "120 lb", "stone"), "Bracket pull")))
                .containsOnly(Verdict.NOT_KNOWN);
    }

    // ---- nails, bolts, loads across -----------------------------------------------------------------------------

    /** Two 2x4 on edge, one before the other, 20 in long; what joins them goes level through 1 1/2 in into 1 1/2 in. */
    private static Plan pair(UnaryOperator<Joint> more, String load) {
        return Bench.plan(b -> {
            Lumber two4 = b.keep(lumber("2x4").species("douglas fir larch").lengths("8 ft"));
            var back = b.keep(board("Back", two4).cutTo("20 in"));
            var front = b.keep(board("Front", two4).cutTo("20 in"));
            var backIn = b.keep(place(back).running(LEFT_TO_RIGHT));
            var frontIn = b.keep(place(front).running(LEFT_TO_RIGHT).inFrontOf(backIn));
            var on = b.keep(more.apply(fasten(frontIn).to(backIn)));
            if (!load.isEmpty()) {
                b.keep(carries(on, load));
            }
        });
    }

    /** A 16d nail, 0.162 in, wants 6 D = 0.972 in: 3 1/2 in reach 2 in; one of 2 1/4 in reaches 3/4 in. */
    @Test
    void nailReach_isSixDiameters() {
        Plan plan = pair(j -> j.nailed(commonNail("16d"), every("6 in")), "");
        assertThat(verdict(plan, "Nail reach")).isEqualTo(Verdict.HOLDS);
        assertThat(plan.fastened()
                        .get(0)
                        .setting()
                        .reach()
                        .orElseThrow()
                        .value()
                        .inInches())
                .isEqualTo(2);
        assertThat(plan.fastened()
                        .get(0)
                        .setting()
                        .holds()
                        .orElseThrow()
                        .value()
                        .inPounds())
                .as("39.5 lb/in, of which 1 1/2 in are in the wood")
                .isCloseTo(1380 * StrictMath.pow(0.5, 2.5) * 0.162 * 1.5, within(1e-6));
        assertThat(verdict(pair(j -> j.nailed(wireNail("0.162 in", "2 1/4 in"), every("6 in")), ""), "Nail reach"))
                .isEqualTo(Verdict.SHORT);
    }

    /** Not drilled, 15 D of 0.113 in are 1.695 in; rows of 6d stand 10 D or 1 1/2 in from the end. */
    @Test
    void nailDistance_atAnEnd_isFifteenDiameters() {
        assertThat(verdict(pair(j -> j.nailed(commonNail("6d"), every("6 in")), ""), "End distance"))
                .isEqualTo(Verdict.SHORT);
        assertThat(verdict(pair(j -> j.nailed(wireNail("0.099 in", "2 1/2 in"), every("6 in")), ""), "End distance"))
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void commonNail_thatIsNotMade_isTold() {
        assertThatThrownBy(() -> pair(j -> j.nailed(commonNail("9d"), every("6 in")), ""))
                .isInstanceOf(SketchException.class)
                .hasMessageContaining("“9d” is no common nail. 6d, 7d, 8d");
    }

    /** In the middle of a 2x4 a bolt is 1 3/4 in from either edge: 4 D of 3/8 in are 1 1/2, of 1/2 in 2; 1.5 D of 3/4 in are 1 1/8. */
    @Test
    void boltDistance_betweenTheTwoRules_isNotKnown() {
        assertThat(verdict(pair(j -> j.bolted(carriageBolt("3/8 in")).times(1), ""), "Edge distance"))
                .isEqualTo(Verdict.HOLDS);
        assertThat(verdict(pair(j -> j.bolted(carriageBolt("1/2 in")).times(1), ""), "Edge distance"))
                .isEqualTo(Verdict.NOT_KNOWN);
        assertThat(HoldChecks.boltDistance(
                                "Front to Back",
                                Length.ofInches(0.5),
                                Length.ofInches(0.7),
                                false,
                                MeasureStyle.of(LengthUnit.INCHES))
                        .verdict())
                .as("1.5 D are 3/4 in")
                .isEqualTo(Verdict.SHORT);
    }

    /** 1/2 in through two level boards of 1 1/2 in holds 220 lb straight down (NDS table 12A in tens, from memory): 217. */
    @Test
    void sideways_isHeldAgainstWhatHangs() {
        UnaryOperator<Joint> one = j -> j.bolted(carriageBolt("1/2 in")).times(1);
        assertThat(pair(one, "200 lb")
                        .loads()
                        .onJoints()
                        .get(0)
                        .holds()
                        .orElseThrow()
                        .value()
                        .inPounds())
                .isCloseTo(217, within(0.5));
        assertThat(verdict(pair(one, "216 lb"), "Sideways")).isEqualTo(Verdict.HOLDS);
        Check over = check(pair(one, "219 lb"), "Sideways");
        assertThat(over.verdict()).isEqualTo(Verdict.SHORT);
        assertThat(over.result()).contains("219.0 lb hang on 1: 219.0 lb sideways on each.");
        assertThat(verdict(pair(j -> j.nailed(finishNail("2 1/2 in"), every("6 in")), "20 lb"), "Sideways"))
                .isEqualTo(Verdict.NOT_KNOWN);
    }
}
