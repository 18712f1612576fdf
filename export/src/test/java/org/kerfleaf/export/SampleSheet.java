package org.kerfleaf.export;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.cutting.Offcut;
import org.kerfleaf.cutting.SheetCut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.cutting.SheetPlacement;
import org.kerfleaf.cutting.SheetSize;
import org.kerfleaf.measure.Length;

/** A sheet laid out by hand in rows from left to right: each row is cut off across, then its pieces apart, then to length. */
public final class SampleSheet {
    private final SheetSize sheet;
    private final List<SheetPlacement> placements = new ArrayList<>();
    private final List<SheetCut> cuts = new ArrayList<>();
    private final List<Offcut> offcuts = new ArrayList<>();
    private Length x;

    public SampleSheet(SheetSize sheet) {
        this.sheet = sheet;
        x = sheet.trim();
    }

    /** One piece of a row: its part, how far it runs along the sheet, how far across. */
    public record Piece(String part, Length length, Length width, boolean turned) {}

    /** Adds a row as long as its longest piece. */
    public SampleSheet row(Piece... pieces) {
        Length length = Length.ZERO;
        for (Piece piece : pieces) {
            length = length.max(piece.length());
        }
        Length end = x.plus(length);
        Length low = sheet.trim();
        Length high = sheet.width().minus(sheet.trim());
        cut(true, end, low, high, length, "a strip " + names(pieces));
        Length y = low;
        for (Piece piece : pieces) {
            Length top = y.plus(piece.width());
            placements.add(new SheetPlacement(piece.part(), x, y, piece.length(), piece.width(), piece.turned()));
            cut(false, top, x, end, piece.width(), piece.part());
            if (piece.length().isShorterThan(length)) {
                Length at = x.plus(piece.length());
                cut(true, at, y, top, piece.length(), piece.part() + " to length");
                Length from = at.plus(sheet.kerf());
                offcut(from, y, end.minus(from), piece.width());
            }
            y = top.plus(sheet.kerf());
        }
        offcut(x, y, length, high.minus(y));
        x = end.plus(sheet.kerf());
        return this;
    }

    public SheetLayout laidOut() {
        offcut(x, sheet.trim(), sheet.length().minus(sheet.trim(), x), sheet.usableWidth());
        return new SheetLayout(sheet, placements, cuts, offcuts);
    }

    private static String names(Piece... pieces) {
        List<String> names = new ArrayList<>();
        for (Piece piece : pieces) {
            if (!names.contains(piece.part())) {
                names.add(piece.part());
            }
        }
        return "for " + String.join(" and ", names);
    }

    private void cut(boolean across, Length at, Length from, Length to, Length set, String frees) {
        cuts.add(new SheetCut(cuts.size() + 1, across, at, from, to, set, frees));
    }

    private void offcut(Length left, Length bottom, Length length, Length width) {
        if (length.isPositive() && width.isPositive()) {
            boolean keep =
                    length.min(width).inInches() >= 5 && length.max(width).inInches() >= 10;
            offcuts.add(new Offcut(left, bottom, length, width, keep));
        }
    }
}
