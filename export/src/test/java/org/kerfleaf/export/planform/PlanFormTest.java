package org.kerfleaf.export.planform;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.kerfleaf.cost.CostLine;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetPlacement;
import org.kerfleaf.export.spreadsheet.PlanFixture;
import org.kerfleaf.joint.Clearances;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.joint.FastenerSetting;
import org.kerfleaf.joint.Hold;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Fastened;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedPart;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.rules.Check;
import org.kerfleaf.shape.Vector;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PlanFormTest {
    private static final JsonMapper READER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();
    private static final Plan PLAN = PlanFixture.withProblem();

    private static JsonNode read(Plan plan) {
        return READER.readTree(PlanForm.json(plan));
    }

    private static void same(JsonNode number, BigDecimal expected) {
        assertThat(number.isNumber()).isTrue();
        assertThat(number.decimalValue()).isEqualByComparingTo(expected);
    }

    @Test
    void json_top_hasTheDocumentedMembersInOrder() {
        assertThat(read(PLAN).propertyNames())
                .containsExactly(
                        "workbook",
                        "units",
                        "sizes",
                        "parts",
                        "sheets",
                        "boards",
                        "bounds",
                        "sawSettings",
                        "hardware",
                        "fastened",
                        "chosen",
                        "glued",
                        "movement",
                        "hung",
                        "panes",
                        "finish",
                        "paintwork",
                        "cost",
                        "checks",
                        "steps",
                        "schedule",
                        "buying",
                        "site",
                        "loads",
                        "rain",
                        "cautions",
                        "day",
                        "currency",
                        "pricesOf",
                        "overall",
                        "chains",
                        "weight",
                        "problems",
                        "form");
    }

    @Test
    void json_chains_areLinksInMillimetresWithWhatIsHeld() {
        JsonNode across = read(PLAN).get("chains").get(0);
        assertThat(across.get("axis").asString()).isEqualTo("x");
        assertThat(across.get("links").get(1).get("letter").asString()).isEqualTo("A");
        same(across.get("links").get(1).get("size"), new BigDecimal("479.425"));
        same(across.get("overall"), new BigDecimal("515.9375"));
        assertThat(across.get("closes").asBoolean()).isTrue();
        assertThat(across.get("held").get(0).get("span").asString()).isEqualTo("between Side and Side");
        JsonNode up = read(PLAN).get("chains").get(1);
        assertThat(up.get("closes").asBoolean()).isFalse();
        same(up.get("lacks"), new BigDecimal("0.396875"));
    }

    @Test
    void json_sizeTried_hasOneMoreMemberWithOldAndNew() {
        JsonNode form = READER.readTree(PlanForm.json(PLAN, Optional.of(PlanFixture.changes()), false));
        List<String> names = new ArrayList<>(read(PLAN).propertyNames());
        names.add("changes");
        assertThat(form.propertyNames()).containsExactlyElementsOf(names);
        JsonNode floor = form.get("changes").get(1);
        assertThat(floor.get("topic").asString()).isEqualTo("Parts");
        assertThat(floor.get("subject").asString()).isEqualTo("Floor");
        assertThat(floor.get("aspect").asString()).isEqualTo("along the grain");
        same(floor.get("before"), new BigDecimal("479.425"));
        same(floor.get("after"), new BigDecimal("508"));
        assertThat(form.get("changes").get(2).get("after").isNull()).isTrue();
        same(form.get("changes").get(3).get("after"), new BigDecimal("35"));
    }

    @Test
    void json_emptyPlan_hasTheSameMembers() {
        assertThat(read(PlanFixture.bare()).propertyNames())
                .containsExactlyElementsOf(read(PLAN).propertyNames());
    }

    @Test
    void json_parts_areThePlansToTheNanometre() {
        JsonNode parts = read(PLAN).get("parts");
        assertThat(parts).hasSameSizeAs(PLAN.parts());
        for (int at = 0; at < parts.size(); at++) {
            PlannedPart part = PLAN.parts().get(at);
            assertThat(parts.get(at).get("letter").asString()).isEqualTo(part.letter());
            assertThat(parts.get(at).get("count").asInt()).isEqualTo(part.count());
            same(parts.get(at).get("length"), part.length().value().exactMillimetres());
            same(parts.get(at).get("width"), part.width().value().exactMillimetres());
            same(parts.get(at).get("thickness"), part.thickness().value().exactMillimetres());
            assertThat(parts.get(at).get("edges")).hasSameSizeAs(part.edges());
        }
        same(parts.get(1).get("edges").get(0).get("angle"), new BigDecimal("14.5"));
    }

    @Test
    void json_placements_areThePlans() {
        SheetLayout layout = PLAN.sheets().get(0);
        JsonNode sheet = read(PLAN).get("sheets").get(0);
        same(sheet.get("kerf"), layout.sheet().kerf().exactMillimetres());
        same(sheet.get("price"), new BigDecimal("34.75"));
        assertThat(sheet.get("cuts")).hasSameSizeAs(layout.cuts());
        for (int at = 0; at < layout.placements().size(); at++) {
            SheetPlacement placed = layout.placements().get(at);
            JsonNode form = sheet.get("placements").get(at);
            assertThat(form.get("part").asString()).isEqualTo(placed.part());
            same(form.get("x"), placed.x().exactMillimetres());
            same(form.get("y"), placed.y().exactMillimetres());
            assertThat(form.get("turned").asBoolean()).isEqualTo(placed.turned());
        }
    }

    @Test
    void json_cost_isThePlansAndSaysNullForWhatIsNotKnown() {
        JsonNode cost = read(PLAN).get("cost");
        same(cost.get("bought"), PLAN.cost().bought().orElseThrow().value().getAmount());
        same(cost.get("used"), PLAN.cost().used().orElseThrow().value().getAmount());
        same(
                cost.get("compare").get(0).get("difference"),
                PLAN.cost().compare().get(0).difference().orElseThrow().value().getAmount());
        for (int at = 0; at < PLAN.cost().lines().size(); at++) {
            CostLine line = PLAN.cost().lines().get(at);
            JsonNode form = cost.get("lines").get(at);
            assertThat(form.get("packs").asInt()).isEqualTo(line.packs().value());
            assertThat(form.get("each").isNull()).isEqualTo(line.each().isEmpty());
        }
    }

    @Test
    void json_checks_haveVerdictMarginAndLevel() {
        JsonNode checks = read(PLAN).get("checks");
        assertThat(PLAN.checks()).extracting(Check::verdict).hasSize(checks.size());
        assertThat(checks.get(0).get("verdict").asString()).isEqualTo("holds");
        assertThat(checks.get(1).get("verdict").asString()).isEqualTo("short");
        assertThat(checks.get(2).get("verdict").asString()).isEqualTo("not known");
        assertThat(checks.get(2).get("level").isNull()).isTrue();
        same(checks.get(1).get("level"), new BigDecimal("-0.016"));
    }

    @Test
    void json_fastened_hasEveryFastenerInItsPlace() {
        DrivenFastener screw = new DrivenFastener(
                DrivenFastener.Kind.SCREW,
                new Vector(12.7, -18.25625, 0.1 + 0.2),
                new Vector(12.7, 24.60625, 0.3),
                Optional.empty());
        Fastened contact = new Fastened(
                2,
                "Back to Floor",
                "wood screw No. 6 x 1 5/8 in",
                1,
                FastenerSetting.unknown(Hold.SHEET_EDGE, "no table says it"),
                new Clearances(Optional.empty(), Optional.of(Length.ofSixtyFourths(23)), Optional.empty()),
                new Fastened.Bound("Back", 1),
                List.of(new Fastened.Bound("Floor", 2)),
                Length.ofSixtyFourths(29),
                List.of(screw));
        JsonNode form = read(PlanFixture.fastened(contact)).get("fastened").get(0);
        assertThat(form.propertyNames())
                .containsExactly(
                        "step",
                        "joint",
                        "fastener",
                        "count",
                        "setting",
                        "nearest",
                        "through",
                        "into",
                        "moved",
                        "driven");
        assertThat(form.get("setting").get("in").asString()).isEqualTo("a sheet’s edge");
        assertThat(form.get("setting").get("holds").isNull()).isTrue();
        assertThat(form.get("setting").get("notHeld").asString()).isEqualTo("no table says it");
        same(form.get("nearest").get("edge"), new BigDecimal("9.128125"));
        assertThat(form.get("nearest").get("end").isNull()).isTrue();
        assertThat(form.get("count").asInt()).isEqualTo(1);
        assertThat(form.get("through").get("part").asString()).isEqualTo("Back");
        assertThat(form.get("into").get(0).get("piece").asInt()).isEqualTo(2);
        same(form.get("moved"), new BigDecimal("11.509375"));
        JsonNode head = form.get("driven").get(0).get("head");
        same(head.get(1), new BigDecimal("-18.25625"));
        // To the nanometre: what doubles add beyond it is no figure.
        same(head.get(2), new BigDecimal("0.3"));
        same(form.get("driven").get(0).get("tip").get(1), new BigDecimal("24.60625"));
    }

    @Test
    void json_numbers_areShortestAndNeverHaveAnExponent() {
        String json = PlanForm.json(PLAN);
        assertThat(json)
                .contains("\"length\" : 1219.2,")
                .contains("\"trim\" : 6.35,")
                .contains("\"each\" : 4.10,");
        assertThat(json).doesNotContainPattern("[0-9][eE][-+]?[0-9]");
    }

    @Test
    void json_units_changeNoNumber() {
        JsonNode inches = read(PlanFixture.inches());
        JsonNode millimetres = read(PlanFixture.millimetres());
        assertThat(millimetres.get("units").asString()).isEqualTo("mm");
        assertThat(millimetres.get("parts")).isEqualTo(inches.get("parts"));
    }

    @Test
    void json_twice_isTheSame() {
        assertThat(PlanForm.json(PLAN, true)).isEqualTo(PlanForm.json(PlanFixture.withProblem(), true));
    }

    @Test
    void json_withReasons_pointsFromEachReasonToItsFigure() {
        JsonNode form = READER.readTree(PlanForm.json(PLAN, true));
        Set<String> places = Set.copyOf(form.get("reasons").propertyNames());
        assertThat(places)
                .contains(
                        "/parts/0/length",
                        "/cost/bought",
                        "/sawSettings/2/scale",
                        "/site/hole",
                        "/parts/1/edges/0/shorter");
        assertThat(places)
                .allSatisfy(
                        place -> assertThat(form.at(place).isNumber()).as(place).isTrue());
        Reason reason = PLAN.parts().get(0).length().reason();
        JsonNode told = form.get("reasons").get("/parts/0/length");
        assertThat(told.get("because").asString()).isEqualTo(reason.rule());
        assertThat(told.get("source").asString()).isEqualTo(reason.source());
        assertThat(told.get("given").get(0).get("value").asString()).isEqualTo("18 7/8 in");
    }

    @Test
    void json_withReasons_isOtherwiseTheSame() {
        JsonNode with = READER.readTree(PlanForm.json(PLAN, true));
        for (String member : List.copyOf(read(PLAN).propertyNames())) {
            assertThat(with.get(member)).as(member).isEqualTo(read(PLAN).get(member));
        }
    }
}
