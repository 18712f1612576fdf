package org.kerfleaf.kernel.wire;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.net.Socket;

/**
 * Sends and takes frames: four bytes of length, then a {@linkplain Packing packed} request or report. A frame longer than {@link #MOST_BYTES} is refused before it
 * is read. Every failure is an {@link IOException}, also bytes that are neither.
 */
public final class Channel implements Closeable {
    /** The longest frame, in bytes. */
    public static final int MOST_BYTES = 32 * 1024 * 1024;

    private final Socket socket;
    private final DataInputStream in;
    private final DataOutputStream out;

    public Channel(Socket socket) throws IOException {
        this.socket = socket;
        this.in = new DataInputStream(new BufferedInputStream(socket.getInputStream()));
        this.out = new DataOutputStream(new BufferedOutputStream(socket.getOutputStream()));
    }

    /**
     * Sends one frame.
     *
     * @throws FrameTooLongException if it is too long; nothing was sent
     * @throws IOException if the other end is gone
     */
    public synchronized void send(Object message) throws IOException {
        byte[] bytes = Packing.pack(message instanceof Request ? Request.class : Report.class, message);
        if (bytes.length > MOST_BYTES) {
            throw new FrameTooLongException(bytes.length);
        }
        out.writeInt(bytes.length);
        out.write(bytes);
        out.flush();
    }

    /** Waits for one frame. @throws EOFException if the other end is gone */
    public <T> T take(Class<T> kind) throws IOException {
        int length = in.readInt();
        if (length < 0 || length > MOST_BYTES) {
            throw new FrameTooLongException(length);
        }
        byte[] bytes = in.readNBytes(length);
        if (bytes.length < length) {
            throw new EOFException("The frame ends after %d of %d bytes.".formatted(bytes.length, length));
        }
        try {
            return Packing.unpack(kind, bytes);
        } catch (IOException unreadable) {
            throw new IOException("A frame that is no " + kind.getSimpleName() + ".", unreadable);
        }
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
