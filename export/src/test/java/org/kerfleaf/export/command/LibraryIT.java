package org.kerfleaf.export.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is handed out: the launcher's jar and the jars beside it. */
class LibraryIT {
    /** The class file version of Java 17 (JVM specification, table 4.1-A). */
    private static final int JAVA_17 = 61;

    private static final int CLASS_FILE = 0xCAFEBABE;

    private static List<Path> jars() throws IOException {
        Path dist = Path.of(System.getProperty("kerfleaf.dist"));
        try (Stream<Path> lib = Files.list(dist.resolve("lib"))) {
            List<Path> jars = new ArrayList<>(lib.filter(file -> file.toString().endsWith(".jar"))
                    .sorted()
                    .toList());
            jars.add(dist.resolve("kerfleaf.jar"));
            return jars;
        }
    }

    /** A dependency for a newer Java compiles nothing and says nothing until it is first used. */
    @Test
    void everyJar_hasClassesThatJava17Runs() throws IOException {
        List<String> tooNew = new ArrayList<>();
        int classes = 0;
        for (Path path : jars()) {
            try (JarFile jar = new JarFile(path.toFile())) {
                for (JarEntry entry : jar.stream().filter(LibraryIT::isRunBy17).toList()) {
                    classes++;
                    int version = version(jar, entry);
                    if (version > JAVA_17) {
                        tooNew.add("%s in %s: %d".formatted(entry.getName(), path.getFileName(), version));
                    }
                }
            }
        }
        assertThat(tooNew).isEmpty();
        assertThat(classes).as("classes looked at").isGreaterThan(5_000);
    }

    /** Versions for other Javas lie apart and are left alone by 17, and module descriptors too on a class path. */
    private static boolean isRunBy17(JarEntry entry) {
        String name = entry.getName();
        return name.endsWith(".class") && !name.startsWith("META-INF/versions/") && !name.endsWith("module-info.class");
    }

    private static int version(JarFile jar, JarEntry entry) throws IOException {
        try (DataInputStream in = new DataInputStream(jar.getInputStream(entry))) {
            assertThat(in.readInt()).as(entry.getName()).isEqualTo(CLASS_FILE);
            in.readUnsignedShort();
            return in.readUnsignedShort();
        }
    }

    /** Those under LGPL or MPL must stay jars of their own, so that anybody can put another one in their place. */
    @Test
    void replaceableLibraries_areJarsOfTheirOwn() throws IOException {
        assertThat(jars())
                .extracting(path -> path.getFileName().toString())
                .anyMatch(name -> name.startsWith("openpdf-"));
        try (JarFile own = new JarFile(jars().get(jars().size() - 1).toFile())) {
            assertThat(own.stream().map(JarEntry::getName).filter(name -> name.endsWith(".class")))
                    .isNotEmpty()
                    .allMatch(name -> name.startsWith("org/kerfleaf/"));
        }
    }
}
