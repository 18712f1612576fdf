package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;

/**
 * Lays rectangles out on sheets of one size, cut edge to edge: fewest sheets first, then the largest offcut worth
 * keeping, then the fewest distances to set the saw to. Neighbours are a kerf apart; a part may end at the usable edge.
 *
 * <p>The layout is a good one, not always the best; the bound says whether fewer sheets are ruled out. The same question
 * has the same answer everywhere: effort is counted in steps, never in time.
 */
public final class SheetCutting {
    /** How many parts are laid out in one go; beyond it the search would no longer be quick. */
    private static final int MOST_PARTS = 2_000;

    private SheetCutting() {}

    /** The sheets with what is cut from each, and how few would do. */
    public record Result(List<SheetLayout> layouts, StockBound bound) {
        public Result {
            layouts = List.copyOf(layouts);
        }
    }

    /**
     * Lays out all pieces.
     *
     * @param pieces what to cut
     * @param sheet what it is cut from
     * @throws PieceTooLargeException if a piece fits the trimmed sheet in none of the ways it may lie
     * @throws SheetsShortException if more sheets are needed than there are
     * @throws IllegalArgumentException if a size or count is not positive, a trim or kerf is negative, trimming leaves
     *     nothing, or there are more than 2,000 parts
     */
    public static Result cut(List<SheetPiece> pieces, SheetSize sheet) {
        check(sheet);
        List<Blank> parts = parts(pieces, sheet);
        long kerf = sheet.kerf().nanometres();
        SheetBound.Least least = new SheetBound(
                        parts,
                        sheet.usableLength().nanometres() + kerf,
                        sheet.usableWidth().nanometres() + kerf)
                .least();
        List<SheetLayout> layouts = parts.isEmpty()
                ? List.of()
                : new SheetSearch(parts, sheet, least.sheets())
                        .run().stream().map(Sawing::layout).toList();
        int bought = layouts.size();
        if (bought > sheet.available()) {
            throw new SheetsShortException(sheet, bought, least.sheets());
        }
        boolean proven = bought == least.sheets();
        String because = proven ? least.because() : "%d is not ruled out.".formatted(bought - 1);
        return new Result(layouts, new StockBound(sheet.stock(), bought, least.sheets(), proven, because));
    }

    private static void check(SheetSize sheet) {
        if (sheet.trim().isNegative()
                || sheet.kerf().isNegative()
                || !sheet.usableLength().isPositive()
                || !sheet.usableWidth().isPositive()) {
            throw new IllegalArgumentException("%s of %s x %s, trim %s, kerf %s: nothing is left to cut."
                    .formatted(sheet.stock(), sheet.length(), sheet.width(), sheet.trim(), sheet.kerf()));
        }
    }

    private static List<Blank> parts(List<SheetPiece> pieces, SheetSize sheet) {
        List<Blank> parts = new ArrayList<>();
        for (int kind = 0; kind < pieces.size(); kind++) {
            SheetPiece piece = pieces.get(kind);
            if (!piece.length().isPositive() || !piece.width().isPositive() || piece.count() < 1) {
                throw new IllegalArgumentException("%s: %d of %s x %s cannot be cut."
                        .formatted(piece.part(), piece.count(), piece.length(), piece.width()));
            }
            if (piece.count() > MOST_PARTS - parts.size()) {
                throw new IllegalArgumentException("%s: more than %d parts are not laid out. Fewer of “%s” would be."
                        .formatted(sheet.stock(), MOST_PARTS, piece.part()));
            }
            Blank blank = blank(kind, piece, sheet);
            for (int n = 0; n < piece.count(); n++) {
                parts.add(blank);
            }
        }
        return parts;
    }

    private static Blank blank(int kind, SheetPiece piece, SheetSize sheet) {
        boolean upright = fits(piece.length(), piece.width(), sheet);
        boolean turned = piece.mayTurn()
                && fits(piece.width(), piece.length(), sheet)
                && !(upright && piece.length().equals(piece.width()));
        if (!upright && !turned) {
            throw PieceTooLargeException.of(piece, sheet);
        }
        long kerf = sheet.kerf().nanometres();
        return new Blank(
                kind,
                piece.part(),
                piece.length().nanometres() + kerf,
                piece.width().nanometres() + kerf,
                upright,
                turned);
    }

    private static boolean fits(Length along, Length across, SheetSize sheet) {
        return !along.isLongerThan(sheet.usableLength()) && !across.isLongerThan(sheet.usableWidth());
    }
}
