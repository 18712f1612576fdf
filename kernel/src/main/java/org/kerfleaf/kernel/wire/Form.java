package org.kerfleaf.kernel.wire;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * How values of one type are written and read: records, sealed families of them, enums, lists, sets, maps and optionals, and the
 * {@linkplain PlainForms plain} values. It follows from the types alone, so that nothing can be read that no type names.
 */
interface Form {
    /** Writes a value, which may be null where its type allows it. */
    void write(Object value, DataOutputStream out) throws IOException;

    /** Reads one. @throws IOException also if there cannot be such a value */
    Object read(Source in) throws IOException;

    /** What is read from. It knows how deep it is, so that bytes made to go on for ever do not exhaust the stack. */
    final class Source {
        private static final int DEEPEST = 200;

        private final DataInputStream data;
        private int depth;

        Source(DataInputStream data) {
            this.data = data;
        }

        DataInputStream data() {
            return data;
        }

        Object inside(Form form) throws IOException {
            if (++depth > DEEPEST) {
                throw new IOException("Values within values, more than %d deep.".formatted(DEEPEST));
            }
            Object value = form.read(this);
            depth--;
            return value;
        }

        int upTo(int most) throws IOException {
            int number = data.readInt();
            if (number < 0 || number >= most) {
                throw new IOException("The number %d, where less than %d are known.".formatted(number, most));
            }
            return number;
        }
    }

    /** The form of a type; found once. */
    static Form of(Type type) {
        Form known = Known.FORMS.get(type);
        if (known == null) {
            // A record may hold itself: its components are looked at when the first is written or read.
            known = made(type);
            Known.FORMS.put(type, known);
        }
        return known;
    }

    /** All that were asked for. */
    final class Known {
        private static final Map<Type, Form> FORMS = new ConcurrentHashMap<>();

        private Known() {}
    }

    private static Form made(Type type) {
        if (type instanceof ParameterizedType generic) {
            return new OrNull(generic((Class<?>) generic.getRawType(), generic.getActualTypeArguments()));
        }
        Class<?> kind = (Class<?>) type;
        if (kind.isPrimitive()) {
            return PlainForms.of(kind);
        }
        if (kind.isRecord()) {
            return new OrNull(new RecordForm(kind));
        }
        if (kind.isEnum()) {
            return new OrNull(constants(kind.getEnumConstants()));
        }
        return new OrNull(kind.isSealed() ? family(kind) : PlainForms.of(kind));
    }

    private static Form generic(Class<?> raw, Type[] inside) {
        Form first = of(inside[0]);
        if (raw == List.class) {
            return new Many(first) {
                @Override
                Object all(List<Object> values) {
                    return Collections.unmodifiableList(values);
                }
            };
        }
        if (raw == Set.class) {
            return new Many(first) {
                @Override
                Object all(List<Object> values) {
                    return Collections.unmodifiableSet(new LinkedHashSet<>(values));
                }
            };
        }
        if (raw == Optional.class) {
            return new Form() {
                @Override
                public void write(Object value, DataOutputStream out) throws IOException {
                    first.write(((Optional<?>) value).orElse(null), out);
                }

                @Override
                public Object read(Source in) throws IOException {
                    return Optional.ofNullable(in.inside(first));
                }
            };
        }
        if (raw == Map.class) {
            return map(new Many(first), new Many(of(inside[1])));
        }
        throw new IllegalArgumentException("No form of " + raw + " is known.");
    }

    private static Form map(Form keys, Form values) {
        return new Form() {
            @Override
            public void write(Object value, DataOutputStream out) throws IOException {
                keys.write(((Map<?, ?>) value).keySet(), out);
                values.write(((Map<?, ?>) value).values(), out);
            }

            @Override
            public Object read(Source in) throws IOException {
                List<?> names = (List<?>) keys.read(in);
                List<?> named = (List<?>) values.read(in);
                if (names.size() != named.size()) {
                    throw new IOException("%d values for %d keys.".formatted(named.size(), names.size()));
                }
                Map<Object, Object> all = new LinkedHashMap<>();
                for (int i = 0; i < names.size(); i++) {
                    all.put(names.get(i), named.get(i));
                }
                return Collections.unmodifiableMap(all);
            }
        };
    }

    private static Form constants(Object[] all) {
        return new Form() {
            @Override
            public void write(Object value, DataOutputStream out) throws IOException {
                out.writeInt(((Enum<?>) value).ordinal());
            }

            @Override
            public Object read(Source in) throws IOException {
                return all[in.upTo(all.length)];
            }
        };
    }

    private static Form family(Class<?> sealed) {
        List<Class<?>> records = records(sealed).distinct().toList();
        return new Form() {
            @Override
            public void write(Object value, DataOutputStream out) throws IOException {
                out.writeInt(records.indexOf(value.getClass()));
                of(value.getClass()).write(value, out);
            }

            @Override
            public Object read(Source in) throws IOException {
                return in.inside(of(records.get(in.upTo(records.size()))));
            }
        };
    }

    private static Stream<Class<?>> records(Class<?> kind) {
        return kind.isSealed() ? Arrays.stream(kind.getPermittedSubclasses()).flatMap(Form::records) : Stream.of(kind);
    }

    /** A form with a word before it that says whether there is anything. */
    record OrNull(Form form) implements Form {
        @Override
        public void write(Object value, DataOutputStream out) throws IOException {
            out.writeBoolean(value != null);
            if (value != null) {
                form.write(value, out);
            }
        }

        @Override
        public Object read(Source in) throws IOException {
            return in.data().readBoolean() ? form.read(in) : null;
        }
    }

    /** Several, after how many they are. */
    class Many implements Form {
        private final Form one;

        Many(Form one) {
            this.one = one;
        }

        Object all(List<Object> values) {
            return values;
        }

        @Override
        public void write(Object value, DataOutputStream out) throws IOException {
            Collection<?> values = (Collection<?>) value;
            out.writeInt(values.size());
            for (Object each : values) {
                one.write(each, out);
            }
        }

        @Override
        public Object read(Source in) throws IOException {
            int count = in.upTo(Integer.MAX_VALUE);
            List<Object> values = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                values.add(in.inside(one));
            }
            return all(values);
        }
    }
}
