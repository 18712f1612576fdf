package org.kerfleaf.samples;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.kernel.cell.CellSource;
import org.kerfleaf.kernel.cell.WorkbookSource;

/** A workbook of so many top-level pieces of Java, half of them with {@code var}, each part and placing a cell of its own. */
final class Snippets {
    private Snippets() {}

    /**
     * The cells.
     *
     * @param width how the first says its width
     * @param edited a number in the middle one
     */
    static List<String> of(int snippets, String width, int edited) {
        List<String> cells = new ArrayList<>();
        cells.add("Length width = %s;".formatted(width));
        cells.add("Sheet ply = sheet(\"exterior plywood\", \"48 in\", \"96 in\").soldAs(\"3/4 in\");");
        cells.add("Length t = ply.thickness();");
        cells.add(
                "Part made(String name, Length high) { return panel(name, ply).wide(width.minus(t, t)).high(high); }");
        for (int i = 0; cells.size() < snippets; i++) {
            int high = i == (snippets - 4) / 4 ? edited : 20 + i;
            cells.add("Part part%d = made(\"Part %d\", length(\"%d in\"));".formatted(i, i, high));
            cells.add("var in%d = place(part%d);".formatted(i, i));
        }
        return cells.subList(0, snippets);
    }

    static WorkbookSource source(List<String> texts) {
        List<CellSource> cells = new ArrayList<>();
        for (String text : texts) {
            cells.add(new CellSource(cells.size(), text, 2 + 3 * cells.size(), 0));
        }
        return new WorkbookSource("Snippets", List.of(), cells, List.of());
    }
}
