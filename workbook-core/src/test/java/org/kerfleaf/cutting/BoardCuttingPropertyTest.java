package org.kerfleaf.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.kerfleaf.cutting.Lengths.units;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;

/** What holds for every cut list, on random ones. */
class BoardCuttingPropertyTest {
    private record Case(List<BoardPiece> pieces, List<BoardSize> sizes) {}

    @Test
    void cut_anyList_losesNothingAndKeepsTheKerfs() {
        for (long seed = 0; seed < 300; seed++) {
            Case list = list(seed, 30);
            BoardCutting.Result result = BoardCutting.cut(list.pieces(), list.sizes());
            String shown = "seed %d, %s".formatted(seed, list);
            assertThat(cutOut(result)).as(shown).isEqualTo(wanted(list.pieces()));
            result.layouts().forEach(layout -> holdsTogether(layout, shown));
            assertThat(result.bound().bought())
                    .as(shown)
                    .isEqualTo(result.layouts().size());
            assertThat(result.bound().bought())
                    .as(shown)
                    .isGreaterThanOrEqualTo(result.bound().fewest());
        }
    }

    @Test
    void cut_listTooLongForEveryMix_isStillCutAndClaimsNothing() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(7);
        List<BoardPiece> pieces = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            pieces.add(new BoardPiece("Part " + i, units(random.nextInt(10, 240)), 1));
        }
        List<BoardSize> sizes = new ArrayList<>();
        for (int length = 100; length <= 250; length += 25) {
            Money price = Money.ofMinor(CurrencyUnit.of("GBP"), 3L * length + 40 + length % 50);
            sizes.add(new BoardSize("Pine", units(length), units(0), units(1), Optional.of(price)));
        }
        BoardCutting.Result result = BoardCutting.cut(pieces, sizes);
        assertThat(cutOut(result)).isEqualTo(wanted(pieces));
        result.layouts().forEach(layout -> holdsTogether(layout, "long list"));
        assertThat(result.bound().proven()).isFalse();
        assertThat(result.bound().because()).isEqualTo("A cheaper mix is not ruled out.");
    }

    @Test
    void cut_sameListTwice_givesTheSame() {
        for (long seed = 0; seed < 50; seed++) {
            Case list = list(seed, 40);
            assertThat(BoardCutting.cut(list.pieces(), list.sizes()))
                    .as("seed %d", seed)
                    .isEqualTo(BoardCutting.cut(list.pieces(), list.sizes()));
        }
    }

    @Test
    void cut_fewPieces_provenMeansNothingIsCheaper() {
        int proven = 0;
        for (long seed = 0; seed < 600; seed++) {
            Case list = list(seed, 6);
            BoardCutting.Result result = BoardCutting.cut(list.pieces(), list.sizes());
            long best = new EveryBoardMix(list.pieces(), list.sizes()).cheapest();
            if (result.bound().proven()) {
                assertThat(cost(result)).as("seed %d, %s", seed, list).isEqualTo(best);
                proven++;
            }
        }
        assertThat(proven).isGreaterThan(550);
    }

    /** Puts every piece on every board opened so far or on a new one of any size; knows nothing of the code it checks. */
    private static final class EveryBoardMix {
        private final List<Long> pieces = new ArrayList<>();
        private final List<BoardSize> sizes;
        private final boolean priced;
        private long best = Long.MAX_VALUE;

        EveryBoardMix(List<BoardPiece> pieces, List<BoardSize> sizes) {
            this.sizes = sizes;
            this.priced = priced(sizes);
            for (BoardPiece piece : pieces) {
                this.pieces.addAll(
                        Collections.nCopies(piece.count(), piece.length().nanometres()));
            }
        }

        long cheapest() {
            place(0, new ArrayList<>(), 0);
            return best;
        }

        private void place(int piece, List<Long> leftOnBoards, long cost) {
            if (cost >= best) {
                return;
            }
            if (piece == pieces.size()) {
                best = cost;
                return;
            }
            long length = pieces.get(piece);
            for (int board = 0; board < leftOnBoards.size(); board++) {
                long left = leftOnBoards.get(board);
                if (left >= length) {
                    leftOnBoards.set(board, left - length - sizes.get(0).kerf().nanometres());
                    place(piece + 1, leftOnBoards, cost);
                    leftOnBoards.set(board, left);
                }
            }
            for (BoardSize size : sizes) {
                if (!size.usable().isShorterThan(units(length))) {
                    leftOnBoards.add(
                            size.usable().minus(units(length), size.kerf()).nanometres());
                    place(piece + 1, leftOnBoards, cost + (priced ? cents(size) : 1));
                    leftOnBoards.remove(leftOnBoards.size() - 1);
                }
            }
        }
    }

    private static void holdsTogether(BoardLayout layout, String shown) {
        BoardSize board = layout.board();
        Length at = board.trim();
        for (BoardLayout.BoardPlacement placement : layout.placements()) {
            assertThat(placement.at()).as(shown).isEqualTo(at);
            assertThat(at.plus(placement.length()))
                    .as(shown)
                    .isLessThanOrEqualTo(board.length().minus(board.trim()));
            at = at.plus(placement.length(), board.kerf());
        }
        Length rest = board.length().minus(board.trim(), at);
        assertThat(layout.offcut()).as(shown).isEqualTo(rest.max(Length.ZERO));
    }

    private static List<String> cutOut(BoardCutting.Result result) {
        return result.layouts().stream()
                .flatMap(layout -> layout.placements().stream())
                .map(placement -> placement.part() + " " + placement.length())
                .sorted()
                .toList();
    }

    private static List<String> wanted(List<BoardPiece> pieces) {
        return pieces.stream()
                .flatMap(piece -> Collections.nCopies(piece.count(), piece.part() + " " + piece.length()).stream())
                .sorted()
                .toList();
    }

    private static long cost(BoardCutting.Result result) {
        boolean priced =
                priced(result.layouts().stream().map(BoardLayout::board).toList());
        return result.layouts().stream()
                .mapToLong(layout -> priced ? cents(layout.board()) : 1)
                .sum();
    }

    private static boolean priced(List<BoardSize> sizes) {
        return sizes.stream().allMatch(size -> size.price().isPresent());
    }

    private static long cents(BoardSize size) {
        return size.price().orElseThrow().getAmountMinorLong();
    }

    private static Case list(long seed, int most) {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
        boolean priced = random.nextBoolean();
        Length kerf = units(random.nextInt(4));
        Length trim = units(random.nextInt(3));
        List<BoardSize> sizes = new ArrayList<>();
        int lengths = random.nextInt(1, 4);
        for (int i = 0; i < lengths; i++) {
            Optional<Money> price = priced
                    ? Optional.of(Money.ofMinor(CurrencyUnit.of("GBP"), random.nextInt(300, 1200)))
                    : Optional.empty();
            sizes.add(new BoardSize("Pine", units(random.nextInt(60, 130)), trim, kerf, price));
        }
        long longest = sizes.stream()
                .mapToLong(size -> size.usable().nanometres())
                .max()
                .orElseThrow();
        List<BoardPiece> pieces = new ArrayList<>();
        int left = random.nextInt(1, most + 1);
        while (left > 0) {
            int count = random.nextInt(1, Math.min(left, 4) + 1);
            pieces.add(new BoardPiece("Part " + pieces.size(), units(random.nextLong(5, longest + 1)), count));
            left -= count;
        }
        return new Case(pieces, sizes);
    }
}
