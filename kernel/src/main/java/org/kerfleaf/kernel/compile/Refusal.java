package org.kerfleaf.kernel.compile;

import java.util.Optional;
import org.kerfleaf.kernel.cell.CellProblem;

/**
 * A piece that cannot run.
 *
 * @param live the ordinal of the live value it is, -1 in a cell
 * @param waitsFor the name it waits for, if nothing is wrong with itself
 * @param problem what is wrong, or what it waits for
 */
public record Refusal(int live, Optional<String> waitsFor, CellProblem problem) {}
