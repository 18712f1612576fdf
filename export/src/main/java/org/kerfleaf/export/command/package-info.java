/**
 * The command {@code kerfleaf}: a word for what to make, and a workbook file. Start at
 * {@link org.kerfleaf.export.command.Main}.
 *
 * <p>Only this package knows the clock, the command line, files and exit statuses. It talks to the kernel and the planner
 * through {@code WorkbookPlanner}, so that the words can be tried without either. Whatever goes wrong is told on stderr in
 * one message that shows what was given, where, and what would be right; nobody is shown a stack trace.
 */
package org.kerfleaf.export.command;
