package org.kerfleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.kerfleaf.measure.Length;

/** What every layout of a cut list must hold to. */
final class SheetChecks {
    private SheetChecks() {}

    static void check(SheetCutting.Result result, List<SheetPiece> pieces, String shown) {
        assertThat(result.bound().bought()).as(shown).isEqualTo(result.layouts().size());
        assertThat(result.bound().fewest())
                .as(shown)
                .isLessThanOrEqualTo(result.bound().bought());
        assertThat(result.bound().proven())
                .as(shown)
                .isEqualTo(result.bound().fewest() == result.bound().bought());
        nothingLost(result, pieces, shown);
        for (SheetLayout layout : result.layouts()) {
            insideTheTrim(layout, shown);
            aKerfApart(layout, shown);
            SheetReplay.check(layout, shown);
        }
    }

    private static void nothingLost(SheetCutting.Result result, List<SheetPiece> pieces, String shown) {
        List<String> wanted = new ArrayList<>();
        for (SheetPiece piece : pieces) {
            wanted.addAll(Collections.nCopies(
                    piece.count(), "%s %s x %s".formatted(piece.part(), piece.length(), piece.width())));
        }
        List<String> cut = new ArrayList<>();
        for (SheetLayout layout : result.layouts()) {
            for (SheetPlacement placement : layout.placements()) {
                Length length = placement.turned() ? placement.width() : placement.length();
                Length width = placement.turned() ? placement.length() : placement.width();
                cut.add("%s %s x %s".formatted(placement.part(), length, width));
                assertThat(placement.turned()
                                && pieces.stream()
                                        .noneMatch(piece -> piece.part().equals(placement.part()) && piece.mayTurn()))
                        .as("%s: %s lies against its grain", shown, placement)
                        .isFalse();
            }
        }
        assertThat(cut).as(shown).containsExactlyInAnyOrderElementsOf(wanted);
    }

    private static void insideTheTrim(SheetLayout layout, String shown) {
        SheetSize sheet = layout.sheet();
        for (SheetPlacement part : layout.placements()) {
            assertThat(part.x()).as(shown).isGreaterThanOrEqualTo(sheet.trim());
            assertThat(part.y()).as(shown).isGreaterThanOrEqualTo(sheet.trim());
            assertThat(part.x().plus(part.length()))
                    .as(shown)
                    .isLessThanOrEqualTo(sheet.length().minus(sheet.trim()));
            assertThat(part.y().plus(part.width()))
                    .as(shown)
                    .isLessThanOrEqualTo(sheet.width().minus(sheet.trim()));
        }
    }

    private static void aKerfApart(SheetLayout layout, String shown) {
        List<SheetPlacement> parts = layout.placements();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                assertThat(apart(parts.get(i), parts.get(j), layout.sheet().kerf()))
                        .as("%s: %s and %s", shown, parts.get(i), parts.get(j))
                        .isTrue();
            }
        }
    }

    private static boolean apart(SheetPlacement one, SheetPlacement other, Length kerf) {
        return gap(one.x(), one.length(), other.x(), other.length(), kerf)
                || gap(one.y(), one.width(), other.y(), other.width(), kerf);
    }

    private static boolean gap(Length one, Length oneSize, Length other, Length otherSize, Length kerf) {
        return !one.plus(oneSize, kerf).isLongerThan(other)
                || !other.plus(otherSize, kerf).isLongerThan(one);
    }
}
