package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.kerfleaf.export.planform.PlanForm;
import org.kerfleaf.plan.Plan;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Figures that others published, read from the JSON form of a workbook's plan, as {@code plan --json --size ...} prints it. The
 * tables are in {@code src/test/resources/published}, each with its source; see {@link PublishedTable}.
 */
class PublishedFiguresTest {
    private static final int MOST_OF_ONE_TABLE = 15;
    private static final JsonMapper MAPPER = new JsonMapper();

    @TestFactory
    Stream<DynamicContainer> plan_ofEveryTable_givesWhatIsPublished() {
        return PublishedTable.all().stream()
                .map(table -> DynamicContainer.dynamicContainer(
                        table.title() + ": " + table.source(),
                        table.rows().stream()
                                .map(row -> DynamicTest.dynamicTest(row.title(), () -> holds(table, row)))));
    }

    private static void holds(PublishedTable table, PublishedTable.Row row) {
        Plan plan = Sample.plan(table.workbook(), row.sizes());
        assertThat(plan.problems()).isEmpty();
        JsonNode form = MAPPER.readTree(PlanForm.json(plan));
        for (PublishedTable.Figure figure : row.figures()) {
            JsonNode found = at(form, figure.path());
            if (figure.tolerance().isPresent()) {
                assertThat(found.asDouble() * figure.factor())
                        .as("%s with %s", figure.path(), row.sizes())
                        .isCloseTo(
                                Double.parseDouble(figure.published()),
                                within(figure.tolerance().get()));
            } else {
                assertThat(found.asString())
                        .as("%s with %s", figure.path(), row.sizes())
                        .isEqualTo(figure.published());
            }
        }
    }

    /** A member, an element by number, or the first element of which some text begins so. */
    private static JsonNode at(JsonNode form, String path) {
        JsonNode node = form;
        for (String step : path.split("/")) {
            JsonNode in = node;
            node = in.isObject()
                    ? in.get(step)
                    : step.matches("\\d+")
                            ? in.get(Integer.parseInt(step))
                            : StreamSupport.stream(in.spliterator(), false)
                                    .filter(one -> one.values().stream()
                                            .anyMatch(value -> value.isString()
                                                    && value.asString().startsWith(step)))
                                    .findFirst()
                                    .orElse(null);
            assertThat(node).as("%s of %s in %s", step, path, in).isNotNull();
        }
        return node;
    }

    @Test
    void tables_haveFiguresOfEnoughSourcesAndNotTooManyOfOne() {
        List<PublishedTable> all = PublishedTable.all();

        assertThat(all)
                .allSatisfy(
                        table -> assertThat(table.figures()).as(table.title()).isBetween(1, MOST_OF_ONE_TABLE));
        assertThat(all.stream().mapToInt(PublishedTable::figures).sum()).isGreaterThanOrEqualTo(150);
    }

    /** The table for contributors says what is checked; where it does not, this prints what it should say. */
    @Test
    void developersGuide_listsWhatIsChecked() throws IOException {
        String lines = PublishedTable.all().stream()
                .map(table -> "| %s | %s | %s | %d |"
                        .formatted(table.title(), table.source(), table.status(), table.figures()))
                .collect(Collectors.joining("\n"));

        assertThat(Files.readString(Path.of("../DEVELOPERS.md"))).contains(lines);
    }
}
