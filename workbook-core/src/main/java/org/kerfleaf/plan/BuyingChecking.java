package org.kerfleaf.plan;

import java.util.List;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.StockChecks;

/** Whether what is bought gets home. */
final class BuyingChecking {
    private BuyingChecking() {}

    static List<Check> all(Buying buying, MeasureStyle style) {
        return buying.home().stream()
                .flatMap(home -> home.loads().stream().map(load -> home(home, load, style)))
                .toList();
    }

    private static Check home(Buying.Home home, Buying.Load load, MeasureStyle style) {
        String of = load.name();
        boolean roof = load.onTheRoof().orElse(false);
        return switch (load.way()) {
            case WHOLE, CUT -> StockChecks.getsHome(of, home.vehicle(), load.words(), true, style);
            case NOT -> StockChecks.getsHome(of, home.vehicle(), load.words(), roof, style);
            case NOT_KNOWN -> StockChecks.getsHomeNotKnown(of, home.vehicle(), load.words(), style);
        };
    }
}
