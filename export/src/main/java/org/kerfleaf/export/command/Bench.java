package org.kerfleaf.export.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.function.Supplier;

/**
 * What the words work with.
 *
 * @param allowances which workbooks may reach for more than the words
 * @param folder where files without a folder are looked for and kept
 * @param columns how many letters a line of the terminal holds
 */
record Bench(
        WorkbookPlanner planner,
        ReachReader reach,
        Allowances allowances,
        BookletWriter booklets,
        PrintWriter out,
        PrintWriter err,
        Path folder,
        int columns,
        Supplier<LocalDate> today) {}
