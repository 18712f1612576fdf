package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Ink;

/** A table set in two columns, down the left and then down the right, each under a head of its own. */
record TwoColumns(Table table, double gap) {
    /** Both columns about equally high. */
    Block balanced(double width) {
        double each = (width - gap) / 2;
        List<Block> rows = table.blocks(each);
        double half = rows.stream().mapToDouble(row -> row.height(each)).sum() / 2;
        int left = 0;
        double high = 0;
        while (left < rows.size() && high < half - 1e-6) {
            high += rows.get(left++).height(each);
        }
        return pair(rows.subList(0, left), rows.subList(left, rows.size()), each);
    }

    /** Fills what is left of each page, the left column first; the last page is balanced. */
    void intoColumns(Flow flow) {
        double each = (flow.width() - gap) / 2;
        double head = table.head(each).height(each);
        List<Block> rows = table.blocks(each);
        int at = 0;
        while (at < rows.size()) {
            double room = flow.left() - head;
            int left = fitting(rows, at, room, each);
            int right = fitting(rows, left, room, each);
            if (left == at && !flow.isFresh()) {
                flow.next();
                continue;
            }
            if (left == at) {
                left = at + 1;
                right = left;
            }
            if (right == rows.size()) {
                left = at + Math.max(1, (right - at + 1) / 2);
            }
            flow.add(pair(rows.subList(at, left), rows.subList(left, right), each));
            at = right;
            if (at < rows.size()) {
                flow.next();
            }
        }
    }

    private static int fitting(List<Block> rows, int from, double room, double width) {
        double high = 0;
        int to = from;
        while (to < rows.size() && high + rows.get(to).height(width) <= room) {
            high += rows.get(to++).height(width);
        }
        return to;
    }

    private Block pair(List<Block> left, List<Block> right, double each) {
        Block first = headed(left, each);
        Block second = right.isEmpty() ? Block.space(0) : headed(right, each);
        return new Block() {
            @Override
            public double height(double width) {
                return Math.max(first.height(each), second.height(each));
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                first.paint(ink, x, y, each);
                second.paint(ink, x + each + gap, y, each);
            }
        };
    }

    private Block headed(List<Block> rows, double each) {
        List<Block> all = new ArrayList<>();
        all.add(table.head(each));
        all.addAll(rows);
        return Block.stack(all);
    }
}
