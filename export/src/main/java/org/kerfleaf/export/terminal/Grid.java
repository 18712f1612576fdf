package org.kerfleaf.export.terminal;

import java.util.ArrayList;
import java.util.List;

/** A table of text. Columns are as wide as what they hold; if that is too wide, words break into lines, widest column first. */
final class Grid {
    private static final String GAP = "  ";
    private static final int NARROWEST = 6;

    private enum Side {
        LEFT,
        RIGHT,
        TAPE
    }

    private final List<String> heads = new ArrayList<>();
    private final List<Side> sides = new ArrayList<>();
    private final List<List<Cell>> rows = new ArrayList<>();

    Grid words(String head) {
        return column(head, Side.LEFT);
    }

    Grid number(String head) {
        return column(head, Side.RIGHT);
    }

    /** Lengths, in line between wholes and fractions. */
    Grid tape(String head) {
        return column(head, Side.TAPE);
    }

    private Grid column(String head, Side side) {
        heads.add(head);
        sides.add(side);
        return this;
    }

    Grid row(Cell... cells) {
        if (cells.length != heads.size()) {
            throw new IllegalStateException("%d cells for %d columns %s.".formatted(cells.length, heads.size(), heads));
        }
        rows.add(List.of(cells));
        return this;
    }

    /** The lines of the table, none longer than the given width as far as words can be broken. */
    List<String> lines(int width) {
        int[] fronts = new int[heads.size()];
        int[] widths = new int[heads.size()];
        measure(fronts, widths);
        shrink(widths, width);
        List<String> lines = new ArrayList<>();
        List<Cell> head = heads.stream().map(Cell::of).toList();
        add(lines, head, fronts, widths, true);
        int longest = lines.stream().mapToInt(String::length).max().orElse(0);
        int whole = GAP.length() * (widths.length - 1);
        for (int one : widths) {
            whole += one;
        }
        lines.add("─".repeat(Math.min(width, Math.max(longest, whole))));
        rows.forEach(row -> add(lines, row, fronts, widths, false));
        return lines;
    }

    private void measure(int[] fronts, int[] widths) {
        for (int at = 0; at < widths.length; at++) {
            int front = 0;
            int rest = 0;
            for (List<Cell> row : rows) {
                front = Math.max(front, row.get(at).front().length());
                rest = Math.max(rest, row.get(at).rest().length());
            }
            fronts[at] = front;
            widths[at] = Math.max(heads.get(at).length(), front + rest);
            if (sides.get(at) == Side.TAPE) {
                fronts[at] = widths[at] - rest;
            }
        }
    }

    private void shrink(int[] widths, int width) {
        int over = GAP.length() * (widths.length - 1) - width;
        for (int one : widths) {
            over += one;
        }
        for (; over > 0; over--) {
            int widest = -1;
            for (int at = 0; at < widths.length; at++) {
                boolean breaks = sides.get(at) == Side.LEFT && widths[at] > NARROWEST;
                if (breaks && (widest < 0 || widths[at] > widths[widest])) {
                    widest = at;
                }
            }
            if (widest < 0) {
                return;
            }
            widths[widest]--;
        }
    }

    private void add(List<String> lines, List<Cell> row, int[] fronts, int[] widths, boolean isHead) {
        List<List<String>> cells = new ArrayList<>();
        int high = 1;
        for (int at = 0; at < widths.length; at++) {
            List<String> cell = cell(row.get(at), at, fronts[at], widths[at], isHead);
            cells.add(cell);
            high = Math.max(high, cell.size());
        }
        for (int line = 0; line < high; line++) {
            StringBuilder text = new StringBuilder();
            for (int at = 0; at < widths.length; at++) {
                String part = line < cells.get(at).size() ? cells.get(at).get(line) : "";
                text.append(at == 0 ? "" : GAP)
                        .append(part)
                        .append(" ".repeat(Math.max(0, widths[at] - part.length())));
            }
            lines.add(text.toString().stripTrailing());
        }
    }

    private List<String> cell(Cell cell, int at, int front, int width, boolean isHead) {
        return switch (sides.get(at)) {
            case LEFT -> Words.broken(cell.front(), width);
            case RIGHT -> List.of(" ".repeat(Math.max(0, width - cell.front().length())) + cell.front());
            case TAPE ->
                isHead
                        ? List.of(" ".repeat(Math.max(0, width - cell.front().length())) + cell.front())
                        : List.of(" ".repeat(Math.max(0, front - cell.front().length())) + cell.front() + cell.rest());
        };
    }
}
