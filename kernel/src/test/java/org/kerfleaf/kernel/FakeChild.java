package org.kerfleaf.kernel;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Scanner;
import org.kerfleaf.kernel.wire.Channel;
import org.kerfleaf.kernel.wire.Report;
import org.kerfleaf.kernel.wire.Request;

/** A program that says the right word and then speaks the protocol wrong, in a way its argument names. */
public final class FakeChild {
    private FakeChild() {}

    /** Starts it in place of the process that runs cells. */
    static Launch launch(String manner, Duration patience) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classPath = System.getProperty("java.class.path");
        return new Launch(
                limits -> List.of(java, "-XX:+UseSerialGC", "-cp", classPath, FakeChild.class.getName(), manner),
                patience);
    }

    public static void main(String[] manner) throws Exception {
        String[] call =
                new Scanner(System.in, StandardCharsets.US_ASCII).nextLine().split(" ");
        if (manner[0].equals("silent")) {
            Thread.sleep(Long.MAX_VALUE);
        }
        if (manner[0].equals("gone")) {
            System.out.println("I had other plans.");
            System.exit(5);
        }
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), Integer.parseInt(call[0]))) {
            String word = manner[0].equals("stranger") ? "0".repeat(call[1].length()) : call[1];
            socket.getOutputStream().write(word.getBytes(StandardCharsets.US_ASCII));
            if (manner[0].equals("stranger")) {
                // Shown the door it stays about: it is refused for its word, not for ending.
                Thread.sleep(Long.MAX_VALUE);
            }
            Channel channel = new Channel(socket);
            if (channel.take(Request.class) instanceof Request.Load && !manner[0].equals("mute")) {
                channel.take(Request.class);
                speak(channel, socket.getOutputStream(), manner[0]);
            }
            Thread.sleep(Long.MAX_VALUE);
        }
    }

    private static void speak(Channel channel, OutputStream raw, String manner) throws IOException {
        channel.send(new Report.Began(0, ""));
        DataOutputStream out = new DataOutputStream(raw);
        switch (manner) {
            case "garbage" -> out.write("HTTP/1.1 404 Not Found\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
            case "no report" -> {
                out.writeInt(4);
                out.write("{[}]".getBytes(StandardCharsets.US_ASCII));
            }
            case "too long" -> out.writeInt(Channel.MOST_BYTES + 1);
            case "torn" -> {
                out.writeInt(1000);
                out.write(new byte[500]);
                out.close();
            }
            case "half and waiting" -> {
                out.writeInt(1000);
                out.write(new byte[500]);
            }
            case "no such unit" -> channel.send(new Report.Began(77, ""));
            case "weighed" -> channel.send(new Report.Weighed(1, 1, 1));
            case "flood" -> {
                while (true) {
                    channel.send(new Report.Began(0, "x".repeat(100_000)));
                }
            }
            default -> throw new IllegalArgumentException(manner);
        }
        out.flush();
    }
}
