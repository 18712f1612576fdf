package org.kerfleaf.kernel.wire;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;

/**
 * Records as bytes: sketches, requests and reports, compiled workbooks. Both ends know the same records, so only what they hold
 * is written, in the order of their components; see {@link Form} for what they may hold. The same value gives the same bytes.
 *
 * <p>A mapper for any class and any format takes most of a second to learn ours in a new process; this knows them at once.
 */
public final class Packing {
    private Packing() {}

    /** The bytes of a value of that kind, a record or a sealed family of records. */
    public static byte[] pack(Class<?> kind, Object value) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            Form.of(kind).write(value, new DataOutputStream(bytes));
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
        return bytes.toByteArray();
    }

    /** The value of that kind again. @throws IOException if the bytes are not exactly one */
    public static <T> T unpack(Class<T> kind, byte[] bytes) throws IOException {
        Form.Source in = new Form.Source(new DataInputStream(new ByteArrayInputStream(bytes)));
        T value = kind.cast(Form.of(kind).read(in));
        if (in.data().available() > 0) {
            throw new IOException("%d bytes are left over.".formatted(in.data().available()));
        }
        return value;
    }
}
