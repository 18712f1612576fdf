package org.kerfleaf.kernel.child;

import java.io.ByteArrayInputStream;
import java.util.Locale;
import java.util.Properties;
import java.util.TimeZone;

/** What a cell could change for the runs after it, as it was before the first. */
record Surroundings(Properties properties, Locale locale, TimeZone zone) {
    static Surroundings now() {
        return new Surroundings(
                (Properties) System.getProperties().clone(), Locale.getDefault(), TimeZone.getDefault());
    }

    void restore() {
        System.setProperties((Properties) properties.clone());
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
        System.setIn(new ByteArrayInputStream(new byte[0]));
        Thread.setDefaultUncaughtExceptionHandler(null);
    }
}
