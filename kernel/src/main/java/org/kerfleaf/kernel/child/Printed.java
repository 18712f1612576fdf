package org.kerfleaf.kernel.child;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Keeps what cells print, up to a number of bytes; then says that it was cut, and keeps nothing more. */
final class Printed extends OutputStream {
    private final ByteArrayOutputStream kept = new ByteArrayOutputStream();
    private final int most;
    private int left;
    private boolean cut;

    Printed(int most) {
        this.most = most;
        this.left = most;
    }

    PrintStream stream() {
        return new PrintStream(this, true, StandardCharsets.UTF_8);
    }

    @Override
    public synchronized void write(int one) {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int length) {
        int taken = Math.min(left, length);
        kept.write(bytes, from, taken);
        left -= taken;
        if (taken < length && !cut) {
            cut = true;
            kept.writeBytes(
                    "%n… cut here: %d bytes of print are kept%n".formatted(most).getBytes(StandardCharsets.UTF_8));
        }
    }

    /** What was printed since this was last asked. */
    synchronized String take() {
        String text = kept.toString(StandardCharsets.UTF_8);
        kept.reset();
        return text;
    }
}
