package org.kerfleaf.kernel.wire;

import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** A record as its components, in the order it declares them. It is made by its constructor, which may refuse them. */
final class RecordForm implements Form {
    private final Class<?> kind;
    private volatile Parts parts;

    private record Parts(Constructor<?> maker, Method[] readers, Form[] forms) {}

    RecordForm(Class<?> kind) {
        this.kind = kind;
    }

    // Not before it is needed: a record may hold itself.
    private Parts parts() {
        Parts known = parts;
        if (known == null) {
            RecordComponent[] all = kind.getRecordComponents();
            Class<?>[] types = Arrays.stream(all).map(RecordComponent::getType).toArray(Class<?>[]::new);
            try {
                Constructor<?> maker = kind.getDeclaredConstructor(types);
                maker.setAccessible(true);
                Method[] readers =
                        Arrays.stream(all).map(RecordComponent::getAccessor).toArray(Method[]::new);
                for (Method reader : readers) {
                    reader.setAccessible(true);
                }
                Form[] forms = Arrays.stream(all)
                        .map(one -> Form.of(one.getGenericType()))
                        .toArray(Form[]::new);
                known = new Parts(maker, readers, forms);
            } catch (NoSuchMethodException impossible) {
                throw new IllegalStateException(impossible);
            }
            parts = known;
        }
        return known;
    }

    @Override
    public void write(Object value, DataOutputStream out) throws IOException {
        Parts known = parts();
        for (int i = 0; i < known.forms().length; i++) {
            try {
                known.forms()[i].write(known.readers()[i].invoke(value), out);
            } catch (IllegalAccessException | InvocationTargetException failed) {
                throw new IllegalStateException("%s does not tell what it holds.".formatted(kind), failed);
            }
        }
    }

    @Override
    public Object read(Source in) throws IOException {
        Parts known = parts();
        Object[] values = new Object[known.forms().length];
        for (int i = 0; i < values.length; i++) {
            values[i] = in.inside(known.forms()[i]);
        }
        try {
            return known.maker().newInstance(values);
        } catch (ReflectiveOperationException | RuntimeException refused) {
            throw new IOException("No %s holds this.".formatted(kind.getSimpleName()), refused);
        }
    }
}
