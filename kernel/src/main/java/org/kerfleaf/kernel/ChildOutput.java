package org.kerfleaf.kernel;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Drains what the process prints past all streams, and keeps the first of it: the virtual machine's last words. */
final class ChildOutput {
    private static final int MOST = 20_000;

    private final StringBuilder text = new StringBuilder();
    private final Thread drain;

    ChildOutput(InputStream from) {
        drain = new Thread(() -> drain(from), "output of cells");
        drain.setDaemon(true);
        drain.start();
    }

    private void drain(InputStream from) {
        byte[] some = new byte[8192];
        try {
            for (int n = from.read(some); n >= 0; n = from.read(some)) {
                keep(new String(some, 0, n, StandardCharsets.UTF_8));
            }
        } catch (IOException gone) {
            // The process has ended.
        }
    }

    // The last of a flood counts, not the first: that is where the virtual machine says why it ends.
    private synchronized void keep(String more) {
        text.append(more);
        text.delete(0, Math.max(0, text.length() - MOST));
    }

    String text() {
        try {
            drain.join(1000);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        synchronized (this) {
            return text.toString();
        }
    }
}
