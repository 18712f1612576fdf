package org.kerfleaf.kernel;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.Function;
import org.joda.money.Money;
import org.kerfleaf.kernel.child.ChildMain;
import org.kerfleaf.kernel.compile.Jars;
import org.kerfleaf.sketch.Sketch;

/**
 * How a child process is started.
 *
 * @param command the program and its arguments, within limits
 * @param patience how long it may take to call back, and to begin with a run
 */
record Launch(Function<KernelLimits, List<String>> command, Duration patience) {
    /** With the Java that runs this program. */
    static final Launch USUAL = new Launch(Launch::usual, Duration.ofSeconds(60));

    private static List<String> usual(KernelLimits limits) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classPath = Jars.holding(ChildMain.class, Sketch.class, Money.class);
        return List.of(
                java,
                "-Xmx" + limits.heapMegabytes() + "m",
                "-Xss2m",
                "-XX:MaxMetaspaceSize=128m",
                "-XX:+UseSerialGC",
                "-XX:+ExitOnOutOfMemoryError",
                "-XX:-CreateCoredumpOnCrash",
                "-XX:-UsePerfData",
                "-Dfile.encoding=UTF-8",
                "-Duser.language=en",
                "-Duser.country=",
                "-Duser.timezone=UTC",
                "-Djava.awt.headless=true",
                "-cp",
                classPath,
                ChildMain.class.getName());
    }
}
