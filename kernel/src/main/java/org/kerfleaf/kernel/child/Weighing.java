package org.kerfleaf.kernel.child;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import org.kerfleaf.kernel.wire.Report;

/** What the process holds once everything that can go is gone. */
final class Weighing {
    private Weighing() {}

    static Report.Weighed now() {
        // The first collection finds loaders that nobody needs, the second what they alone held.
        System.gc();
        System.gc();
        long classBytes = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getName().equals("Metaspace"))
                .map(MemoryPoolMXBean::getUsage)
                .mapToLong(usage -> usage.getUsed())
                .sum();
        long heapBytes =
                ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
        int classes = ManagementFactory.getClassLoadingMXBean().getLoadedClassCount();
        return new Report.Weighed(heapBytes, classBytes, classes);
    }
}
