package org.kerfleaf.export.terminal;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.plan.Plan;

/** Tells a plan as plain text. */
public final class TerminalText {
    /** The narrowest text that still holds the tables. */
    public static final int NARROWEST = 60;

    /** Wider lines are hard to read. */
    public static final int WIDEST = 100;

    private TerminalText() {}

    /**
     * The whole plan; what does not make sense stands first.
     *
     * @param columns how many letters a line may have, taken as {@link #NARROWEST} if less and {@link #WIDEST} if more
     * @param reasons whether each figure says why it is what it is
     */
    public static String of(Plan plan, int columns, boolean reasons) {
        int width = Math.max(NARROWEST, Math.min(WIDEST, columns));
        List<Section> sections = new ArrayList<>();
        sections.addAll(CutSections.of(plan));
        sections.addAll(WorkSections.of(plan));
        Page page = new Page(plan.style(), width, reasons);
        page.titleBlock(plan);
        List<Section> told = sections.stream().filter(Section::isTold).toList();
        for (int at = 0; at < told.size(); at++) {
            page.section(told.get(at), (double) at / Math.max(1, told.size() - 1));
        }
        return page.text();
    }
}
