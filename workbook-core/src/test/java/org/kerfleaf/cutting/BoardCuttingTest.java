package org.kerfleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.kerfleaf.cutting.Lengths.in;
import static org.kerfleaf.cutting.Lengths.mm;

import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

class BoardCuttingTest {
    private static final Length EIGHTH = in(0.125);
    private static final BoardSize EIGHT_FEET = board("1x2", in(96), EIGHTH, null);

    // Source of this group: facts 11.2, geometry.

    @Test
    void cut_fourQuartersOfABoard_onlyThreeFitBecauseOfTheKerf() {
        assertThat(cut(List.of(piece("Slat", in(24), 3)), EIGHT_FEET).layouts())
                .singleElement()
                .satisfies(layout -> assertThat(layout.offcut()).isEqualTo(in(23.625)));
        assertThat(cut(List.of(piece("Slat", in(24), 4)), EIGHT_FEET).bound().bought())
                .isEqualTo(2);
    }

    @Test
    void cut_eightPiecesThatUseTheBoardUp_leaveNothing() {
        assertThat(cut(List.of(piece("Slat", in(11.875), 8)), EIGHT_FEET).layouts())
                .singleElement()
                .satisfies(layout -> assertThat(layout.offcut()).isEqualTo(Length.ZERO));
    }

    @Test
    void cut_footLongPieces_sevenToAnEightFootBoard() {
        assertThat(cut(List.of(piece("Slat", in(12), 7)), EIGHT_FEET).bound().bought())
                .isEqualTo(1);
        assertThat(cut(List.of(piece("Slat", in(12), 8)), EIGHT_FEET).bound().bought())
                .isEqualTo(2);
    }

    @Test
    void cut_longestFourEqualPieces_fitToTheLastBit() {
        assertThat(cut(List.of(piece("Slat", in(23.90625), 4)), EIGHT_FEET)
                        .bound()
                        .bought())
                .isEqualTo(1);
        Length aHairMore = in(23.90625).plus(new Length(1));
        assertThat(cut(List.of(piece("Slat", aHairMore, 4)), EIGHT_FEET).bound().bought())
                .isEqualTo(2);
    }

    @Test
    void cut_metricBoard_leavesTheRestAfterOneMoreKerf() {
        BoardSize board = board("Batten", mm(2440), mm(3), null);
        assertThat(cut(List.of(piece("Slat", mm(600), 4)), board).layouts())
                .singleElement()
                .satisfies(layout -> assertThat(layout.offcut()).isEqualTo(mm(28)));
    }

    @Test
    void cut_restThinnerThanTheKerf_leavesNoOffcut() {
        assertThat(cut(List.of(piece("Slat", in(95.95), 1)), EIGHT_FEET).layouts())
                .singleElement()
                .satisfies(layout -> assertThat(layout.offcut()).isEqualTo(Length.ZERO));
    }

    @Test
    void cut_trimmedBoard_placesPiecesFromTheTrimmedEnd() {
        BoardSize board = new BoardSize("Oak", mm(1000), mm(20), mm(3), Optional.empty());
        BoardLayout layout = cut(List.of(piece("Rail", mm(500), 1), piece("Stile", mm(400), 1)), board)
                .layouts()
                .get(0);
        assertThat(layout.placements())
                .containsExactly(
                        new BoardLayout.BoardPlacement("Rail", mm(20), mm(500)),
                        new BoardLayout.BoardPlacement("Stile", mm(523), mm(400)));
        assertThat(layout.offcut()).isEqualTo(mm(1000 - 20 - 926));
    }

    // Source of this group: the first workbook's figures, worked by hand.

    @Test
    void cut_cabinetTrim_takesTwoBoardsAndFewerIsImpossible() {
        BoardCutting.Result result =
                cut(List.of(piece("Rake trim", in(15.94662), 4), piece("Eave trim", in(17.9375), 2)), EIGHT_FEET);
        assertThat(result.bound())
                .isEqualTo(new StockBound(
                        "1x2",
                        2,
                        2,
                        true,
                        "Fewer is impossible: the pieces with their kerfs are longer together than one board."));
        assertThat(result.layouts()).hasSize(2);
    }

    @Test
    void cut_armsAndSeat_takeOneBoard() {
        StockBound bound = cut(List.of(piece("Arm", in(18), 2), piece("Seat", in(20), 1)), EIGHT_FEET)
                .bound();
        assertThat(bound)
                .isEqualTo(new StockBound("1x2", 1, 1, true, "Fewer is impossible: there is something to cut."));
    }

    // Source of this group: job scenarios A, C and D, worked by hand.

    @Test
    void cut_lidFrameOfTheColdFrame_takesTwoBoards() {
        StockBound bound = cut(
                        List.of(piece("Stile", in(32.0483), 2), piece("Rail", in(43), 2)),
                        board("1x3", in(96), EIGHTH, null))
                .bound();
        assertThat(bound.bought()).isEqualTo(2);
        assertThat(bound.proven()).isTrue();
    }

    @Test
    void cut_pottingBenchFrame_buysTwoTenFootBoardsBecauseTheyAreCheapest() {
        BoardCutting.Result result = BoardCutting.cut(
                List.of(piece("Ledger", in(72), 1), piece("Front rail", in(72), 1), piece("Joist", in(19.75), 4)),
                List.of(board("2x4", in(96), EIGHTH, "USD 4.10"), board("2x4", in(120), EIGHTH, "USD 5.60")));
        assertThat(price(result)).isEqualTo(Money.parse("USD 11.20"));
        assertThat(result.layouts())
                .extracting(layout -> layout.board().length())
                .containsExactly(in(120), in(120));
        assertThat(result.bound().proven()).isTrue();
        assertThat(result.bound().because()).isEqualTo("Nothing cheaper: every cheaper mix is too short.");
    }

    @Test
    void cut_deckBoardsAKerfTooLong_takeOneBoardEach() {
        List<BoardSize> sizes =
                List.of(board("5/4x6", in(96), EIGHTH, "USD 9.80"), board("5/4x6", in(144), EIGHTH, "USD 14.20"));
        BoardCutting.Result sixFeet = BoardCutting.cut(List.of(piece("Deck board", in(72), 4)), sizes);
        assertThat(price(sixFeet)).isEqualTo(Money.parse("USD 39.20"));
        assertThat(sixFeet.layouts())
                .extracting(layout -> layout.board().length())
                .containsOnly(in(96));
        assertThat(sixFeet.bound().proven()).isTrue();
        BoardCutting.Result aKerfShorter = BoardCutting.cut(List.of(piece("Deck board", in(71.875), 4)), sizes);
        assertThat(price(aKerfShorter)).isEqualTo(Money.parse("USD 28.40"));
    }

    @Test
    void cut_nestBoxesForAClass_fifteenBoardsAreEnoughAndFewerImpossible() {
        // "10 trimmed once from each" is 5 at each end: the same 2390 are left.
        BoardSize board = new BoardSize("18 x 145", mm(2400), mm(5), mm(3), Optional.empty());
        List<BoardPiece> pieces = List.of(
                piece("Back", mm(380), 25),
                piece("Sides", mm(484), 25),
                piece("Front", mm(220), 25),
                piece("Roof", mm(206), 25),
                piece("Floor", mm(109), 25));
        StockBound bound = cut(pieces, board).bound();
        assertThat(bound.fewest()).isEqualTo(15);
        assertThat(bound.bought()).isEqualTo(15);
        assertThat(bound.proven()).isTrue();
    }

    @Test
    void cut_severalLengthsWithoutPrices_takesFewestThenShortest() {
        BoardCutting.Result result = BoardCutting.cut(
                List.of(piece("Rail", in(60), 1)),
                List.of(
                        board("1x4", in(120), EIGHTH, null),
                        board("1x4", in(72), EIGHTH, "USD 3.00"),
                        board("1x4", in(96), EIGHTH, "USD 2.00")));
        assertThat(result.layouts())
                .extracting(layout -> layout.board().length())
                .containsExactly(in(72));
    }

    @Test
    void cut_fiveThirdsOfABoard_needThreeThoughTheLengthIsUnderTwo() {
        // Source: facts 11.4, first row: 5 of 35 from 100 need 3 boards.
        StockBound bound = cut(List.of(piece("Leg", mm(35), 5)), board("Dowel", mm(100), Length.ZERO, null))
                .bound();
        assertThat(bound.bought()).isEqualTo(3);
        assertThat(bound.fewest()).isEqualTo(3);
        assertThat(bound.because())
                .isEqualTo(
                        "Fewer is impossible: going by how often each length goes into a board, the pieces fill more than 2 boards.");
    }

    @Test
    void cut_noBoundSettlesIt_triesEveryWay() {
        // 15 + 14 + 10 + 7 + 6 = 2 x 26, but nothing makes up the 11 beside the 15.
        StockBound bound = cut(
                        List.of(
                                piece("A", mm(15), 1),
                                piece("B", mm(14), 1),
                                piece("C", mm(10), 1),
                                piece("D", mm(7), 1),
                                piece("E", mm(6), 1)),
                        board("Dowel", mm(26), Length.ZERO, null))
                .bound();
        assertThat(bound)
                .isEqualTo(new StockBound(
                        "Dowel",
                        3,
                        3,
                        true,
                        "Fewer is impossible: every way of cutting them from 2 boards was tried."));
    }

    @Test
    void cut_pieceLongerThanEveryBoard_saysHowLongTheLongestIs() {
        BoardSize board = new BoardSize("2x4", in(96), in(0.25), EIGHTH, Optional.empty());
        assertThatThrownBy(() -> cut(List.of(piece("Ridge", in(97), 1)), board))
                .isInstanceOfSatisfying(PieceTooLargeException.class, too -> {
                    assertThat(too.in(MeasureStyle.INCHES))
                            .isEqualTo("Ridge is 97 in long, longer than the 2x4 (95 1/2 in after trimming).");
                    assertThat(too.limit()).isEqualTo(in(95.5));
                });
    }

    @Test
    void cut_nothing_buysNothing() {
        assertThat(cut(List.of(), EIGHT_FEET).bound())
                .isEqualTo(new StockBound("1x2", 0, 0, true, "There is nothing to cut."));
    }

    @Test
    void cut_twoKerfs_asksForOneSaw() {
        assertThatThrownBy(() -> BoardCutting.cut(
                        List.of(piece("Rail", in(60), 1)),
                        List.of(EIGHT_FEET, board("1x2", in(120), in(0.09375), null))))
                .hasMessageContaining("one saw cuts them all");
    }

    private static BoardCutting.Result cut(List<BoardPiece> pieces, BoardSize board) {
        return BoardCutting.cut(pieces, List.of(board));
    }

    private static Money price(BoardCutting.Result result) {
        return result.layouts().stream()
                .map(layout -> layout.board().price().orElseThrow())
                .reduce(Money::plus)
                .orElseThrow();
    }

    private static BoardPiece piece(String part, Length length, int count) {
        return new BoardPiece(part, length, count);
    }

    private static BoardSize board(String stock, Length length, Length kerf, String price) {
        return new BoardSize(
                stock, length, Length.ZERO, kerf, Optional.ofNullable(price).map(Money::parse));
    }
}
