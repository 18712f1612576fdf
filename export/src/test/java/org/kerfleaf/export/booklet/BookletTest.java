package org.kerfleaf.export.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.kerfleaf.export.SamplePlan;
import org.kerfleaf.export.SampleProse;
import org.kerfleaf.plan.Plan;

class BookletTest {
    static byte[] booklet(Plan plan, Paper paper) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Booklet.write(plan, SampleProse.of(plan), paper, out);
        return out.toByteArray();
    }

    @Test
    void write_twice_isByteEqual() throws Exception {
        byte[] once = booklet(SamplePlan.inches(), Paper.A4);
        byte[] again = booklet(SamplePlan.inches(), Paper.A4);
        Files.write(Path.of("target/inch-a4.pdf"), once);
        Files.write(Path.of("target/mm-letter.pdf"), booklet(SamplePlan.millimetres(), Paper.LETTER));
        assertThat(again).isEqualTo(once);
    }
}
