package org.kerfleaf.kernel;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.kerfleaf.kernel.wire.Report;
import org.kerfleaf.kernel.wire.Thrown;
import org.kerfleaf.sketch.Live;

/** What the child reported of one run, and how the run ended. */
final class RunLog {
    private final int mostPrinted;
    private final int units;
    private final Set<Integer> began = new LinkedHashSet<>();
    private final Map<Integer, Thrown> threw = new LinkedHashMap<>();
    private final Map<Integer, Integer> skipped = new LinkedHashMap<>();
    private final Map<Integer, Live> said = new LinkedHashMap<>();
    private final StringBuilder printed = new StringBuilder();
    private Report.Gathered gathered;
    private Report.Done done;
    private int current = -1;
    private Ending ending;

    /** How a process ended before its run did. */
    record Ending(StopReason reason, int exitCode) {}

    /**
     * @param mostPrinted so many characters are kept, whatever the child sends
     * @param units how many there are
     */
    RunLog(int mostPrinted, int units) {
        this.mostPrinted = mostPrinted;
        this.units = units;
    }

    /** @throws IOException if it speaks of a unit that there is not, or does not belong into a run */
    void take(Report report) throws IOException {
        if (report instanceof Report.Began began1) {
            current = known(began1.unit());
            began.add(current);
            print(began1.printed());
        } else if (report instanceof Report.Threw one) {
            threw.put(known(one.unit()), one.thrown());
        } else if (report instanceof Report.Skipped one) {
            skipped.put(known(one.unit()), known(one.needs()));
        } else if (report instanceof Report.Gathered all) {
            gathered = all;
        } else if (report instanceof Report.Said one) {
            said.put(known(one.unit()), one.value());
        } else if (report instanceof Report.Done end) {
            done = end;
            print(end.printed());
        } else {
            throw new IOException("Nobody asked for " + report + ".");
        }
    }

    private int known(int unit) throws IOException {
        if (unit < 0 || unit >= units) {
            throw new IOException("There is no unit %d among %d.".formatted(unit, units));
        }
        return unit;
    }

    private void print(String text) {
        printed.append(text, 0, Math.min(text.length(), Math.max(0, mostPrinted - printed.length())));
    }

    void ended(Ending how) {
        ending = how;
    }

    boolean isDone() {
        return done != null;
    }

    boolean isSpent() {
        return done == null || done.spent();
    }

    /** The unit that was running last; none if the run had not begun. */
    OptionalInt current() {
        return current < 0 ? OptionalInt.empty() : OptionalInt.of(current);
    }

    Ending ending() {
        return ending;
    }

    boolean began(int unit) {
        return began.contains(unit);
    }

    Map<Integer, Thrown> threw() {
        return threw;
    }

    Map<Integer, Integer> skipped() {
        return skipped;
    }

    Optional<Report.Gathered> gathered() {
        return Optional.ofNullable(gathered);
    }

    Map<Integer, Live> said() {
        return said;
    }

    String printed() {
        return printed.toString();
    }
}
