package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A rectangle as the saw divides it: one part, or slices side by side. It is as small as its parts allow; what is left
 * beside it is decided only when it is cut from something larger.
 */
final class Slice {
    /** Tall neighbours first, so that parts that end on one line can be cut along it together. */
    private static final Comparator<Slice> BY_WIDTH = Comparator.comparingLong((Slice slice) -> slice.width)
            .thenComparingLong(slice -> slice.length)
            .reversed()
            .thenComparingInt(slice -> slice.firstKind);

    private static final Comparator<Slice> BY_LENGTH = Comparator.comparingLong((Slice slice) -> slice.length)
            .thenComparingLong(slice -> slice.width)
            .reversed()
            .thenComparingInt(slice -> slice.firstKind);

    /** The part, or null for a row of slices. */
    final Blank blank;

    final boolean turned;

    /** True if the slices of a row follow one another along the sheet, so that cuts across part them. */
    final boolean across;

    final List<Slice> row;
    final long length;
    final long width;
    private final int firstKind;

    private Slice(Blank blank, boolean turned) {
        this.blank = blank;
        this.turned = turned;
        this.across = false;
        this.row = List.of();
        this.length = blank.alongSheet(turned);
        this.width = blank.acrossSheet(turned);
        this.firstKind = blank.kind();
    }

    private Slice(boolean across, List<Slice> row) {
        this.blank = null;
        this.turned = false;
        this.across = across;
        this.row = row;
        long sumLength = 0;
        long sumWidth = 0;
        long maxLength = 0;
        long maxWidth = 0;
        for (Slice slice : row) {
            sumLength += slice.length;
            sumWidth += slice.width;
            maxLength = Math.max(maxLength, slice.length);
            maxWidth = Math.max(maxWidth, slice.width);
        }
        this.length = across ? sumLength : maxLength;
        this.width = across ? maxWidth : sumWidth;
        this.firstKind = row.get(0).firstKind;
    }

    static Slice part(Blank blank, boolean turned) {
        return new Slice(blank, turned);
    }

    /** Slices side by side; rows in the same direction become one row, a row of one is that one. */
    static Slice row(boolean across, List<Slice> slices) {
        List<Slice> flat = new ArrayList<>();
        for (Slice slice : slices) {
            if (slice.blank == null && slice.across == across) {
                flat.addAll(slice.row);
            } else {
                flat.add(slice);
            }
        }
        if (flat.size() == 1) {
            return flat.get(0);
        }
        flat.sort(across ? BY_WIDTH : BY_LENGTH);
        return new Slice(across, List.copyOf(flat));
    }

    /**
     * Neighbours that end on one line short of the piece in hand, put together, so that one cut frees them from the rest.
     *
     * @param inHand how far the piece in hand reaches across the row
     */
    List<Slice> grouped(long inHand) {
        List<Slice> groups = new ArrayList<>();
        int from = 0;
        while (from < row.size()) {
            int to = from + 1;
            while (to < row.size() && depth(row.get(from)) < inHand && depth(row.get(to)) == depth(row.get(from))) {
                to++;
            }
            groups.add(to - from == 1 ? row.get(from) : new Slice(across, row.subList(from, to)));
            from = to;
        }
        return groups;
    }

    private long depth(Slice slice) {
        return across ? slice.width : slice.length;
    }

    /** The area of its parts, kerfs included. */
    double partsArea() {
        return blank != null
                ? OffcutRule.area(length, width)
                : row.stream().mapToDouble(Slice::partsArea).sum();
    }

    /** Adds the parts' names, in the order of cutting. */
    void names(List<String> into) {
        if (blank != null) {
            into.add(blank.part());
        }
        row.forEach(slice -> slice.names(into));
    }
}
