package org.kerfleaf.sketch;

import java.time.Duration;

/** How long to wait after the step that this is said in, and for what. @group the work */
public record Waiting(Origin origin, Duration time, String forWhat) implements Declaration {}
