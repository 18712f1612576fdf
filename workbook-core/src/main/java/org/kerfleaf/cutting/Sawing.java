package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;
import org.kerfleaf.measure.Length;

/**
 * Cuts one sheet into the parts of a slice and keeps the order. The largest piece in hand is divided first, by all its
 * parallel cuts one after the other, so that the work soon becomes manageable and one setting is used up.
 *
 * <p>A part that ends at the usable edge needs no cut there. A waste strip as thin as the kerf or thinner is sawn away
 * whole: the cut is made, since the part must come out to size, and leaves no offcut.
 */
final class Sawing {
    /** How the sheet is opened. */
    enum FirstCut {
        AS_THE_ROW_RUNS,
        SIDE_FIRST,
        END_FIRST
    }

    private record Task(Slice slice, long x, long y, long length, long width, int number) {
        double area() {
            return OffcutRule.area(length, width);
        }
    }

    private record Cut(
            boolean across, long at, long from, long to, long set, Slice frees, Slice alsoFrees, boolean andOffcut) {}

    private record Placed(Blank blank, boolean turned, long x, long y) {}

    private record Rest(long x, long y, long length, long width) {
        double area() {
            return OffcutRule.area(length, width);
        }

        boolean keep() {
            return OffcutRule.keepsSheet(length, width);
        }
    }

    private final SheetSize sheet;
    private final long kerf;
    private final PriorityQueue<Task> inHand = new PriorityQueue<>(
            Comparator.comparingDouble(Task::area).reversed().thenComparingInt(Task::number));
    private final List<Cut> cuts = new ArrayList<>();
    private final List<Placed> placed = new ArrayList<>();
    private final List<Rest> rests = new ArrayList<>();
    private int tasks;

    private Sawing(SheetSize sheet) {
        this.sheet = sheet;
        this.kerf = sheet.kerf().nanometres();
    }

    /** Lengths and widths of slices and pieces in hand carry a kerf beyond their far edges. */
    static Sawing of(Slice slice, SheetSize sheet, FirstCut first) {
        Sawing sawing = new Sawing(sheet);
        long length = sheet.usableLength().nanometres() + sawing.kerf;
        long width = sheet.usableWidth().nanometres() + sawing.kerf;
        Task whole = new Task(slice, 0, 0, length, width, 0);
        switch (first) {
            case AS_THE_ROW_RUNS -> sawing.open(whole);
            case SIDE_FIRST -> sawing.divide(whole, false, List.of(slice));
            case END_FIRST -> sawing.divide(whole, true, List.of(slice));
        }
        while (!sawing.inHand.isEmpty()) {
            sawing.open(sawing.inHand.remove());
        }
        return sawing;
    }

    private void open(Task task) {
        Slice slice = task.slice();
        boolean longer = task.length() > slice.length;
        boolean wider = task.width() > slice.width;
        if (slice.blank != null) {
            if (longer || wider) {
                divide(task, longer, List.of(slice));
            } else {
                placed.add(new Placed(slice.blank, slice.turned, task.x(), task.y()));
            }
            return;
        }
        List<Slice> groups = slice.grouped(slice.across ? task.width() : task.length());
        if (groups.size() > 1) {
            divide(task, slice.across, groups);
        } else {
            // All end on one line: cut the row to its length first, then along that line.
            boolean endLeft = slice.across ? longer : wider;
            divide(task, endLeft == slice.across, List.of(slice));
        }
    }

    /** Cuts the slices off one after the other; the rest is the offcut. */
    private void divide(Task task, boolean across, List<Slice> slices) {
        long at = across ? task.x() : task.y();
        long end = at + (across ? task.length() : task.width());
        long from = across ? task.y() : task.x();
        long to = from + (across ? task.width() : task.length()) - kerf;
        for (int i = 0; i < slices.size(); i++) {
            Slice slice = slices.get(i);
            long depth = across ? slice.length : slice.width;
            long rest = end - at - depth;
            if (rest > 0) {
                boolean last = i == slices.size() - 1;
                boolean lastCut = last || i == slices.size() - 2 && rest == depth(slices.get(i + 1), across);
                boolean leavesOffcut = last && keeps(across, rest - kerf, to - from);
                Slice alsoFrees = lastCut && !last ? slices.get(i + 1) : null;
                cuts.add(new Cut(across, at + depth - kerf, from, to, depth - kerf, slice, alsoFrees, leavesOffcut));
            }
            inHand.add(piece(task, slice, across, at, depth));
            at += depth;
        }
        if (end - at > kerf) {
            rests.add(
                    across
                            ? new Rest(at, from, end - at - kerf, to - from)
                            : new Rest(from, at, to - from, end - at - kerf));
        }
    }

    private static long depth(Slice slice, boolean across) {
        return across ? slice.length : slice.width;
    }

    private static boolean keeps(boolean across, long rest, long run) {
        return rest > 0 && (across ? OffcutRule.keepsSheet(rest, run) : OffcutRule.keepsSheet(run, rest));
    }

    private Task piece(Task task, Slice slice, boolean across, long at, long depth) {
        tasks++;
        return across
                ? new Task(slice, at, task.y(), depth, task.width(), tasks)
                : new Task(slice, task.x(), at, task.length(), depth, tasks);
    }

    /** The area of the largest offcut worth keeping, in square nanometres, 0 if there is none. */
    double largestOffcut() {
        return rests.stream().filter(Rest::keep).mapToDouble(Rest::area).max().orElse(0);
    }

    int cuts() {
        return cuts.size();
    }

    /** Adds the distances the saw is set to. */
    void settings(Set<Long> into) {
        cuts.forEach(cut -> into.add(cut.set()));
    }

    SheetLayout layout() {
        Length trim = sheet.trim();
        List<SheetPlacement> placements = placed.stream()
                .map(part -> new SheetPlacement(
                        part.blank().part(),
                        trim.plus(new Length(part.x())),
                        trim.plus(new Length(part.y())),
                        new Length(part.blank().alongSheet(part.turned()) - kerf),
                        new Length(part.blank().acrossSheet(part.turned()) - kerf),
                        part.turned()))
                .sorted(Comparator.comparing(SheetPlacement::x).thenComparing(SheetPlacement::y))
                .toList();
        List<SheetCut> numbered = new ArrayList<>();
        for (Cut cut : cuts) {
            numbered.add(new SheetCut(
                    numbered.size() + 1,
                    cut.across(),
                    trim.plus(new Length(cut.at())),
                    trim.plus(new Length(cut.from())),
                    trim.plus(new Length(cut.to())),
                    new Length(cut.set()),
                    words(cut)));
        }
        List<Offcut> offcuts = rests.stream()
                .sorted(Comparator.comparingDouble(Rest::area)
                        .reversed()
                        .thenComparingLong(Rest::x)
                        .thenComparingLong(Rest::y))
                .map(rest -> new Offcut(
                        trim.plus(new Length(rest.x())),
                        trim.plus(new Length(rest.y())),
                        new Length(rest.length()),
                        new Length(rest.width()),
                        rest.keep()))
                .toList();
        return new SheetLayout(sheet, placements, numbered, offcuts);
    }

    /** {@code Floor}, {@code Door, Floor and 2 of Side}, {@code Shelf and the offcut}. */
    private static String words(Cut cut) {
        List<String> names = new ArrayList<>();
        cut.frees().names(names);
        if (cut.alsoFrees() != null) {
            cut.alsoFrees().names(names);
        }
        List<String> words = PartNames.counted(names);
        if (cut.andOffcut()) {
            words.add("the offcut");
        }
        return PartNames.list(words);
    }
}
