package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;

/**
 * Cuts lengths from boards and mouldings. If every price is known, in one currency, the cheapest boards are sought,
 * else the fewest; then the fewest, then the shortest, then those that leave the longest single rest.
 *
 * <p>Mixes of lengths are tried from the cheapest up. A mix is passed over only when it is certainly too short, either by
 * a bound or because every way of cutting it was tried, so the first that holds all pieces is proven cheapest unless the
 * search had to give up on a cheaper one. The effort is counted in steps, never in time: the same question has the same
 * answer everywhere.
 */
public final class BoardCutting {
    /** How many mixes are looked at before settling for a plain layout. */
    private static final int MIXES = 40_000;

    /** How many steps of trying every way one mix is worth, and all together. */
    private static final long STEPS_PER_MIX = 200_000;

    private static final long STEPS = 2_000_000;

    private BoardCutting() {}

    /** The boards to buy with what is cut from each, and how few would do. */
    public record Result(List<BoardLayout> layouts, StockBound bound) {
        public Result {
            layouts = List.copyOf(layouts);
        }
    }

    /**
     * Lays out all pieces.
     *
     * @param pieces what to cut; their order is the order of equal lengths on a board
     * @param sizes the lengths on sale of one stock, each as often as wanted, all cut with the same kerf
     * @throws PieceTooLargeException if a piece is longer than the longest board after trimming
     * @throws IllegalArgumentException if there is no size, a length or count is not positive, a kerf, trim or price is
     *     negative, or two sizes have different kerfs
     */
    public static Result cut(List<BoardPiece> pieces, List<BoardSize> sizes) {
        BoardQuestion question = BoardQuestion.of(pieces, sizes);
        if (question.pieces().isEmpty()) {
            return new Result(List.of(), new StockBound(sizes.get(0).stock(), 0, 0, true, "There is nothing to cut."));
        }
        return new Search(question).run();
    }

    private static final class Search {
        private final BoardQuestion question;
        private final BoardNeeds needs;
        private final BoardPacker packer;
        private boolean someTried;
        private long cheapestNotRuledOut = Long.MAX_VALUE;

        Search(BoardQuestion question) {
            this.question = question;
            this.needs = new BoardNeeds(question.needs(), question.capacities());
            this.packer = new BoardPacker(question.needs(), STEPS);
        }

        Result run() {
            BoardMix.Enumeration mixes = new BoardMix.Enumeration(question.capacities(), question.prices());
            for (int looked = 0; looked < MIXES; looked++) {
                BoardMix mix = mixes.next();
                if (needs.tooShort(mix)) {
                    continue;
                }
                BoardPacker.Answer answer = packer.pack(mix.each(question.capacities()), STEPS_PER_MIX);
                switch (answer.verdict()) {
                    case FITS -> {
                        return result(mix, answer.boardOf());
                    }
                    case IMPOSSIBLE -> someTried = true;
                    case NOT_KNOWN -> cheapestNotRuledOut = Math.min(cheapestNotRuledOut, mix.cost());
                }
            }
            // Every mix up to here was passed over for certain, but what lies between here and the plain layout was
            // not.
            cheapestNotRuledOut = 0;
            PlainBoards.Layout plain =
                    new PlainBoards(question.needs(), question.capacities(), question.prices()).layout();
            return result(plain.mix(), plain.boardOf());
        }

        private Result result(BoardMix mix, int[] boardOf) {
            return new Result(layouts(mix, boardOf), bound(mix));
        }

        private StockBound bound(BoardMix mix) {
            boolean proven = mix.cost() <= cheapestNotRuledOut;
            String stock = question.sizes().get(0).stock();
            BoardBound.Least least = needs.least();
            if (question.byPrice() && question.sizes().size() > 1) {
                String because = !proven
                        ? "A cheaper mix is not ruled out."
                        : someTried
                                ? "Nothing cheaper: every cheaper mix is too short, or was tried in every way."
                                : "Nothing cheaper: every cheaper mix is too short.";
                return new StockBound(stock, mix.boards(), least.boards(), proven, because);
            }
            if (proven && least.boards() < mix.boards()) {
                return new StockBound(
                        stock,
                        mix.boards(),
                        mix.boards(),
                        true,
                        "Fewer is impossible: every way of cutting them from %s was tried."
                                .formatted(BoardBound.boards(mix.boards() - 1)));
            }
            return new StockBound(
                    stock,
                    mix.boards(),
                    least.boards(),
                    proven,
                    proven ? least.because() : "%d is not ruled out.".formatted(mix.boards() - 1));
        }

        private List<BoardLayout> layouts(BoardMix mix, int[] boardOf) {
            List<BoardLayout> layouts = new ArrayList<>();
            int board = 0;
            for (int size = mix.counts().length - 1; size >= 0; size--) {
                for (int n = 0; n < mix.counts()[size]; n++) {
                    layouts.add(layout(question.sizes().get(size), board++, boardOf));
                }
            }
            layouts.sort(
                    Comparator.comparing((BoardLayout layout) -> layout.board().length())
                            .reversed()
                            .thenComparing(BoardLayout::offcut));
            return layouts;
        }

        private BoardLayout layout(BoardSize size, int board, int[] boardOf) {
            List<BoardLayout.BoardPlacement> placements = new ArrayList<>();
            Length at = size.trim();
            for (int i = 0; i < boardOf.length; i++) {
                if (boardOf[i] == board) {
                    BoardQuestion.Piece piece = question.pieces().get(i);
                    placements.add(new BoardLayout.BoardPlacement(piece.part(), at, piece.length()));
                    at = at.plus(piece.length(), size.kerf());
                }
            }
            Length rest = size.trim().plus(size.usable()).minus(at);
            return new BoardLayout(size, placements, rest.max(Length.ZERO));
        }
    }

    /** Whether all prices are known and can be added up. */
    static boolean comparable(List<BoardSize> sizes) {
        return sizes.stream().allMatch(size -> size.price().isPresent())
                && sizes.stream()
                                .map(size -> size.price().map(Money::getCurrencyUnit))
                                .distinct()
                                .count()
                        == 1;
    }
}
