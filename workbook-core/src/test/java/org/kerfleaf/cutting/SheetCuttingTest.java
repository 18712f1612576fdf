package org.kerfleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.kerfleaf.cutting.Lengths.in;
import static org.kerfleaf.cutting.Lengths.mm;
import static org.kerfleaf.cutting.Lengths.units;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

class SheetCuttingTest {
    private static final Length EIGHTH = in(0.125);
    private static final SheetSize UNTRIMMED = sheet(in(96), in(48), Length.ZERO, EIGHTH);
    private static final SheetSize TRIMMED = sheet(in(96), in(48), in(0.25), EIGHTH);
    private static final StockBound ONE_IS_ENOUGH =
            new StockBound("sheet", 1, 1, true, "Fewer is impossible: there is something to cut.");

    // Source: the first workbook's figures, worked by hand.
    private static final List<SheetPiece> CABINET = List.of(
            fixed("Back", in(30.76582), in(23.4375), 1),
            fixed("Front", in(30.76582), in(23.4375), 1),
            fixed("Side", in(24.41497), in(11), 2),
            fixed("Roof", in(16.4375), in(15.94662), 2),
            fixed("Door", in(20), in(18), 1),
            fixed("Floor", in(22), in(11), 1),
            fixed("Shelf", in(22), in(8), 2));

    @Test
    void cut_cabinet_comesOutOfOneSheet() {
        SheetCutting.Result result = cut(CABINET, TRIMMED);
        assertThat(result.bound()).isEqualTo(ONE_IS_ENOUGH);
    }

    // Source of this group: facts 11.3, geometry.

    @Test
    void cut_footSquares_threeBySevenToASheet() {
        assertThat(cut(List.of(fixed("Tile", in(12), in(12), 21)), UNTRIMMED).bound())
                .isEqualTo(ONE_IS_ENOUGH);
        assertThat(cut(List.of(fixed("Tile", in(12), in(12), 22)), UNTRIMMED)
                        .bound()
                        .bought())
                .isEqualTo(2);
    }

    @Test
    void cut_squaresAKerfSmaller_fourByEightToASheetWithNothingLeft() {
        assertThat(cut(List.of(fixed("Tile", in(11.875), in(11.875), 32)), UNTRIMMED)
                        .layouts())
                .singleElement()
                .satisfies(layout -> assertThat(layout.offcuts()).isEmpty());
        assertThat(cut(List.of(fixed("Tile", in(11.875), in(11.875), 33)), UNTRIMMED)
                        .bound()
                        .bought())
                .isEqualTo(2);
    }

    @Test
    void cut_footSquaresWithoutAKerf_fillTheSheet() {
        SheetSize noKerf = sheet(in(96), in(48), Length.ZERO, Length.ZERO);
        assertThat(cut(List.of(fixed("Tile", in(12), in(12), 32)), noKerf).bound())
                .isEqualTo(ONE_IS_ENOUGH);
    }

    // Source of this group: job scenario A, worked by hand.

    @Test
    void cut_coldFrameNestedInRowsAcross_leavesTheOffcutOfTheRows() {
        SheetCutting.Result result = cut(
                List.of(
                        fixed("Front", in(12.1917), in(47), 1),
                        fixed("Back", in(20), in(47), 1),
                        fixed("Pair of sides", in(32.1294), in(28.5625), 1)),
                UNTRIMMED);
        assertThat(result.bound()).isEqualTo(ONE_IS_ENOUGH);
        Offcut offcut = largest(result);
        assertThat(offcut.length()).isEqualTo(in(96 - 64.3211 - 3 * 0.125));
        assertThat(offcut.length().inInches()).isCloseTo(31.304, within(0.0005));
        assertThat(offcut.width()).isEqualTo(in(48));
        assertThat(offcut.keep()).isTrue();
    }

    @Test
    void cut_coldFrameInRowsAcross_leavesTheOffcutOfTheRows() {
        SheetCutting.Result result = cut(
                List.of(
                        fixed("Front", in(12.1917), in(47), 1),
                        fixed("Back", in(20), in(47), 1),
                        fixed("Side", in(19.8083), in(28.5625), 2)),
                UNTRIMMED);
        assertThat(largest(result).length().inInches()).isCloseTo(23.692, within(0.0005));
        assertThat(largest(result).width()).isEqualTo(in(48));
    }

    @Test
    void cut_coldFrameFreeToTurn_leavesMoreThanTheRowsDo() {
        SheetPiece front = free("Front", in(47), in(12.1917));
        SheetPiece back = free("Back", in(47), in(20));
        SheetCutting.Result nested =
                cut(List.of(front, back, free("Pair of sides", in(32.1294), in(28.5625))), UNTRIMMED);
        assertThat(nested.bound()).isEqualTo(ONE_IS_ENOUGH);
        assertThat(area(largest(nested))).isGreaterThan(31.304 * 48);
        SheetCutting.Result apart =
                cut(List.of(front, back, new SheetPiece("Side", in(28.5625), in(19.8083), 2, true)), UNTRIMMED);
        assertThat(apart.bound()).isEqualTo(ONE_IS_ENOUGH);
        // Back across, sides beside it, the front turned in the corner: above it 48 - 12.1917 - 1/8 by 47 is left.
        assertThat(largest(apart).length()).isEqualTo(in(47));
        assertThat(largest(apart).width()).isEqualTo(in(48 - 12.1917 - 0.125));
    }

    // Source of this group: job scenario B, worked by hand.

    @Test
    void cut_planterStrips_fivePlantersComeOutOfOneSheet() {
        SheetSize sheet = sheet(mm(2440), mm(1220), Length.ZERO, mm(3));
        List<SheetPiece> five = List.of(
                fixed("Strip", mm(2440), Length.ofMillimetres(315.406), 3),
                fixed("Floor", Length.ofMillimetres(283.700), Length.ofMillimetres(245.691), 5));
        assertThat(cut(five, sheet).bound().bought()).isEqualTo(1);
        List<SheetPiece> six = List.of(
                fixed("Strip", mm(2440), Length.ofMillimetres(315.406), 4),
                fixed("Floor", Length.ofMillimetres(283.700), Length.ofMillimetres(245.691), 6));
        assertThat(cut(six, sheet).bound().bought()).isEqualTo(2);
    }

    @Test
    void cut_onePartInTheMiddleOfNowhere_isTwoCutsAndTwoOffcuts() {
        SheetCutting.Result result = cut(List.of(fixed("Door", in(20), in(18), 1)), TRIMMED);
        SheetLayout layout = result.layouts().get(0);
        assertThat(layout.placements())
                .containsExactly(new SheetPlacement("Door", in(0.25), in(0.25), in(20), in(18), false));
        assertThat(layout.cuts())
                .containsExactly(
                        new SheetCut(1, true, in(20.25), in(0.25), in(47.75), in(20), "Door and the offcut"),
                        new SheetCut(2, false, in(18.25), in(0.25), in(20.25), in(18), "Door and the offcut"));
        assertThat(layout.offcuts())
                .containsExactly(
                        new Offcut(in(20.375), in(0.25), in(75.375), in(47.5), true),
                        new Offcut(in(0.25), in(18.375), in(20), in(29.375), true));
    }

    @Test
    void cut_partAsLargeAsTheSheet_needsNoCut() {
        SheetLayout layout = cut(List.of(fixed("Top", in(95.5), in(47.5), 1)), TRIMMED)
                .layouts()
                .get(0);
        assertThat(layout.cuts()).isEmpty();
        assertThat(layout.offcuts()).isEmpty();
    }

    @Test
    void cut_wasteThinnerThanTheKerf_isSawnAwayAndLeavesNoOffcut() {
        SheetLayout layout = cut(List.of(fixed("Top", in(95.5), in(47.4375), 1)), TRIMMED)
                .layouts()
                .get(0);
        assertThat(layout.cuts())
                .containsExactly(new SheetCut(1, false, in(47.6875), in(0.25), in(95.75), in(47.4375), "Top"));
        assertThat(layout.offcuts()).isEmpty();
    }

    @Test
    void cut_partsOfOneWidth_areRippedAtOneSetting() {
        SheetLayout layout = cut(List.of(fixed("Shelf", in(40), in(10), 4)), UNTRIMMED)
                .layouts()
                .get(0);
        assertThat(layout.cuts()).extracting(SheetCut::set).containsExactly(in(40), in(10), in(10), in(10), in(10));
        assertThat(layout.cuts())
                .extracting(SheetCut::frees)
                .containsExactly("4 of Shelf and the offcut", "Shelf", "Shelf", "Shelf", "Shelf and the offcut");
    }

    @Test
    void cut_narrowStrip_isNotWorthKeeping() {
        // 3 in left beside the part: under 100 mm.
        SheetLayout layout = cut(List.of(fixed("Top", in(95.5), in(44.375), 1)), TRIMMED)
                .layouts()
                .get(0);
        assertThat(layout.offcuts()).singleElement().satisfies(rest -> {
            assertThat(rest.width()).isEqualTo(in(3));
            assertThat(rest.keep()).isFalse();
        });
    }

    @Test
    void cut_fourLargeParts_noTwoShareASheet() {
        // Source: Martello and Vigo 1998; facts 11.6, first row.
        SheetSize square = sheet(units(10), units(10), Length.ZERO, Length.ZERO);
        assertThat(cut(List.of(fixed("Panel", units(6), units(6), 4)), square).bound())
                .isEqualTo(new StockBound(
                        "sheet", 4, 4, true, "Fewer is impossible: no two of these fit on one sheet: 4 of Panel."));
    }

    @Test
    void cut_partLargerThanTheSheet_saysBothSizes() {
        SheetSize half = sheet(in(48), in(48), in(0.25), EIGHTH);
        assertThatThrownBy(() -> cut(List.of(fixed("Door", in(49.25), in(18), 1)), half))
                .isInstanceOfSatisfying(PieceTooLargeException.class, too -> {
                    assertThat(too.in(MeasureStyle.INCHES))
                            .isEqualTo("Door is 49 1/4 in long, longer than the sheet (47 1/2 in after trimming).");
                    assertThat(too.part()).isEqualTo("Door");
                    assertThat(too.tooLong()).isTrue();
                });
    }

    @Test
    void cut_partThatWouldFitTurned_saysSo() {
        assertThatThrownBy(() -> cut(List.of(fixed("Top", in(40), in(60), 1)), UNTRIMMED))
                .isInstanceOfSatisfying(
                        PieceTooLargeException.class,
                        too -> assertThat(too.in(MeasureStyle.INCHES))
                                .isEqualTo(
                                        "Top is 60 in wide, wider than the sheet (48 in). Turned across the grain it would fit."));
        assertThat(cut(List.of(free("Top", in(40), in(60))), UNTRIMMED)
                        .layouts()
                        .get(0)
                        .placements())
                .singleElement()
                .satisfies(part -> assertThat(part.turned()).isTrue());
    }

    @Test
    void cut_moreThanThereAre_saysHowManyAreShort() {
        SheetSize only = new SheetSize("birch", in(96), in(48), Length.ZERO, EIGHTH, 1);
        assertThatThrownBy(() -> cut(List.of(fixed("Panel", in(90), in(40), 2)), only))
                .isInstanceOf(SheetsShortException.class)
                .hasMessage("birch: 2 needed, 1 there. Fewer than 2 is impossible.");
    }

    @Test
    void cut_nothing_buysNothing() {
        assertThat(cut(List.of(), UNTRIMMED).bound())
                .isEqualTo(new StockBound("sheet", 0, 0, true, "There is nothing to cut."));
    }

    @Test
    void cut_sixtyParts_takesAboutASecondAtMost() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(60);
        List<SheetPiece> pieces = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            pieces.add(new SheetPiece(
                    "Part " + i, mm(random.nextInt(80, 900)), mm(random.nextInt(80, 700)), 1, random.nextBoolean()));
        }
        SheetSize sheet = sheet(mm(2440), mm(1220), mm(6), mm(3));
        cut(pieces, sheet);
        long start = System.nanoTime();
        cut(pieces, sheet);
        long took = System.nanoTime() - start;
        // Generous, for a busy machine; the aim is one second.
        assertThat(took / 1_000_000).as("milliseconds").isLessThan(4_000);
    }

    private static Offcut largest(SheetCutting.Result result) {
        return result.layouts().get(0).offcuts().get(0);
    }

    private static double area(Offcut offcut) {
        return offcut.length().inInches() * offcut.width().inInches();
    }

    private static SheetCutting.Result cut(List<SheetPiece> pieces, SheetSize sheet) {
        SheetCutting.Result result = SheetCutting.cut(pieces, sheet);
        SheetChecks.check(result, pieces, "layout");
        return result;
    }

    private static SheetPiece fixed(String part, Length length, Length width, int count) {
        return new SheetPiece(part, length, width, count, false);
    }

    private static SheetPiece free(String part, Length length, Length width) {
        return new SheetPiece(part, length, width, 1, true);
    }

    private static SheetSize sheet(Length length, Length width, Length trim, Length kerf) {
        return new SheetSize("sheet", length, width, trim, kerf, Integer.MAX_VALUE);
    }
}
