package org.kerfleaf.export.planform;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.plan.Change;
import org.kerfleaf.plan.Plan;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Writes a plan as JSON in the form this package documents. */
public final class PlanForm {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private PlanForm() {}

    /** The plan without reasons, indented, lines ended by a line feed. */
    public static String json(Plan plan) {
        return json(plan, false);
    }

    /** The plan; with reasons, every derived figure's reason stands under {@code reasons} at the figure's place. */
    public static String json(Plan plan, boolean withReasons) {
        return json(plan, Optional.empty(), withReasons);
    }

    /** The same, with what changed if something was tried. */
    public static String json(Plan plan, Optional<List<Change>> changes, boolean withReasons) {
        Member top = Member.document(plan.style());
        Sections.write(plan, top);
        changes.ifPresent(known -> SizeSections.changes(known, top));
        return MAPPER.writeValueAsString(withReasons ? top.withReasons() : top.node())
                        .replace(System.lineSeparator(), "\n")
                + "\n";
    }
}
