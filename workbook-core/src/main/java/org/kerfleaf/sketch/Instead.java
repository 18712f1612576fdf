package org.kerfleaf.sketch;

import java.util.List;
import java.util.stream.Stream;

/**
 * Stocks of which one is bought; the reader may choose another than the workbook did.
 *
 * @param label of the size by which one is chosen
 * @param stocks to choose from, the workbook's own first
 * @param chosen the name of the one in this run
 */
public record Instead(Origin origin, String label, List<Stock> stocks, String chosen) implements Declaration {
    public Instead {
        stocks = List.copyOf(stocks);
    }

    /** One of them. @param name by which it is chosen @param stock its name as a stock, which two species may share */
    public record Stock(String name, String stock) {}

    /** The name of the one that this run buys. @throws SketchException if two have one name, or there is none to choose from */
    static String choose(Stock own, Stream<Stock> others) {
        List<Stock> stocks = Stream.concat(Stream.of(own), others).toList();
        String[] names = stocks.stream().map(Stock::name).toArray(String[]::new);
        if (names.length < 2 || Stream.of(names).distinct().count() < names.length) {
            throw new SketchException(
                    "Which is bought: %s? At least one other than “%s”, each with a name or a species of its own, would be right."
                            .formatted(String.join(", ", names), own.name()));
        }
        String label = own.name() + ", or instead";
        String chosen = Sizes.choice(label, own.name(), names);
        SketchRun run = SketchRun.current();
        run.keep(new Instead(run.next(), label, stocks, chosen));
        return chosen;
    }
}
