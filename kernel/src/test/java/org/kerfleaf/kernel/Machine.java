package org.kerfleaf.kernel;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.function.BooleanSupplier;

/** How slow this machine is just now. Tests wait for events; where a limit itself is tested, it is scaled. */
final class Machine {
    private static final Duration LONGEST = Duration.ofMinutes(2);

    private Machine() {}

    /** Whole seconds: as many as said, times how many want to run for each processor. */
    static Duration scaled(int seconds) {
        double waiting = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage()
                / Runtime.getRuntime().availableProcessors();
        return Duration.ofSeconds((long) Math.ceil(seconds * Math.max(1, waiting)));
    }

    /** Waits until something holds, as long as that may take. */
    static void await(BooleanSupplier event) throws InterruptedException {
        long until = System.nanoTime() + LONGEST.toNanos();
        while (!event.getAsBoolean()) {
            if (System.nanoTime() > until) {
                throw new AssertionError("This did not come about in " + LONGEST + ".");
            }
            Thread.sleep(5);
        }
    }
}
