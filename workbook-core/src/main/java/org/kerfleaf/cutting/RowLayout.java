package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Cuts the sheet into rows first, each as deep as its deepest part and filled as full as can be, and puts the rows on
 * sheets, deepest first. Rows are quick to saw: every part of a row comes off at one setting of its own.
 */
final class RowLayout {
    /** How many sets of parts are looked at for one row. */
    private static final int SETS = 1_500;

    private final boolean rowsAcross;
    private final boolean flat;
    private final long run;
    private final List<Blank> left;
    private List<Slice> best;
    private double bestArea;
    private int looks;

    private RowLayout(List<Blank> parts, boolean rowsAcross, boolean flat, long run) {
        this.rowsAcross = rowsAcross;
        this.flat = flat;
        this.run = run;
        this.left = new ArrayList<>(parts);
    }

    /**
     * One slice for each sheet used.
     *
     * @param rowsAcross whether rows run across the sheet, so that their depths add up along it
     * @param flat whether parts that may turn lie with their short side into the row's depth
     */
    static List<Slice> of(List<Blank> parts, long length, long width, boolean rowsAcross, boolean flat) {
        RowLayout layout = new RowLayout(parts, rowsAcross, flat, rowsAcross ? width : length);
        List<Slice> rows = new ArrayList<>();
        while (!layout.left.isEmpty()) {
            rows.add(layout.nextRow());
        }
        return sheets(rows, rowsAcross, rowsAcross ? length : width);
    }

    private static List<Slice> sheets(List<Slice> rows, boolean rowsAcross, long reach) {
        List<List<Slice>> sheets = new ArrayList<>();
        List<Long> room = new ArrayList<>();
        for (Slice row : rows) {
            long depth = rowsAcross ? row.length : row.width;
            int sheet = 0;
            while (sheet < room.size() && room.get(sheet) < depth) {
                sheet++;
            }
            if (sheet == room.size()) {
                sheets.add(new ArrayList<>());
                room.add(reach);
            }
            sheets.get(sheet).add(row);
            room.set(sheet, room.get(sheet) - depth);
        }
        return sheets.stream().map(sheet -> Slice.row(rowsAcross, sheet)).toList();
    }

    private Slice nextRow() {
        Comparator<Blank> deepest = Comparator.comparingLong(part -> depth(part, turn(part)));
        left.sort(deepest.thenComparingDouble(part -> OffcutRule.area(part.length(), part.width()))
                .reversed()
                .thenComparingInt(Blank::kind));
        Blank first = left.remove(0);
        boolean turned = turn(first);
        best = List.of();
        bestArea = -1;
        looks = 0;
        fill(0, depth(first, turned), run - extent(first, turned), new ArrayList<>(), 0);
        List<Slice> row = new ArrayList<>(best);
        row.forEach(slice -> left.remove(slice.blank));
        row.add(Slice.part(first, turned));
        return Slice.row(!rowsAcross, row);
    }

    private void fill(int from, long depth, long room, List<Slice> chosen, double area) {
        if (area > bestArea) {
            bestArea = area;
            best = List.copyOf(chosen);
        }
        for (int i = from; i < left.size() && looks < SETS; i++) {
            Blank part = left.get(i);
            for (int turn = 0; turn < 2; turn++) {
                boolean turned = turn == 1;
                if (part.allows(turned) && depth(part, turned) <= depth && extent(part, turned) <= room) {
                    looks++;
                    chosen.add(Slice.part(part, turned));
                    fill(
                            i + 1,
                            depth,
                            room - extent(part, turned),
                            chosen,
                            area + OffcutRule.area(part.length(), part.width()));
                    chosen.remove(chosen.size() - 1);
                }
            }
        }
    }

    private boolean turn(Blank part) {
        if (!part.upright() || !part.turned()) {
            return part.turned();
        }
        return flat == depth(part, true) < depth(part, false);
    }

    private long depth(Blank part, boolean turned) {
        return rowsAcross ? part.alongSheet(turned) : part.acrossSheet(turned);
    }

    private long extent(Blank part, boolean turned) {
        return rowsAcross ? part.acrossSheet(turned) : part.alongSheet(turned);
    }
}
