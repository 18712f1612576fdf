package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.caution.Topic;
import org.kerfleaf.workbook.Workbook;

/** For each topic a workbook that brings its caution and one that does not, a few words apart. */
class CautionWorkbooksTest {
    private static final String TALK = """
            # A try

            ```java
            measureIn(INCHES);
            Sheet ply = sheet("plywood", "48 in", "96 in").measured("3/4 in");
            ```

            ## Build steps

            ### Only step

            ```java
            takes("1 h");
            ```
            """;

    /** What is said before {@code takes}: each brings its topic. */
    private static final Map<Topic, String> BRINGS = new EnumMap<>(Topic.class);

    private static final String FLOOR = "Part floor = panel(\"Floor\", ply).wide(\"20 in\").deep(\"10 in\"); ";
    private static final String IN = "var floorIn = place(floor); ";

    static {
        BRINGS.put(Topic.CIRCULAR_SAW, FLOOR + IN);
        BRINGS.put(Topic.TABLE_SAW, FLOOR + IN + "Saw mine = tableSaw();");
        BRINGS.put(
                Topic.MITRE_SAW,
                "Lumber strip = lumber(\"1x2\").lengths(\"8 ft\"); Part cleat = board(\"Cleat\", strip).cutTo(\"10 in\").times(2);");
        BRINGS.put(Topic.JIGSAW, floor(".opening(\"hatch\", rectangle(length(\"4 in\"), length(\"4 in\")))"));
        BRINGS.put(Topic.ROUTER, floor(".rabbet(INSIDE, LEFT, wide(\"3/8 in\"), deep(\"1/4 in\"))"));
        BRINGS.put(Topic.DRILL, floor(".hole(\"cable\", round(\"2 in\").from(LEFT, \"4 in\"))"));
        BRINGS.put(
                Topic.NAILER,
                FLOOR + IN
                        + "Part side = panel(\"Side\", ply).deep(\"10 in\").high(\"9 in\").pair(); var sidesIn = place(side).leftAndRightOf(floorIn);"
                        + " var on = fasten(sidesIn).to(floorIn).nailed(finishNail(\"1 1/2 in\"), every(\"4 in\"));");
        BRINGS.put(Topic.DUST, FLOOR + IN);
        BRINGS.put(Topic.GLUE_AND_PAINT, FLOOR + IN + "var oiled = coat(facesOf(floor)).with(paint(\"oil\"));");
        BRINGS.put(
                Topic.GLAZING,
                "Part sash = panel(\"Sash\", ply).wide(\"12 in\").high(\"14 in\").opening(\"light\", frame(\"2 in\"))"
                        + ".rabbet(INSIDE, \"light\", wide(\"1/2 in\"), deep(\"3/16 in\")).times(1); "
                        + "Sheet clear = sheet(\"acrylic\", \"24 in\", \"48 in\").soldAs(\"1/8 in\").measured(\"1/8 in\"); "
                        + "Part glass = pane(\"Glass\", clear).fits(sash.opening(\"light\")).warmer(\"60 F\").colder(\"60 F\").times(1);");
        BRINGS.put(
                Topic.TREATED_WOOD,
                "Lumber beam = lumber(\"4x4\").treated().lengths(\"8 ft\"); Part leg = board(\"Leg\", beam).cutTo(\"30 in\").times(1);");
        BRINGS.put(
                Topic.SCRAP,
                "Lumber old = lumber(\"pallet boards\").section(\"3/4 in\", \"3 1/2 in\").lengths(\"4 ft\"); Part slat = board(\"Slat\", old).cutTo(\"30 in\").times(1);");
        BRINGS.put(Topic.LIFTING, "needsPeople(2);");
        BRINGS.put(Topic.LADDER, "needsLadder();");
        BRINGS.put(Topic.DIGGING, "var hole = dig(across(\"10 in\"), deep(\"30 in\"));");
        BRINGS.put(Topic.CONCRETE, "var hole = dig(across(\"10 in\"), deep(\"30 in\")).setInConcrete(bag(\"60 lb\"));");
        BRINGS.put(Topic.ELECTRICITY, FLOOR + IN);
        BRINGS.put(Topic.CHILDREN, FLOOR + IN);
        BRINGS.put(Topic.FATIGUE, FLOOR + IN);
    }

    private static String floor(String more) {
        return FLOOR.replace("; ", more + "; ") + IN;
    }

    private static Set<Topic> topics(String said) {
        Workbook workbook = Workbook.parse(TALK.replace("takes(\"1 h\");", said + "\ntakes(\"1 h\");"));
        Set<Topic> topics = EnumSet.noneOf(Topic.class);
        Sample.plan(workbook, Map.of()).cautions().stream().map(Caution::topic).forEach(topics::add);
        return topics;
    }

    @Test
    void everyTopic_isBroughtByWhatUsesIt() {
        assertThat(EnumSet.complementOf(EnumSet.copyOf(BRINGS.keySet()))).isEmpty();
        BRINGS.forEach((topic, said) -> assertThat(topics(said)).as(said).contains(topic));
    }

    @Test
    void noTopic_isBroughtByTalkAlone() {
        assertThat(topics("")).isEmpty();
    }

    @Test
    void handTools_bringNoMachine() {
        assertThat(topics(BRINGS.get(Topic.LADDER))).containsExactly(Topic.LADDER);
        assertThat(topics(BRINGS.get(Topic.DIGGING))).containsExactly(Topic.DIGGING);
        assertThat(topics(BRINGS.get(Topic.TABLE_SAW))).doesNotContain(Topic.CIRCULAR_SAW);
        assertThat(topics(BRINGS.get(Topic.TREATED_WOOD))).doesNotContain(Topic.SCRAP);
    }
}
