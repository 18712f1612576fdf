package org.kerfleaf.kernel.wire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ChannelTest {
    private Socket there;
    private Channel here;

    @BeforeEach
    void connect() throws IOException {
        try (ServerSocket door = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            there = new Socket(InetAddress.getLoopbackAddress(), door.getLocalPort());
            here = new Channel(door.accept());
        }
    }

    @AfterEach
    void close() throws IOException {
        there.close();
        here.close();
    }

    private void write(int length, String text) throws IOException {
        DataOutputStream out = new DataOutputStream(there.getOutputStream());
        out.writeInt(length);
        out.write(text.getBytes(StandardCharsets.UTF_8));
        out.flush();
    }

    @Test
    void take_whatWasSent_isEqual() throws IOException {
        new Channel(there).send(new Report.Began(3, "é\n"));

        assertThat(here.take(Report.class)).isEqualTo(new Report.Began(3, "é\n"));
    }

    @Test
    void take_lengthPastTheBound_isRefusedUnread() throws IOException {
        write(Channel.MOST_BYTES + 1, "");

        assertThatThrownBy(() -> here.take(Report.class))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("33554433");
    }

    @Test
    void take_negativeLength_isRefused() throws IOException {
        write(-1, "");

        assertThatThrownBy(() -> here.take(Report.class)).isInstanceOf(IOException.class);
    }

    @Test
    void take_frameThatEndsEarly_saysHowFarItCame() throws IOException {
        write(10, "{}");
        there.close();

        assertThatThrownBy(() -> here.take(Report.class))
                .isInstanceOf(EOFException.class)
                .hasMessageContaining("2 of 10 bytes");
    }

    @Test
    void take_whatIsNoReport_isRefused() throws IOException {
        write(2, "[]");

        assertThatThrownBy(() -> here.take(Report.class)).isInstanceOf(IOException.class);
    }
}
