package org.kerfleaf.export.command;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * The program's classes as they lie in memory once loaded, in a file that the virtual machine maps at its start
 * ({@code -XX:SharedArchiveFile}). The launcher names the file that {@code name} in the same folder names; the virtual
 * machine passes over one that is of another Java or of other jars. A program started without the launcher has none.
 *
 * <p>Where none fits, an {@link ArchiveMaker} is started, a process of its own that nobody waits for.
 *
 * @param folder where archives are kept
 * @param file the one that fits this Java and these jars
 */
record Archive(Path folder, Path file) {
    /** Where the launcher says which file it named, be there one or not. */
    private static final String NAMED = "kerfleaf.archive";

    /** The environment's way to do without. */
    private static final String SWITCH = "KERFLEAF_ARCHIVE";

    /** The archive in a folder that fits what runs here. @throws IOException if this does not run from jars */
    static Archive in(Path folder) throws IOException {
        Path home = jar().getParent();
        List<String> all = new ArrayList<>(
                List.of(System.getProperty("java.home"), System.getProperty("java.vm.vendor"), "" + Runtime.version()));
        all.add(told(jar()));
        try (Stream<Path> libraries = Files.list(home.resolve("lib"))) {
            for (Path one : libraries.sorted().toList()) {
                all.add(told(one));
            }
        }
        byte[] key = String.join("\n", all).getBytes(StandardCharsets.UTF_8);
        return new Archive(folder, folder.resolve(UUID.nameUUIDFromBytes(key) + ".jsa"));
    }

    private static String told(Path file) throws IOException {
        return "%s %d %d"
                .formatted(
                        file, Files.size(file), Files.getLastModifiedTime(file).toMillis());
    }

    /** The jar that the program runs from. */
    static Path jar() throws IOException {
        try {
            Path jar = Path.of(Archive.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            if (Files.isRegularFile(jar)) {
                return jar;
            }
            throw new IOException("“%s” is no jar.".formatted(jar));
        } catch (URISyntaxException noFile) {
            throw new IOException(noFile);
        }
    }

    /** Names the file that the launcher is to name next time. */
    Path name() {
        return folder.resolve("name");
    }

    /** Stands where none could be made, so that it is not tried at every start. */
    Path refused() {
        return folder.resolve(file.getFileName() + ".none");
    }

    /** Sees to it that the next start finds an archive that fits; what hinders it is nobody's concern. */
    static void keep(Map<String, String> environment) {
        String named = System.getProperty(NAMED);
        if (named == null || "off".equals(environment.get(SWITCH))) {
            return;
        }
        try {
            Archive fits = in(Path.of(named).getParent());
            boolean used = fits.file().equals(Path.of(named)) && Files.exists(fits.file());
            if (!used && !Files.exists(fits.refused())) {
                if (!Files.isDirectory(fits.folder())) {
                    // In the folder of what was compiled, once there is one: before that nothing long was done.
                    Files.createDirectory(fits.folder());
                }
                // Nothing of ours is kept open, or who waits for our last output would wait for it.
                new ProcessBuilder(ArchiveMaker.command(List.of(), ArchiveMaker.class, fits.folder()))
                        .directory(fits.folder().toFile())
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
            }
        } catch (IOException | RuntimeException none) {
            // Then it starts as it did.
        }
    }

    /** The program that runs this process. */
    static String java() {
        return System.getProperty("java.home") + File.separator + "bin" + File.separator + "java";
    }
}
