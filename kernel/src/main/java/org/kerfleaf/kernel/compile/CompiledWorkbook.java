package org.kerfleaf.kernel.compile;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.wire.ClassCode;
import org.kerfleaf.kernel.wire.Unit;

/**
 * A workbook as it was compiled.
 *
 * @param classes the classes of all units
 * @param units what can run, in document order, live values last; a unit's index is its place here
 * @param refusals what cannot
 * @param notes what runs and is probably not meant
 */
public record CompiledWorkbook(
        List<ClassCode> classes, List<CompiledUnit> units, List<Refusal> refusals, List<CellProblem> notes) {
    public CompiledWorkbook {
        classes = List.copyOf(classes);
        units = List.copyOf(units);
        refusals = List.copyOf(refusals);
        notes = List.copyOf(notes);
    }

    /** What the child runs. */
    public List<Unit> runnable() {
        return units.stream().map(CompiledUnit::unit).toList();
    }

    /** Whether all of it can run, and is probably meant. */
    boolean isClean() {
        return refusals.isEmpty() && notes.isEmpty();
    }

    /** The unit that a class belongs to. */
    public Optional<CompiledUnit> owner(String className) {
        return units.stream().filter(unit -> unit.owns(className)).findFirst();
    }
}
