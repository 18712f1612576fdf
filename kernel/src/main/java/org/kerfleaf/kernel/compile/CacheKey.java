package org.kerfleaf.kernel.compile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipFile;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.ProseSource;
import org.kerfleaf.kernel.cell.WorkbookSource;
import org.kerfleaf.words.Words;

/**
 * What a compiled workbook depends on, in one number: the text of its cells and live values with the build steps they stand
 * under, what cells see without saying so, the vocabulary, this kernel, and the Java that compiles.
 */
final class CacheKey {
    private final MessageDigest digest = digest();

    private CacheKey() {}

    static String of(WorkbookSource source) {
        CacheKey key = new CacheKey();
        key.add(System.getProperty("java.vm.vendor") + " " + Runtime.version());
        Words.imports().forEach(key::add);
        Jars.of(Words.class, CacheKey.class).forEach(key::addContent);
        for (CellSource cell : source.cells()) {
            key.add("cell under " + cell.step());
            key.add(cell.text());
        }
        for (ProseSource live : source.liveValues()) {
            key.add("prose");
            key.add(live.expression());
        }
        return HexFormat.of().formatHex(key.digest.digest());
    }

    /** SHA-256, which every Java has. */
    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private void add(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        addNumber(bytes.length);
        digest.update(bytes);
    }

    private void addNumber(long number) {
        for (int shift = 0; shift < Long.SIZE; shift += Byte.SIZE) {
            digest.update((byte) (number >> shift));
        }
    }

    // Names and check sums: those of a jar are in its directory, so that it need not be read through.
    private void addContent(Path jar) {
        try {
            if (Files.isDirectory(jar)) {
                addFolder(jar);
            } else {
                try (ZipFile zip = new ZipFile(jar.toFile())) {
                    zip.stream().forEach(entry -> {
                        add(entry.getName());
                        addNumber(entry.getCrc());
                    });
                }
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private void addFolder(Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
        for (Path file : files) {
            CRC32 sum = new CRC32();
            sum.update(Files.readAllBytes(file));
            add(folder.relativize(file).toString());
            addNumber(sum.getValue());
        }
    }
}
