package org.kerfleaf.caution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CautionsTest {
    @ParameterizedTest
    @EnumSource(Topic.class)
    void of_everyTopic_hasShortSentencesAndASource(Topic topic) {
        Caution caution = Cautions.of(topic);

        assertThat(caution.topic()).isEqualTo(topic);
        assertThat(caution.words()).endsWith(".").doesNotContain("!").doesNotContain("  ");
        assertThat(caution.source()).isNotBlank();
        assertThat(caution.steps()).isEmpty();
        assertThat(Arrays.stream(caution.words().split("\\. ")))
                .as("sentences of %s", topic)
                .allSatisfy(sentence -> assertThat(sentence.split(" ").length).isLessThanOrEqualTo(28));
    }

    @ParameterizedTest
    @EnumSource(
            value = Topic.class,
            names = {"CIRCULAR_SAW", "MITRE_SAW", "JIGSAW", "ROUTER", "DRILL", "NAILER"})
    void signs_powerTool_alwaysHasEyeProtection(Topic topic) {
        assertThat(Cautions.signs(topic)).contains(Sign.M004);
    }

    @Test
    void signs_severalTopics_areEachOnceAndInOrder() {
        assertThat(Cautions.signs(List.of(Topic.GLAZING, Topic.CIRCULAR_SAW, Topic.MITRE_SAW)))
                .containsExactly(Sign.M003, Sign.M004, Sign.M009, Sign.M016, Sign.M021);
        assertThat(Cautions.signs(List.of())).isEmpty();
    }

    @Test
    void of_severalTopics_areEachOnceAndInOrder() {
        assertThat(Cautions.of(List.of(Topic.DIGGING, Topic.DRILL, Topic.DIGGING)))
                .extracting(Caution::topic)
                .containsExactly(Topic.DRILL, Topic.DIGGING);
    }

    /** 29 CFR 1926.651(b): buried services are located before ground is opened. */
    @Test
    void of_digging_saysServicesFirst() {
        assertThat(Cautions.of(Topic.DIGGING).words()).startsWith("No hole before the buried lines are located");
    }
}
