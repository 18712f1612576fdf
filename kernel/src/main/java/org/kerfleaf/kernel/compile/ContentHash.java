package org.kerfleaf.kernel.compile;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A hash of what the cells of a workbook say, by which an owner's allowance is remembered.
 *
 * <p>In it are the texts of all pieces that can run, in order. A size's value is left out where a piece is nothing but the
 * declaration of that size: there the word cannot be another one of the same name, and a length or a number names no file. A
 * value of {@code pick} is a text and stays in. Prose counts only through its live values, and those only if one of them
 * reaches for something, itself or through a cell.
 */
final class ContentHash {
    /** From the beginning of a piece: a name that gets a size, what stands before its value, the value. */
    private static final Pattern SIZE = Pattern.compile("\\A((?:final\\s+)?(?:Length|Angle|int|var)\\s+\\w+\\s*=\\s*"
            + "(?:(?:size|slope|count)\\s*\\(|held\\s*\\(\\s*\\w+\\s*,)\\s*\"(?:[^\"\\\\]|\\\\.)*\"\\s*,\\s*)"
            + "(?:\"(?:[^\"\\\\]|\\\\.)*\"|\\d+)");

    private ContentHash() {}

    /**
     * @param reaching the indexes of the units that reach for something
     * @param things what they name; an import that changes can make the same text mean another thing
     */
    static String of(CompiledWorkbook compiled, Set<Integer> reaching, List<String> things) {
        boolean prose = compiled.units().stream().anyMatch(unit -> unit.live() >= 0 && reaches(unit, reaching));
        MessageDigest hash = sha256();
        for (CompiledUnit unit : compiled.units()) {
            if (unit.live() < 0 || prose) {
                take(hash, withoutSize(unit.text().strip()));
            }
        }
        things.forEach(thing -> take(hash, thing));
        return HexFormat.of().formatHex(hash.digest());
    }

    // With its length, so that text does not wander from one piece to the next unseen.
    private static void take(MessageDigest hash, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        hash.update(ByteBuffer.allocate(4).putInt(bytes.length).flip());
        hash.update(bytes);
    }

    private static boolean reaches(CompiledUnit unit, Set<Integer> reaching) {
        return reaching.contains(unit.unit().index())
                || unit.unit().needs().stream().anyMatch(reaching::contains);
    }

    static String withoutSize(String piece) {
        return SIZE.matcher(piece).replaceFirst("$1");
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException cannotBe) {
            throw new IllegalStateException("Every Java has SHA-256.", cannotBe);
        }
    }
}
