package org.kerfleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.words.Words.*;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Buying.Load;
import org.kerfleaf.plan.Buying.ShopCut;
import org.kerfleaf.plan.Buying.Way;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Vehicle;

class BringingTest {
    /** Three panels of 47 by 30 in on a sheet of 48 by 96 in. */
    private static Plan panels(UnaryOperator<Vehicle> said) {
        return Bench.plan(bench -> {
            bench.keep(panel("Wall", bench.ply()).wide("47 in").high("30 in").times(3));
            bench.keep(said.apply(vehicle("van")));
        });
    }

    private static Load sheet(Plan plan) {
        return plan.buying().home().orElseThrow().loads().get(0);
    }

    @Test
    void sheet_thatFits_goesAsItIs() {
        Plan plan = panels(van -> van.wideInside("48 in").longInside("96 in"));

        assertThat(sheet(plan).way()).isEqualTo(Way.WHOLE);
        assertThat(sheet(plan).cuts()).isEmpty();
        assertThat(plan.check("Gets home: plywood, sheet 1").orElseThrow().verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void sheet_thatIsTooLong_isCutWhereTheLayoutCutsIt_andNoPartIsHarmed() {
        Plan plan = panels(van -> van.wideInside("48 in").longInside("62 in"));
        Load load = sheet(plan);

        assertThat(load.way()).isEqualTo(Way.CUT);
        assertThat(load.cuts()).hasSize(1);
        ShopCut cut = load.cuts().get(0);
        assertThat(cut.across()).isTrue();
        plan.sheets()
                .get(0)
                .placements()
                .forEach(placed -> assertThat(cut.at().value().isLongerThan(placed.x())
                                && cut.at().value().isShorterThan(placed.x().plus(placed.length())))
                        .as("through %s", placed)
                        .isFalse());
        assertThat(load.pieces())
                .allSatisfy(piece -> assertThat(piece.length().isLongerThan(Length.ofInches(62)))
                        .isFalse());
        assertThat(load.words()).contains("across the sheet", "no part is harmed");
    }

    /** A van narrower than both sides of a wall. */
    @Test
    void sheet_whosePartsDoNotFit_saysWhichAndWhatWould() {
        Plan plan = panels(van -> van.wideInside("29 in").longInside("96 in"));

        assertThat(sheet(plan).way()).isEqualTo(Way.NOT);
        assertThat(sheet(plan).words()).contains("“Wall” alone", "delivered");
        assertThat(plan.check("Gets home: plywood, sheet 1").orElseThrow().verdict())
                .isEqualTo(Verdict.SHORT);
    }

    @Test
    void sheet_thatNeedsMoreThanTwoCuts_saysHowMany() {
        Plan plan = Bench.plan(bench -> {
            bench.keep(panel("Slab", bench.ply()).wide("47 in").high("23 in").times(4));
            bench.keep(vehicle("van").wideInside("30 in").longInside("48 in"));
        });

        assertThat(sheet(plan).way()).isEqualTo(Way.NOT);
        assertThat(sheet(plan).words()).contains("No two cuts", "3 are");
    }

    @Test
    void vehicle_ofUnknownSize_isNotKnown() {
        assertThat(sheet(panels(van -> van)).way()).isEqualTo(Way.NOT_KNOWN);
        Plan plan = panels(van -> van.wideInside("48 in"));
        assertThat(plan.check("Gets home: plywood, sheet 1").orElseThrow().advice())
                .contains("longInside");
    }

    @Test
    void roof_carriesASheetOrNot() {
        assertThat(sheet(panels(van ->
                                van.wideInside("29 in").longInside("60 in").roofCarries("80 lb")))
                        .words())
                .contains("The roof carries one");
        assertThat(sheet(panels(van ->
                                van.wideInside("29 in").longInside("60 in").roofCarries("70 lb")))
                        .words())
                .contains("too heavy");
    }

    @ParameterizedTest
    @CsvSource({
        "96 in, as it is, ''",
        "95 in, cut in the shop, 90.25",
        "60 1/8 in, cut in the shop, 60.125",
        "60 in, cut in the shop, 60.125",
        "29 in, not in this vehicle, ''"
    })
    void board_isCutBetweenTwoParts(String longInside, String goes, String at) {
        Plan plan = Bench.plan(bench -> {
            Lumber lumber = bench.keep(lumber("1x4").lengths("8 ft"));
            bench.keep(board("Rail", lumber).cutTo("30 in").times(3));
            bench.keep(vehicle("van").wideInside("40 in").longInside(longInside));
        });
        Load board = sheet(plan);

        assertThat(board.way().words()).isEqualTo(goes);
        List<ShopCut> cuts = board.cuts();
        assertThat(cuts.isEmpty()).isEqualTo(at.isEmpty());
        if (!at.isEmpty()) {
            assertThat(cuts.get(0).at().value().inInches()).isCloseTo(Double.parseDouble(at), within(1e-9));
            assertThat(cuts.get(0).between())
                    .isEqualTo(at.equals("90.25") ? "after “Rail”" : "between “Rail” and “Rail”");
        }
    }
}
