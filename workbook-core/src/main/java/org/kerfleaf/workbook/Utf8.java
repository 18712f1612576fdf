package org.kerfleaf.workbook;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** Strict UTF-8, both ways: what is read and written again is the same bytes. */
final class Utf8 {
    private Utf8() {}

    /** @throws WorkbookFileException at the first byte that is no UTF-8 */
    static String decode(byte[] bytes) {
        var in = ByteBuffer.wrap(bytes);
        var out = CharBuffer.allocate(bytes.length);
        var decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            int at = in.position();
            int line = 1 + new Lines(out.flip().toString()).lineAt(out.length());
            throw new WorkbookFileException(
                    at,
                    "Byte %d, on line %d, is 0x%02X, and that is not text in UTF-8. Keep the file as UTF-8 text."
                            .formatted(at, line, bytes[at] & 0xFF));
        }
        return out.flip().toString();
    }

    /** @throws IllegalArgumentException if half of a surrogate pair stands alone */
    static byte[] encode(String text) {
        try {
            ByteBuffer out = StandardCharsets.UTF_8
                    .newEncoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .encode(CharBuffer.wrap(text));
            byte[] bytes = new byte[out.remaining()];
            out.get(bytes);
            return bytes;
        } catch (CharacterCodingException e) {
            throw new IllegalArgumentException("The text has half a surrogate pair, which no file can hold", e);
        }
    }
}
