package org.kerfleaf.kernel.child;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.kerfleaf.kernel.wire.Channel;
import org.kerfleaf.kernel.wire.Packing;
import org.kerfleaf.kernel.wire.Request;
import org.kerfleaf.sketch.Sketch;

/**
 * The child process. Its first line of input names the port to call back and the word to say there; after that, input is
 * empty and output belongs to nobody. It ends when the other end of its connection does, whatever a cell is doing.
 */
public final class ChildMain {
    private static final long STACK_BYTES = 8L * 1024 * 1024;

    /** The code with which the process ends if it, and no cell, is at fault. */
    public static final int BROKEN = 70;

    private ChildMain() {}

    /** Serves runs until the program that started it is gone. */
    public static void main(String[] arguments) throws IOException {
        String[] call = firstLine(System.in).split(" ");
        System.setIn(new ByteArrayInputStream(new byte[0]));
        Surroundings surroundings = Surroundings.now();
        warmUp();
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), Integer.parseInt(call[0]))) {
            socket.setTcpNoDelay(true);
            socket.getOutputStream().write(call[1].getBytes(StandardCharsets.US_ASCII));
            socket.getOutputStream().flush();
            Channel channel = new Channel(socket);
            serve(channel, surroundings);
        } catch (IOException otherEndIsGone) {
            Runtime.getRuntime().halt(0);
        }
    }

    private static void serve(Channel channel, Surroundings surroundings) throws IOException {
        CellClasses classes = null;
        CellRun last = null;
        while (true) {
            Request request = channel.take(Request.class);
            if (request instanceof Request.Load next) {
                classes = new CellClasses(next);
                last = null;
            } else if (request instanceof Request.Run run) {
                surroundings.restore();
                classes = last == null ? classes : classes.next(last.threw());
                last = new CellRun(classes, run, channel);
                Thread running = new Thread(null, last, "cells", STACK_BYTES);
                running.setDaemon(true);
                running.start();
            } else if (request instanceof Request.Weigh) {
                channel.send(Weighing.now());
            }
        }
    }

    // What is done for the first time takes longest; better while nobody waits.
    private static void warmUp() throws IOException {
        Sketch none = new Sketch("", java.util.List.of(), java.util.List.of());
        Packing.unpack(Sketch.class, Packing.pack(Sketch.class, none));
    }

    private static String firstLine(InputStream in) throws IOException {
        StringBuilder line = new StringBuilder();
        for (int next = in.read(); next >= 0 && next != '\n'; next = in.read()) {
            line.append((char) next);
        }
        return line.toString().strip();
    }
}
