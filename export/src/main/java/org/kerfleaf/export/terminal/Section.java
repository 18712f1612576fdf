package org.kerfleaf.export.terminal;

import java.util.function.Consumer;

/**
 * A section of the text.
 *
 * @param title its name
 * @param facts what stands at the right of its name, may be empty
 * @param isTold whether the plan has anything for it
 * @param writer puts its lines on the page
 */
record Section(String title, String facts, boolean isTold, Consumer<Page> writer) {}
