package org.kerfleaf.kernel.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.kerfleaf.sketch.Declaration;
import org.kerfleaf.sketch.Live;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;
import org.kerfleaf.sketch.Where;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Every value of the sketch goes through a frame and comes out equal. */
class WireJsonTest {
    private static final long SEED = 20260412;

    private final JsonMapper json = WireJson.mapper();

    private RandomValues values(long seed) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        return new RandomValues(random);
    }

    @Test
    void mapper_everyKindOfDeclaration_roundTrips() {
        Set<Class<?>> kinds = RandomValues.records(Declaration.class).collect(Collectors.toSet());
        assertThat(kinds).hasSizeGreaterThan(20);
        for (long seed = SEED; seed < SEED + 30; seed++) {
            RandomValues random = values(seed);
            List<Declaration> declared = new ArrayList<>();
            kinds.stream()
                    .sorted((a, b) -> a.getName().compareTo(b.getName()))
                    .forEach(kind -> declared.add((Declaration) random.of(kind)));
            Sketch sketch = new Sketch("A “box” \n\\ é 木", List.of(new Sketch.Step(1, "Cut")), declared);

            byte[] bytes = json.writeValueAsBytes(sketch);

            assertThat(json.readValue(bytes, Sketch.class)).as("seed " + seed).isEqualTo(sketch);
            assertThat(WireJson.mapper().writeValueAsBytes(sketch))
                    .as("seed " + seed)
                    .isEqualTo(bytes);
        }
    }

    @Test
    void mapper_everyTraitPlaceLiveValueAndReport_roundTrips() {
        RandomValues random = values(SEED);
        for (Class<?> family : List.of(Trait.class, Where.class, Live.class, Report.class)) {
            assertThat(RandomValues.records(family).toList())
                    .hasSizeGreaterThan(2)
                    .allSatisfy(kind -> {
                        Object value = random.of(kind);
                        assertThat((Object) json.readValue(json.writeValueAsBytes(value), family))
                                .isEqualTo(value);
                    });
        }
    }

    @Test
    void mapper_money_isTextInItsOwnCurrency() {
        Money price = Money.of(CurrencyUnit.EUR, new java.math.BigDecimal("61.50"));

        assertThat(json.writeValueAsString(price)).isEqualTo("\"EUR 61.50\"");
        assertThat(json.readValue("\"EUR 61.50\"", Money.class)).isEqualTo(price);
    }

    @Test
    void mapper_questionsOfARecord_areNotWritten() {
        Trait.Wide wide = new Trait.Wide(org.kerfleaf.measure.Length.ZERO);

        assertThat(json.writeValueAsString(wide)).isEqualTo("{\"trait\":\"Wide\",\"length\":{\"nanometres\":0}}");
    }

    @Test
    void mapper_whatItDoesNotKnow_isRefused() {
        assertThatThrownBy(() ->
                        json.readValue("{\"report\":\"Began\",\"unit\":1,\"printed\":\"\",\"more\":1}", Report.class))
                .isInstanceOf(JacksonException.class);
        assertThatThrownBy(() -> json.readValue("{\"report\":\"Runtime\"}", Report.class))
                .isInstanceOf(JacksonException.class);
    }

    @Test
    void mapper_emptyOptional_isNotAMissingOne() {
        Report.Gathered gathered = new Report.Gathered(Optional.empty(), List.of());

        assertThat(json.readValue(json.writeValueAsBytes(gathered), Report.class))
                .isEqualTo(gathered);
    }
}
