package org.kerfleaf.kernel;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
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
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.kerfleaf.kernel.child.ChildMain;
import org.kerfleaf.kernel.wire.Channel;
import org.kerfleaf.kernel.wire.Report;
import org.kerfleaf.kernel.wire.Request;

/**
 * The process that runs cells, seen from outside. It has an environment without anything in it, an empty folder of its own
 * that is deleted when it ends, and a connection back on which it said a word that only it was told.
 *
 * <p>Failures of starting are {@link KernelException}; once it runs, whatever happens to it is how a {@link RunLog} ends.
 */
final class Child implements AutoCloseable {
    private static final String OUT_OF_MEMORY = "Terminating due to java.lang.OutOfMemoryError";
    private static final int KILLED = 128 + 9;
    private static final int ENDED = 128 + 15;
    private static final int ABORTED = 128 + 6;

    private final Process process;
    private final Path folder;
    private final ServerSocket door;
    private final byte[] word = word();
    private final ChildOutput output;
    private final Duration patience;
    private Channel channel;
    private Request.Load book;

    private Child(Process process, Path folder, ServerSocket door, Duration patience) {
        this.process = process;
        this.folder = folder;
        this.door = door;
        this.output = new ChildOutput(process.getInputStream());
        this.patience = patience;
    }

    /** Starts one; it is of use once it is {@linkplain #connect connected}. */
    static Child start(KernelLimits limits, Launch launch) {
        Path folder = null;
        ServerSocket door = null;
        try {
            folder = Files.createTempDirectory("cells");
            door = new ServerSocket(0, 4, InetAddress.getLoopbackAddress());
            ProcessBuilder builder = new ProcessBuilder(launch.command().apply(limits));
            Map<String, String> environment = builder.environment();
            // Windows opens no socket without it.
            environment.keySet().removeIf(name -> !name.equalsIgnoreCase("SystemRoot"));
            Process process =
                    builder.directory(folder.toFile()).redirectErrorStream(true).start();
            return new Child(process, folder, door, launch.patience());
        } catch (IOException failed) {
            shut(door);
            if (folder != null) {
                delete(folder);
            }
            throw cannot(failed);
        }
    }

    private static KernelException cannot(IOException failed) {
        return new KernelException("The process that runs cells does not start. " + failed.getMessage(), failed);
    }

    /** Waits until it calls back; if it does not, it is ended. */
    Child connect() {
        boolean told = false;
        try (OutputStream in = process.getOutputStream()) {
            String call = door.getLocalPort() + " " + new String(word, StandardCharsets.US_ASCII) + "\n";
            in.write(call.getBytes(StandardCharsets.US_ASCII));
            in.flush();
            told = true;
            Socket socket = callBack();
            socket.setTcpNoDelay(true);
            channel = new Channel(socket);
            return this;
        } catch (IOException failed) {
            // A pipe may break a moment before the process counts as ended, which is what there is to tell.
            boolean ended = told ? !process.isAlive() : endsSoon();
            KernelException why = cannot(ended ? new IOException("It ended: " + output.text()) : failed);
            close();
            throw why;
        } finally {
            shut(door);
        }
    }

    private boolean endsSoon() {
        try {
            return process.waitFor(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return !process.isAlive();
        }
    }

    private static byte[] word() {
        byte[] random = new byte[32];
        new SecureRandom().nextBytes(random);
        return HexFormat.of().formatHex(random).getBytes(StandardCharsets.US_ASCII);
    }

    private Socket callBack() throws IOException {
        long until = System.nanoTime() + patience.toNanos();
        door.setSoTimeout(100);
        while (process.isAlive() && System.nanoTime() < until) {
            try {
                Socket socket = door.accept();
                socket.setSoTimeout((int) patience.toMillis());
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
        throw new IOException("It does not call back.");
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

    /**
     * Makes one run. Its time begins with its first report, so that a busy machine is not blamed on a cell; past the time
     * the process is ended.
     */
    RunLog run(Request.Load wanted, Request.Run request, Duration time) {
        RunLog log = new RunLog(wanted.mostPrinted() + 1000, wanted.units().size());
        Alarm alarm = new Alarm(this::kill);
        alarm.set(patience);
        try {
            take(wanted);
            channel.send(request);
            log.take(channel.take(Report.class));
            alarm.set(time);
            while (!log.isDone()) {
                log.take(channel.take(Report.class));
            }
        } catch (IOException ended) {
            log.ended(alarm.rang() ? new RunLog.Ending(StopReason.TIME, 0) : ending());
        } finally {
            alarm.stop();
        }
        return log;
    }

    private void take(Request.Load wanted) throws IOException {
        if (!wanted.wordsOnly()) {
            // Only such cells can have left something there.
            empty(folder);
        }
        if (book != wanted) {
            channel.send(wanted);
            book = wanted;
        }
    }

    /** What it holds while nothing runs. */
    Report.Weighed weigh() {
        try {
            channel.send(new Request.Weigh());
            return (Report.Weighed) channel.take(Report.class);
        } catch (IOException ended) {
            throw new KernelException("The process that runs cells ended while it was weighed.", ended);
        }
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

    /** Ends it, whatever it is doing, and deletes its folder. */
    @Override
    public void close() {
        kill();
        shut(door);
        shut(channel);
        try {
            process.waitFor(5, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        delete(folder);
    }

    private static void shut(Closeable one) {
        try {
            if (one != null) {
                one.close();
            }
        } catch (IOException alreadyClosed) {
            // It is gone, which is what was wanted.
        }
    }

    private static void delete(Path folder) {
        try {
            empty(folder);
            Files.deleteIfExists(folder);
        } catch (IOException leftBehind) {
            // Something among temporary files; the system clears it.
        }
    }

    // A link is deleted, never followed.
    private static void empty(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                if (!one.equals(folder)) {
                    Files.deleteIfExists(one);
                }
            }
        } catch (UncheckedIOException gone) {
            throw gone.getCause();
        }
    }
}
