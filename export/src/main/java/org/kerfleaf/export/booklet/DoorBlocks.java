package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.DoorWords;
import org.kerfleaf.plan.Plan;

/** In the step that hangs a door or puts in a pane: where hinges, catches and knob go, and the pane's pocket, cut and beads. */
final class DoorBlocks {
    private DoorBlocks() {}

    /** Nothing for a step that does neither. */
    static List<Block> of(Plan plan, int step) {
        DoorWords words = new DoorWords(plan.style());
        List<Block> blocks = new ArrayList<>();
        plan.doors().panes().stream()
                .filter(pane -> pane.step() == step)
                .forEach(pane -> blocks.add(block(pane.pane(), words.of(pane))));
        plan.doors().hung().stream()
                .filter(door -> door.step() == step)
                .forEach(door -> blocks.add(block(door.door() + ", from " + door.from(), words.of(door))));
        return blocks;
    }

    private static Block block(String what, List<DoorWords.Line> lines) {
        String words =
                lines.stream().map(line -> line.what() + " " + line.words()).collect(Collectors.joining("; "));
        Rich text = Rich.of(what + ": ", Style.LABEL_SEMI).plus(words + ".", Style.LABEL);
        return Block.stack(List.of(Block.space(1.2), Paragraph.of(text, Style.LABEL, 1.35, 1.2)));
    }
}
