package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.List;

/**
 * The fewest sheets a handful of pieces can be cut from edge to edge, by looking at every way. For every set of pieces it
 * keeps the smallest rectangles that can be divided into them; a set comes from one sheet if one of these fits. Written
 * apart from the code it checks; for up to six pieces.
 */
final class EveryGuillotine {
    private record Box(long length, long width) {
        boolean fitsInto(long otherLength, long otherWidth) {
            return length <= otherLength && width <= otherWidth;
        }
    }

    private final List<List<Box>> smallest = new ArrayList<>();
    private final SheetSize sheet;
    private final int sets;

    EveryGuillotine(List<SheetPiece> pieces, SheetSize sheet) {
        this.sheet = sheet;
        List<SheetPiece> each = new ArrayList<>();
        for (SheetPiece piece : pieces) {
            for (int i = 0; i < piece.count(); i++) {
                each.add(piece);
            }
        }
        sets = 1 << each.size();
        smallest.add(List.of());
        for (int set = 1; set < sets; set++) {
            smallest.add(
                    Integer.bitCount(set) == 1 ? single(each.get(Integer.numberOfTrailingZeros(set))) : joined(set));
        }
    }

    int fewestSheets() {
        int[] fewest = new int[sets];
        for (int set = 1; set < sets; set++) {
            fewest[set] = Integer.MAX_VALUE;
            for (int part = set; part > 0; part = (part - 1) & set) {
                if (fitsOne(part) && fewest[set ^ part] != Integer.MAX_VALUE) {
                    fewest[set] = Math.min(fewest[set], fewest[set ^ part] + 1);
                }
            }
        }
        return fewest[sets - 1];
    }

    private boolean fitsOne(int set) {
        return smallest.get(set).stream()
                .anyMatch(box -> box.fitsInto(
                        sheet.usableLength().nanometres(), sheet.usableWidth().nanometres()));
    }

    private static List<Box> single(SheetPiece piece) {
        List<Box> boxes = new ArrayList<>();
        keep(boxes, new Box(piece.length().nanometres(), piece.width().nanometres()));
        if (piece.mayTurn()) {
            keep(boxes, new Box(piece.width().nanometres(), piece.length().nanometres()));
        }
        return boxes;
    }

    private List<Box> joined(int set) {
        long kerf = sheet.kerf().nanometres();
        List<Box> boxes = new ArrayList<>();
        for (int part = (set - 1) & set; part > 0; part = (part - 1) & set) {
            for (Box one : smallest.get(part)) {
                for (Box other : smallest.get(set ^ part)) {
                    keep(boxes, new Box(one.length + kerf + other.length, Math.max(one.width, other.width)));
                    keep(boxes, new Box(Math.max(one.length, other.length), one.width + kerf + other.width));
                }
            }
        }
        return boxes;
    }

    private static void keep(List<Box> boxes, Box box) {
        if (boxes.stream().noneMatch(known -> known.fitsInto(box.length, box.width))) {
            boxes.removeIf(known -> box.fitsInto(known.length, known.width));
            boxes.add(box);
        }
    }
}
