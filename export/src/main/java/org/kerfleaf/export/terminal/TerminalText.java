package org.kerfleaf.export.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.plan.Change;
import org.kerfleaf.plan.Plan;

/** Tells a plan as plain text. */
public final class TerminalText {
    /** The narrowest text that still holds the tables. */
    public static final int NARROWEST = 60;

    /** Wider lines are hard to read. */
    public static final int WIDEST = 100;

    private TerminalText() {}

    /** What does not make sense and the checks, short ones first; none of either leaves the title block. */
    public static String checks(Plan plan, int columns) {
        List<Section> sections = List.of(CutSections.problems(plan), WorkSections.checks(plan));
        return told(plan, new Page(plan.style(), within(columns), false), sections);
    }

    /**
     * The whole plan; what does not make sense stands first.
     *
     * @param columns how many letters a line may have, taken as {@link #NARROWEST} if less and {@link #WIDEST} if more
     * @param reasons whether each figure says why it is what it is
     */
    public static String of(Plan plan, int columns, boolean reasons) {
        return of(plan, Optional.empty(), columns, reasons);
    }

    /** The same; what changed, if something was tried, stands after the title. */
    public static String of(Plan plan, Optional<List<Change>> changes, int columns, boolean reasons) {
        List<Section> sections = new ArrayList<>(List.of(CutSections.problems(plan)));
        sections.addAll(SizeSections.of(plan, changes));
        sections.addAll(CutSections.of(plan));
        sections.addAll(WorkSections.of(plan));
        return told(plan, new Page(plan.style(), within(columns), reasons), sections);
    }

    private static String told(Plan plan, Page page, List<Section> sections) {
        page.titleBlock(plan);
        List<Section> told = sections.stream().filter(Section::isTold).toList();
        for (int at = 0; at < told.size(); at++) {
            page.section(told.get(at), (double) at / Math.max(1, told.size() - 1));
        }
        return page.text();
    }

    private static int within(int columns) {
        return Math.max(NARROWEST, Math.min(WIDEST, columns));
    }
}
