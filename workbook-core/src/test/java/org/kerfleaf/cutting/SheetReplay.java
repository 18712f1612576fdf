package org.kerfleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.measure.Length;

/**
 * Follows a layout's cuts as somebody at the saw would: knows only the sheet and the list of cuts, and says what lies on
 * the floor in the end. Written apart from the code it checks.
 */
final class SheetReplay {
    private record Rectangle(Length x, Length y, Length length, Length width) {}

    private SheetReplay() {}

    /** Asserts that the cuts give exactly the parts and the offcuts of the layout, and that each cut can be made. */
    static void check(SheetLayout layout, String shown) {
        SheetSize sheet = layout.sheet();
        List<Rectangle> inHand = new ArrayList<>();
        inHand.add(new Rectangle(sheet.trim(), sheet.trim(), sheet.usableLength(), sheet.usableWidth()));
        int number = 1;
        for (SheetCut cut : layout.cuts()) {
            assertThat(cut.number()).as(shown).isEqualTo(number++);
            List<Rectangle> reached =
                    inHand.stream().filter(piece -> runsThrough(cut, piece)).toList();
            assertThat(reached).as("%s: pieces under cut %s", shown, cut).hasSize(1);
            Rectangle piece = reached.get(0);
            inHand.remove(piece);
            Length start = cut.across() ? piece.x() : piece.y();
            assertThat(cut.set())
                    .as("%s: set of cut %s", shown, cut)
                    .isEqualTo(cut.at().minus(start));
            inHand.addAll(divided(piece, cut, sheet.kerf()));
        }
        List<Rectangle> expected = new ArrayList<>();
        layout.placements()
                .forEach(part -> expected.add(new Rectangle(part.x(), part.y(), part.length(), part.width())));
        layout.offcuts().forEach(rest -> expected.add(new Rectangle(rest.x(), rest.y(), rest.length(), rest.width())));
        assertThat(inHand).as("%s: what the cuts give", shown).containsExactlyInAnyOrderElementsOf(expected);
    }

    /** From edge to edge of the piece, and somewhere inside it. */
    private static boolean runsThrough(SheetCut cut, Rectangle piece) {
        Length start = cut.across() ? piece.x() : piece.y();
        Length end = start.plus(cut.across() ? piece.length() : piece.width());
        Length from = cut.across() ? piece.y() : piece.x();
        Length to = from.plus(cut.across() ? piece.width() : piece.length());
        return cut.from().equals(from)
                && cut.to().equals(to)
                && cut.at().isLongerThan(start)
                && cut.at().isShorterThan(end);
    }

    /** The kerf lies beyond the line and turns to dust; it may run out over the far edge. */
    private static List<Rectangle> divided(Rectangle piece, SheetCut cut, Length kerf) {
        List<Rectangle> two = new ArrayList<>();
        Length beyond = cut.at().plus(kerf);
        if (cut.across()) {
            Length end = piece.x().plus(piece.length());
            two.add(new Rectangle(piece.x(), piece.y(), cut.at().minus(piece.x()), piece.width()));
            if (beyond.isShorterThan(end)) {
                two.add(new Rectangle(beyond, piece.y(), end.minus(beyond), piece.width()));
            }
        } else {
            Length end = piece.y().plus(piece.width());
            two.add(new Rectangle(piece.x(), piece.y(), piece.length(), cut.at().minus(piece.y())));
            if (beyond.isShorterThan(end)) {
                two.add(new Rectangle(piece.x(), beyond, piece.length(), end.minus(beyond)));
            }
        }
        return two;
    }
}
