package org.kerfleaf.kernel.wire;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.joda.money.Money;

/** Numbers, texts, days, times and money. */
final class PlainForms {
    private static final Map<Class<?>, Form> FORMS = new HashMap<>();

    static {
        add(boolean.class, DataOutputStream::writeBoolean, DataInputStream::readBoolean);
        add(Boolean.class, DataOutputStream::writeBoolean, DataInputStream::readBoolean);
        add(int.class, DataOutputStream::writeInt, DataInputStream::readInt);
        add(Integer.class, DataOutputStream::writeInt, DataInputStream::readInt);
        add(long.class, DataOutputStream::writeLong, DataInputStream::readLong);
        add(Long.class, DataOutputStream::writeLong, DataInputStream::readLong);
        add(double.class, DataOutputStream::writeDouble, DataInputStream::readDouble);
        add(Double.class, DataOutputStream::writeDouble, DataInputStream::readDouble);
        add(byte[].class, PlainForms::writeBytes, PlainForms::readBytes);
        add(int[].class, PlainForms::writeNumbers, PlainForms::readNumbers);
        add(String.class, PlainForms::writeText, PlainForms::readText);
        add(LocalDate.class, (out, day) -> out.writeLong(day.toEpochDay()), in -> LocalDate.ofEpochDay(in.readLong()));
        add(
                Duration.class,
                (out, time) -> {
                    out.writeLong(time.getSeconds());
                    out.writeInt(time.getNano());
                },
                in -> Duration.ofSeconds(in.readLong(), in.readInt()));
        add(Money.class, (out, money) -> writeText(out, money.toString()), in -> Money.parse(readText(in)));
    }

    private interface Writing<T> {
        void write(DataOutputStream out, T value) throws IOException;
    }

    private interface Reading<T> {
        T read(DataInputStream in) throws IOException;
    }

    private PlainForms() {}

    static Form of(Class<?> kind) {
        Form form = FORMS.get(kind);
        if (form == null) {
            throw new IllegalArgumentException("No form of " + kind + " is known.");
        }
        return form;
    }

    private static <T> void add(Class<T> kind, Writing<T> writing, Reading<T> reading) {
        FORMS.put(kind, new Form() {
            @Override
            @SuppressWarnings("unchecked")
            public void write(Object value, DataOutputStream out) throws IOException {
                writing.write(out, (T) value);
            }

            @Override
            public Object read(Source in) throws IOException {
                try {
                    return reading.read(in.data());
                } catch (DateTimeException | ArithmeticException | IllegalArgumentException impossible) {
                    throw new IOException("No %s is this.".formatted(kind.getSimpleName()), impossible);
                }
            }
        });
    }

    private static void writeText(DataOutputStream out, String text) throws IOException {
        writeBytes(out, text.getBytes(StandardCharsets.UTF_8));
    }

    private static String readText(DataInputStream in) throws IOException {
        return new String(readBytes(in), StandardCharsets.UTF_8);
    }

    private static void writeBytes(DataOutputStream out, byte[] bytes) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static byte[] readBytes(DataInputStream in) throws IOException {
        int length = length(in, 1);
        return in.readNBytes(length);
    }

    private static void writeNumbers(DataOutputStream out, int[] numbers) throws IOException {
        out.writeInt(numbers.length);
        for (int number : numbers) {
            out.writeInt(number);
        }
    }

    private static int[] readNumbers(DataInputStream in) throws IOException {
        int[] numbers = new int[length(in, Integer.BYTES)];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = in.readInt();
        }
        return numbers;
    }

    /** How many follow, if so many can follow at all. */
    private static int length(DataInputStream in, int bytesEach) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > in.available() / bytesEach) {
            throw new EOFException("%d of %d bytes each are not there.".formatted(length, bytesEach));
        }
        return length;
    }
}
