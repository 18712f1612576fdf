package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Buying;
import org.kerfleaf.plan.Loads;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.rules.Check;
import org.kerfleaf.workbook.Workbook;

/** What goes into the cabinet, how its stock gets home, and snow on its roof; worked out by hand. */
class CabinetStockTest {
    /** Two boxes of 8 in and 2 in for a hand: 18 in of 22; between the shelves 15 - 8 - 23/32 = 6 9/32 in, 6 of them needed. */
    @Test
    void contents_haveTheRoomThatIsThere() {
        Loads.Contained boxes = Sample.CABINET.plan().loads().contents().get(0);

        Map<String, String> rooms = boxes.rooms().stream()
                .collect(Collectors.toMap(
                        Loads.Room::way,
                        room -> room.need().value().inInches() + " of "
                                + room.there().orElseThrow().value().inInches()));
        assertThat(boxes.each()).isEqualTo(2);
        assertThat(rooms)
                .containsEntry("wide", "18.0 of 22.0")
                .containsEntry("deep", "8.0 of 11.0")
                .containsEntry("high", "6.0 of 6.28125");
    }

    /** Held outside, 19 in leave 17 9/16 in: 7/16 in less than two boxes and a hand need. */
    @Test
    void contents_withTheOutsideHeld_noLongerFit() {
        String inside = "Length width    = size(\"Width inside\", \"22 in\", \"16 in to 30 in\");";
        String text = Sample.CABINET.workbook().text();
        assertThat(text).contains(inside);
        Plan plan = Sample.plan(
                Workbook.parse(text.replace(
                        inside,
                        "Length width = size(\"Outside\", \"19 in\").minus(\"23/32 in\").minus(\"23/32 in\");")),
                Map.of());

        Check wide = plan.check("Room for what goes in: Box of seed packets on Shelf, wide")
                .orElseThrow();
        assertThat(wide.verdict()).isEqualTo(Check.Verdict.SHORT);
        assertThat(wide.margin()).isEqualTo("short by 7/16 in");
    }

    @Test
    void everything_getsHome_andNoShopCutGoesThroughAPart() {
        Plan plan = Sample.CABINET.plan();
        Buying.Home home = plan.buying().home().orElseThrow();

        assertThat(home.loads()).allSatisfy(load -> assertThat(load.way()).isIn(Buying.Way.WHOLE, Buying.Way.CUT));
        Buying.Load sheet = home.loads().get(0);
        assertThat(sheet.cuts()).isNotEmpty().hasSizeLessThanOrEqualTo(2);
        for (Buying.ShopCut cut : sheet.cuts()) {
            Length at = cut.at().value();
            assertThat(plan.sheets().get(0).placements()).noneMatch(placed -> {
                Length low = cut.across() ? placed.x() : placed.y();
                Length high = low.plus(cut.across() ? placed.length() : placed.width());
                return at.isLongerThan(low) && at.isShorterThan(high);
            });
        }
    }

    /** 30 psf on the ground are 21 on the roof, whose halves lie on front and back, 11 in apart. */
    @Test
    void snow_liesOnBothHalvesOfTheRoof() {
        Loads.Snow snow = Sample.CABINET.plan().loads().snow().orElseThrow();

        assertThat(snow.pressure().value().inPoundsPerSquareFoot()).isCloseTo(21, within(1e-9));
        assertThat(snow.carried()).extracting(Loads.Carried::part).containsExactly("Roof");
        Loads.Carried roof = snow.carried().get(0);
        assertThat(roof.load().value().inPounds()).isCloseTo(roof.area().value().inSquareFeet() * 21, within(1e-6));
        assertThat(roof.bending().orElseThrow().span().value()).isEqualTo(Length.ofInches(11));
    }
}
