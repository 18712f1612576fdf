package org.kerfleaf.kernel.wire;

import com.fasterxml.jackson.annotation.JsonAutoDetect.Visibility;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.deser.std.StdDeserializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/** JSON of sketches and frames: records by their components only, money as text such as {@code USD 61.50}. */
public final class WireJson {
    // One for all: what it learns of a type takes long to learn.
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .changeDefaultVisibility(v -> v.withGetterVisibility(Visibility.NONE)
                    .withIsGetterVisibility(Visibility.NONE)
                    .withSetterVisibility(Visibility.NONE)
                    .withFieldVisibility(Visibility.ANY))
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .addModule(moneyAsText())
            .build();

    private WireJson() {}

    /** A mapper that writes the same value to the same bytes and reads them back equal. Safe on several threads. */
    public static JsonMapper mapper() {
        return MAPPER;
    }

    private static SimpleModule moneyAsText() {
        return new SimpleModule("money")
                .addSerializer(Money.class, new AsText<>(Money.class))
                .addSerializer(CurrencyUnit.class, new AsText<>(CurrencyUnit.class))
                .addDeserializer(Money.class, new FromText<>(Money.class, Money::parse))
                .addDeserializer(CurrencyUnit.class, new FromText<>(CurrencyUnit.class, CurrencyUnit::of));
    }

    private static final class AsText<T> extends StdSerializer<T> {
        AsText(Class<T> kind) {
            super(kind);
        }

        @Override
        public void serialize(T value, JsonGenerator out, SerializationContext context) {
            out.writeString(value.toString());
        }
    }

    private static final class FromText<T> extends StdDeserializer<T> {
        private final transient java.util.function.Function<String, T> read;

        FromText(Class<T> kind, java.util.function.Function<String, T> read) {
            super(kind);
            this.read = read;
        }

        @Override
        public T deserialize(JsonParser in, DeserializationContext context) {
            return read.apply(in.getValueAsString());
        }
    }
}
