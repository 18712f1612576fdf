package org.kerfleaf.kernel;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.joda.money.Money;
import org.kerfleaf.kernel.child.ChildMain;
import org.kerfleaf.kernel.compile.Jars;
import org.kerfleaf.kernel.wire.Channel;
import org.kerfleaf.kernel.wire.Report;
import org.kerfleaf.kernel.wire.Request;
import org.kerfleaf.sketch.Sketch;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.json.JsonMapper;

/**
 * The process that runs cells, seen from outside. It has an environment without anything in it, an empty folder of its own
 * that is deleted when it ends, and a connection back on which it said a word that only it was told.
 *
 * <p>Failures of starting are {@link KernelException}; once it runs, whatever happens to it is how a {@link RunLog} ends.
 */
final class Child implements AutoCloseable {
    private static final Duration START = Duration.ofSeconds(60);
    private static final String OUT_OF_MEMORY = "Terminating due to java.lang.OutOfMemoryError";
    private static final int KILLED = 128 + 9;
    private static final int ENDED = 128 + 15;
    private static final int ABORTED = 128 + 6;

    private final Process process;
    private final Path folder;
    private final Channel channel;
    private final Output output;

    private Child(Process process, Path folder, Channel channel, Output output) {
        this.process = process;
        this.folder = folder;
        this.channel = channel;
        this.output = output;
    }

    /** Starts one and waits until it calls back. */
    static Child start(KernelLimits limits) {
        Path folder = null;
        Process process = null;
        try (ServerSocket door = new ServerSocket(0, 4, InetAddress.getLoopbackAddress())) {
            folder = Files.createTempDirectory("cells");
            process = builder(limits, folder).start();
            Output output = new Output(process.getInputStream());
            byte[] word = word();
            try (OutputStream in = process.getOutputStream()) {
                String call = door.getLocalPort() + " " + new String(word, StandardCharsets.US_ASCII) + "\n";
                in.write(call.getBytes(StandardCharsets.US_ASCII));
            }
            Socket socket = callBack(door, word, process, output);
            socket.setTcpNoDelay(true);
            return new Child(process, folder, new Channel(socket), output);
        } catch (IOException failed) {
            if (process != null) {
                process.destroyForcibly();
            }
            if (folder != null) {
                delete(folder);
            }
            throw new KernelException("The process that runs cells does not start. " + failed.getMessage(), failed);
        }
    }

    private static ProcessBuilder builder(KernelLimits limits, Path folder) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classPath = Jars.holding(
                ChildMain.class, Sketch.class, Money.class, JsonTypeInfo.class, JsonParser.class, JsonMapper.class);
        ProcessBuilder builder = new ProcessBuilder(
                java,
                "-Xmx" + limits.heapMegabytes() + "m",
                "-Xss2m",
                "-XX:MaxMetaspaceSize=128m",
                "-XX:+UseSerialGC",
                "-XX:+ExitOnOutOfMemoryError",
                "-XX:-CreateCoredumpOnCrash",
                "-XX:-UsePerfData",
                "-Dfile.encoding=UTF-8",
                "-Duser.language=en",
                "-Duser.country=",
                "-Duser.timezone=UTC",
                "-Djava.awt.headless=true",
                "-cp",
                classPath,
                ChildMain.class.getName());
        Map<String, String> environment = builder.environment();
        // Windows opens no socket without it.
        environment.keySet().removeIf(name -> !name.equalsIgnoreCase("SystemRoot"));
        return builder.directory(folder.toFile()).redirectErrorStream(true);
    }

    private static byte[] word() {
        byte[] random = new byte[32];
        new SecureRandom().nextBytes(random);
        return HexFormat.of().formatHex(random).getBytes(StandardCharsets.US_ASCII);
    }

    private static Socket callBack(ServerSocket door, byte[] word, Process process, Output output) throws IOException {
        long until = System.nanoTime() + START.toNanos();
        door.setSoTimeout(100);
        while (process.isAlive() && System.nanoTime() < until) {
            try {
                Socket socket = door.accept();
                socket.setSoTimeout((int) START.toMillis());
                byte[] said = socket.getInputStream().readNBytes(word.length);
                if (MessageDigest.isEqual(word, said)) {
                    socket.setSoTimeout(0);
                    return socket;
                }
                socket.close();
            } catch (SocketTimeoutException notYet) {
                continue;
            }
        }
        throw new IOException(process.isAlive() ? "It does not call back." : "It ended: " + output.text());
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** The process, for tests that end it from outside. */
    ProcessHandle process() {
        return process.toHandle();
    }

    /** Its folder, for tests that look whether it is gone. */
    Path folder() {
        return folder;
    }

    /** Makes one run; past the time the process is ended. */
    RunLog run(Request request, Duration time) {
        RunLog log = new RunLog(request.mostPrinted() + 1000);
        AtomicBoolean late = new AtomicBoolean();
        CompletableFuture<Void> watch = CompletableFuture.runAsync(
                () -> {
                    late.set(true);
                    kill();
                },
                CompletableFuture.delayedExecutor(time.toMillis(), TimeUnit.MILLISECONDS));
        try {
            channel.send(request);
            while (!log.isDone()) {
                log.take(channel.take(Report.class));
            }
        } catch (IOException ended) {
            log.ended(late.get() ? new RunLog.Ending(StopReason.TIME, 0) : ending());
        } finally {
            watch.cancel(false);
        }
        return log;
    }

    private RunLog.Ending ending() {
        try {
            if (!process.waitFor(2, TimeUnit.SECONDS)) {
                kill();
                return new RunLog.Ending(StopReason.UNREADABLE, 0);
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            kill();
            return new RunLog.Ending(StopReason.KILLED, 0);
        }
        int code = process.exitValue();
        if (output.text().contains(OUT_OF_MEMORY)) {
            return new RunLog.Ending(StopReason.MEMORY, code);
        }
        return switch (code) {
            case KILLED, ENDED -> new RunLog.Ending(StopReason.KILLED, code);
            case ABORTED, 128 + 11, 128 + 7, ChildMain.BROKEN -> new RunLog.Ending(StopReason.CRASH, code);
            default -> new RunLog.Ending(StopReason.EXIT, code);
        };
    }

    private void kill() {
        // What a cell started would outlive the process.
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
    }

    @Override
    public void close() {
        kill();
        try {
            channel.close();
            process.waitFor(5, TimeUnit.SECONDS);
        } catch (IOException alreadyClosed) {
            // It is gone, which is what was wanted.
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        delete(folder);
    }

    private static void delete(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            List<Path> deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
            for (Path one : deepestFirst) {
                Files.deleteIfExists(one);
            }
        } catch (IOException leftBehind) {
            // An empty folder among temporary files; the system clears it.
        }
    }

    /** Drains what the process prints past all streams, and keeps the first of it: the virtual machine's last words. */
    private static final class Output {
        private static final int MOST = 20_000;

        private final StringBuilder text = new StringBuilder();
        private final Thread drain;

        Output(InputStream from) {
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
}
