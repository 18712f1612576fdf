package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Line;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Style;

/** Rows under a head; the head is repeated where a page breaks, a row never breaks, a group's name stays with its first row. */
final class Table {
    private static final Style HEAD = new Style(Face.LABEL_SEMI, 8.5, Ink.GRAPHITE);
    private static final Style GROUP = new Style(Face.LABEL_BOLD, 11, Ink.BLACK);
    private static final double GUTTER = 3.2;

    private final List<Column> columns;
    private final List<Row> rows = new ArrayList<>();
    private double above = 1.5;
    private double below = 1.3;
    private double aboveGroup = 5;

    private record Row(String group, List<Cell> cells, boolean total) {
        boolean isGroup() {
            return cells.isEmpty();
        }
    }

    Table(Column... columns) {
        this.columns = List.of(columns);
    }

    /** Sets rows a little closer, so that a page holds more of them. */
    Table snug() {
        above = 1.0;
        below = 0.8;
        aboveGroup = 3.2;
        return this;
    }

    /** The height of head and rows. */
    double height(double width) {
        return whole(width).height(width);
    }

    /** Sets rows close. */
    Table tight() {
        above = 0.6;
        below = 0.6;
        return this;
    }

    Table row(Cell... cells) {
        rows.add(new Row("", List.of(cells), false));
        return this;
    }

    /** A row below a heavy rule. */
    Table total(Cell... cells) {
        rows.add(new Row("", List.of(cells), true));
        return this;
    }

    /** The name of the rows that follow. */
    Table group(String name) {
        rows.add(new Row(name, List.of(), false));
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Adds the head and the rows to a flow. */
    void into(Flow flow) {
        Block head = head(flow.width());
        List<Block> blocks = blocks(flow.width());
        boolean first = true;
        for (Block block : blocks) {
            if (first) {
                flow.together(List.of(head, block));
                flow.repeat(head);
                first = false;
            } else {
                flow.add(block);
            }
        }
        flow.repeat(null);
    }

    /** Head and rows as one block for a column that wide. */
    Block whole(double width) {
        List<Block> all = new ArrayList<>();
        all.add(head(width));
        all.addAll(blocks(width));
        return Block.stack(all);
    }

    /** The rows without a head, in order, for a table that wide; a group's name is one block with its first row. */
    List<Block> blocks(double width) {
        double[] widths = widths(width);
        double[] axes = axes(widths);
        List<Block> blocks = new ArrayList<>();
        Block group = null;
        for (Row row : rows) {
            if (row.isGroup()) {
                group = group(row.group(), blocks.isEmpty(), startOfText(widths));
                continue;
            }
            Block block = row(row, widths, axes);
            blocks.add(group == null ? block : Block.stack(List.of(group, block)));
            group = null;
        }
        return blocks;
    }

    private double startOfText(double[] widths) {
        double x = 0;
        for (int i = 0; i < widths.length && columns.get(i).head().isEmpty(); i++) {
            x += widths[i] + GUTTER;
        }
        return x;
    }

    Block head(double width) {
        double[] widths = widths(width);
        int lines = 1;
        for (int i = 0; i < widths.length; i++) {
            lines = Math.max(
                    lines,
                    Rich.of(columns.get(i).head(), HEAD)
                            .wrap(headRoom(i, widths))
                            .size());
        }
        double leading = HEAD.size() * 1.25;
        double high = lines * leading + 1.2;
        return Block.picture(high + 0.5, (ink, x, y, w) -> {
            double left = x;
            for (int i = 0; i < widths.length; i++) {
                List<Line> head = Rich.of(columns.get(i).head(), HEAD).wrap(headRoom(i, widths));
                double baseline = y + high - 1.6 - (head.size() - 1) * leading;
                for (Line line : head) {
                    if (columns.get(i).right()) {
                        ink.flushRight(line, left + widths[i], baseline);
                    } else {
                        ink.text(line, left, baseline);
                    }
                    baseline += leading;
                }
                left += widths[i] + GUTTER;
            }
            ink.line(x, y + high, x + w, y + high, Ink.WIDE);
        });
    }

    private double headRoom(int column, double[] widths) {
        return Math.max(widths[column], 4);
    }

    private Block group(String name, boolean first, double indent) {
        double room = first ? 2.6 : aboveGroup;
        return Block.picture(room + 5.6, (ink, x, y, w) -> {
            ink.text(Rich.of(name, GROUP).line(), x + indent, y + room + 3.6);
            ink.line(x, y + room + 5.4, x + w, y + room + 5.4, Ink.MIDDLE);
        });
    }

    private Block row(Row row, double[] widths, double[] axes) {
        double baseline = row.cells().stream().mapToDouble(Cell::baseline).max().orElse(0);
        double high = 0;
        for (int i = 0; i < widths.length; i++) {
            Cell cell = row.cells().get(i);
            high = Math.max(high, baseline - cell.baseline() + cell.height(widths[i]));
        }
        double inner = high;
        return Block.picture(above + inner + below, (ink, x, y, w) -> {
            double left = x;
            for (int i = 0; i < widths.length; i++) {
                Cell cell = row.cells().get(i);
                cell.paint(ink, left, y + above + baseline - cell.baseline(), widths[i], axes[i]);
                left += widths[i] + GUTTER;
            }
            if (row.total()) {
                ink.line(x, y, x + w, y, Ink.WIDE);
            } else {
                ink.line(x, y + above + inner + below, x + w, y + above + inner + below, 0.12);
            }
        });
    }

    /** Where wholes end in each column: the widest fraction still ends at the column's right edge. */
    private double[] axes(double[] widths) {
        double[] axes = new double[widths.length];
        for (int i = 0; i < widths.length; i++) {
            axes[i] = Math.max(leftOfAxis(i), widths[i] - rightOfAxis(i));
        }
        return axes;
    }

    private double leftOfAxis(int column) {
        return cells(column).stream().mapToDouble(Cell::leftOfAxis).max().orElse(0);
    }

    private double rightOfAxis(int column) {
        return cells(column).stream().mapToDouble(Cell::rightOfAxis).max().orElse(0);
    }

    private List<Cell> cells(int column) {
        return rows.stream()
                .filter(row -> !row.isGroup())
                .map(row -> row.cells().get(column))
                .toList();
    }

    private double[] widths(double whole) {
        int n = columns.size();
        double[] widths = new double[n];
        double[] natural = new double[n];
        double room = whole - GUTTER * (n - 1);
        for (int i = 0; i < n; i++) {
            double head = Rich.of(columns.get(i).head(), HEAD).widestWord();
            natural[i] = Math.max(
                    Math.max(head, leftOfAxis(i) + rightOfAxis(i)),
                    cells(i).stream().mapToDouble(Cell::natural).max().orElse(0));
            boolean fits = columns.get(i).share() == 0;
            double least = cells(i).stream().mapToDouble(Cell::least).max().orElse(0);
            widths[i] = fits ? natural[i] : Math.min(Math.max(head, least), whole * 0.22);
            room -= widths[i];
        }
        if (room < 0) {
            squeeze(room, widths);
        }
        spend(room, widths, natural);
        return widths;
    }

    /** Takes what is lacking from the columns that share, each in proportion; their words break. */
    private void squeeze(double lacking, double[] widths) {
        double shared = 0;
        for (int i = 0; i < widths.length; i++) {
            shared += columns.get(i).share() > 0 ? widths[i] : 0;
        }
        for (int i = 0; i < widths.length && shared > 0; i++) {
            if (columns.get(i).share() > 0) {
                widths[i] *= Math.max(0.2, 1 + lacking / shared);
            }
        }
    }

    /** Gives the spare room to the columns that share it, none more than it can use while another still can. */
    private void spend(double spare, double[] widths, double[] natural) {
        boolean[] open = new boolean[widths.length];
        for (int i = 0; i < open.length; i++) {
            open[i] = columns.get(i).share() > 0 && natural[i] > widths[i];
        }
        double room = Math.max(spare, 0);
        for (int round = 0; round < widths.length && room > 1e-9; round++) {
            double shares = 0;
            for (int i = 0; i < open.length; i++) {
                shares += open[i] ? columns.get(i).share() : 0;
            }
            if (shares == 0) {
                break;
            }
            double given = 0;
            for (int i = 0; i < open.length; i++) {
                if (open[i]) {
                    double more = Math.min(room * columns.get(i).share() / shares, natural[i] - widths[i]);
                    widths[i] += more;
                    given += more;
                    open[i] = natural[i] - widths[i] > 1e-9;
                }
            }
            room -= given;
        }
        int last = lastShared();
        if (last >= 0) {
            widths[last] += room;
        }
    }

    private int lastShared() {
        for (int i = columns.size() - 1; i >= 0; i--) {
            if (columns.get(i).share() > 0) {
                return i;
            }
        }
        return -1;
    }

    @Override
    public String toString() {
        return "Table of " + rows.size() + " rows, columns " + Arrays.toString(columns.toArray());
    }
}
