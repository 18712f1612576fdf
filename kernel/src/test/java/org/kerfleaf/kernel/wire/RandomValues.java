package org.kerfleaf.kernel.wire;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.kerfleaf.sketch.SketchException;

/** Makes any record of the sketch with any values its constructor accepts. */
final class RandomValues {
    private static final List<String> TEXTS = List.of("", "Floor", "3/4 in", "“quoted” \"text\"", "é 木 \n\t\\", "USD");

    private final RandomGenerator random;

    RandomValues(RandomGenerator random) {
        this.random = random;
    }

    /** The records that a sealed family permits, at any depth. */
    static Stream<Class<?>> records(Class<?> family) {
        return family.isRecord()
                ? Stream.of(family)
                : Arrays.stream(family.getPermittedSubclasses()).flatMap(RandomValues::records);
    }

    Object of(Type type) {
        if (type instanceof ParameterizedType generic) {
            return generic(generic);
        }
        Class<?> kind = (Class<?>) type;
        if (kind.isEnum()) {
            return oneOf(List.of(kind.getEnumConstants()));
        }
        if (kind.isSealed()) {
            return of(oneOf(records(kind).toList()));
        }
        return kind.isRecord() ? record(kind) : plain(kind);
    }

    private Object generic(ParameterizedType type) {
        Type inside = type.getActualTypeArguments()[0];
        if (type.getRawType() == Optional.class) {
            return random.nextBoolean() ? Optional.of(of(inside)) : Optional.empty();
        }
        if (type.getRawType() == List.class) {
            return IntStream.range(0, random.nextInt(4))
                    .mapToObj(i -> of(inside))
                    .toList();
        }
        throw new IllegalArgumentException("No values of " + type + " are known.");
    }

    private Object plain(Class<?> kind) {
        if (kind == String.class) {
            return oneOf(TEXTS);
        }
        if (kind == int.class || kind == Integer.class) {
            return random.nextInt(1, 65);
        }
        if (kind == long.class || kind == Long.class) {
            return oneOf(List.of(0L, 1L, 396_875L, Long.MAX_VALUE, Long.MIN_VALUE, random.nextLong()));
        }
        if (kind == double.class || kind == Double.class) {
            return oneOf(List.of(0.0, 0.1, 1e-300, 33.333333333333336, random.nextDouble() * 1e9));
        }
        if (kind == boolean.class || kind == Boolean.class) {
            return random.nextBoolean();
        }
        if (kind == Money.class) {
            return Money.ofMinor(oneOf(List.of(CurrencyUnit.USD, CurrencyUnit.JPY)), random.nextInt(1_000_000));
        }
        if (kind == LocalDate.class) {
            return LocalDate.of(2026, 4, 1 + random.nextInt(30));
        }
        if (kind == Duration.class) {
            return Duration.ofMillis(random.nextLong(100_000_000));
        }
        throw new IllegalArgumentException("No values of " + kind + " are known.");
    }

    private Object record(Class<?> kind) {
        RecordComponent[] components = kind.getRecordComponents();
        Object[] values = Arrays.stream(components)
                .map(component -> of(component.getGenericType()))
                .toArray();
        try {
            Constructor<?> constructor = kind.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            return constructor.newInstance(values);
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof SketchException
                    || refused.getCause() instanceof IllegalArgumentException) {
                // An empty drawer or a density of nothing, say: another draw has something in it.
                return record(kind);
            }
            throw new IllegalArgumentException(kind + " of " + Arrays.toString(values), refused.getCause());
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private <T> T oneOf(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
