package org.kerfleaf.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.joda.money.Money;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Mass;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.stock.BoardMeasure;

/**
 * What to know in the shop: what a sheet may measure, how much lumber it is, and how it all gets home.
 *
 * @param sheets what each kind of wood sheet may measure and still be what its label says
 * @param boards what is bought of each length of lumber by board measure, where its name is a nominal size
 * @param home how each sheet and board gets home, if the vehicle was said
 * @param instead stocks of which one is bought, each with what it would come to; filled once the workbook has run with each
 */
public record Buying(List<SheetAsSold> sheets, List<Yard> boards, Optional<Home> home, List<OneOf> instead) {
    /** Nothing is bought. */
    public static final Buying NOTHING = new Buying(List.of(), List.of(), Optional.empty(), List.of());

    public Buying {
        sheets = List.copyOf(sheets);
        boards = List.copyOf(boards);
        instead = List.copyOf(instead);
    }

    /** The same with what each stock would come to. */
    Buying with(List<OneOf> choices) {
        return new Buying(sheets, boards, home, choices);
    }

    /** Stocks of which one is bought. @param label of the size by which it is chosen */
    public record OneOf(String label, List<Choice> choices) {
        public OneOf {
            choices = List.copyOf(choices);
        }
    }

    /**
     * One stock, and what the whole plan comes to with it.
     *
     * @param planned whether it is the one that this plan buys
     * @param fits whether every part comes out of it, and everything finds its place
     * @param fit the same in words, with checks that fall short only with it
     * @param bought how many sheets or boards
     * @param price of these, if known
     * @param all that the build costs as bought, if every price is known
     * @param sags the part of it that sags most, if a load was said
     * @param sag how far that sags at first
     * @param moves how much wider the part of it that moves most is when dampest than when driest, if that is known
     * @param weight of everything, if every density is known
     */
    public record Choice(
            String stock,
            boolean planned,
            boolean fits,
            String fit,
            int bought,
            Optional<Money> price,
            Optional<Money> all,
            Optional<String> sags,
            Optional<Figure<Length>> sag,
            Optional<Figure<Length>> moves,
            Optional<Figure<Mass>> weight) {}

    /**
     * What a sheet may measure.
     *
     * @param thinnest it may be, if a standard has limits for its label
     * @param thickest it may be, likewise
     * @param shortest its longer side may be
     * @param narrowest its shorter side may be
     * @param diagonals how much they may differ
     */
    public record SheetAsSold(
            String stock,
            Optional<Figure<Length>> thinnest,
            Optional<Figure<Length>> thickest,
            Figure<Length> shortest,
            Figure<Length> narrowest,
            Figure<Length> diagonals) {}

    /** So many boards of one length, by board measure. */
    public record Yard(String stock, Length length, int count, Figure<BoardMeasure> measure) {}

    /**
     * A vehicle, and what it takes to get everything into it.
     *
     * @param vehicle its name
     * @param wide how wide a piece may be, if known
     * @param longest how long, if known
     * @param roof what its roof carries, if known
     * @param loads sheets and boards, equal ones told once
     */
    public record Home(
            String vehicle, Optional<Length> wide, Optional<Length> longest, Optional<Mass> roof, List<Load> loads) {
        public Home {
            loads = List.copyOf(loads);
        }
    }

    /** How a sheet or board gets home. */
    public enum Way {
        /** It fits as it is. */
        WHOLE("as it is"),
        /** It fits after one or two cuts in the shop. */
        CUT("cut in the shop"),
        /** It fits only after more cuts than a shop makes as a favour, or not at all. */
        NOT("not in this vehicle"),
        /** A size of the vehicle that decides it was not said. */
        NOT_KNOWN("not known");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * One sheet or board, or several alike.
     *
     * @param stock what it is
     * @param count how many go home alike
     * @param which their numbers in the plan's layouts of sheets or of boards, from 1
     * @param length as sold
     * @param width of a sheet, as sold
     * @param way how it gets home
     * @param cuts to ask the shop for, in their order
     * @param pieces that then go home, largest first
     * @param weight of one, if its density is known
     * @param onTheRoof whether the roof carries one; empty if that is not known
     * @param words what to do, in a sentence
     */
    public record Load(
            String stock,
            int count,
            List<Integer> which,
            Length length,
            Optional<Length> width,
            Way way,
            List<ShopCut> cuts,
            List<Carried> pieces,
            Optional<Figure<Mass>> weight,
            Optional<Boolean> onTheRoof,
            String words) {
        public Load {
            which = List.copyOf(which);
            cuts = List.copyOf(cuts);
            pieces = List.copyOf(pieces);
        }

        /** {@code exterior plywood, sheet 1}, {@code 1x2, boards 2, 3}. */
        public String name() {
            String numbers = which.stream().map(String::valueOf).collect(Collectors.joining(", "));
            return "%s, %s%s %s".formatted(stock, isSheet() ? "sheet" : "board", which.size() > 1 ? "s" : "", numbers);
        }

        /** Whether it is a sheet. */
        public boolean isSheet() {
            return width.isPresent();
        }
    }

    /**
     * A cut to ask the shop for.
     *
     * @param across whether it runs across the sheet or board
     * @param at how far from the sheet's long or short factory edge, or the board's end, its near side is; the kerf lies beyond
     * @param number of the layout's cut it is, if that has one
     * @param between what it parts, in words
     */
    public record ShopCut(boolean across, Figure<Length> at, Optional<Integer> number, String between) {}

    /** A piece on its way home, as it lies: along the sheet, and across it. Of a board only its length is told. */
    public record Carried(Length length, Optional<Length> width) {}
}
