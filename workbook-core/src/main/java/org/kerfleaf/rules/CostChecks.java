package org.kerfleaf.rules;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether what is compared can be compared. */
public final class CostChecks {
    private static final int FRESH_DAYS = 60;

    private CostChecks() {}

    /** Prices older than 60 days are asked again. @param of the day they were true, if said; a later day counts as today */
    public static Check priceAge(Optional<LocalDate> of, LocalDate day, MeasureStyle style) {
        Held held = new Held("Price age", "", Reason.COMMON_PRACTICE, style);
        if (of.isEmpty()) {
            return held.notKnown(
                    "Of which day the prices are was not said.", "Say it: pricesIn(\"USD\", \"2026-04-12\").");
        }
        long days = Math.max(0, ChronoUnit.DAYS.between(of.get(), day));
        return held.level(
                "The prices are of %s, %d days old. Allowed: %d days.".formatted(of.get(), days, FRESH_DAYS),
                (FRESH_DAYS - days) / (double) FRESH_DAYS,
                FRESH_DAYS - days + " days to spare",
                "too old by " + (days - FRESH_DAYS) + " days",
                "Ask for the prices again before you buy.");
    }

    /**
     * Check 60: a bought kit and this build hold the same things.
     *
     * @param added what the things cost that the kit leaves out, if known
     */
    public static Check likeForLike(
            String kit, List<String> kitLacks, Optional<Money> added, List<String> noPrice, MeasureStyle style) {
        Held held = new Held("Like for like", kit, Reason.COMMON_PRACTICE, style);
        if (!kitLacks.isEmpty() && added.isPresent() && noPrice.isEmpty()) {
            return held.holds("The kit leaves out %s; %s at this build's prices are added to it."
                    .formatted(words(kitLacks), added.get()));
        }
        if (!kitLacks.isEmpty()) {
            return held.falls(
                    "The kit leaves out %s; this build has it priced in.".formatted(words(kitLacks)),
                    "Add what %s cost to the kit's price before you compare.".formatted(words(kitLacks)));
        }
        if (!noPrice.isEmpty()) {
            return held.notKnown(
                    "This build has no price for %s.".formatted(words(noPrice)),
                    "Say what %s cost.".formatted(words(noPrice)));
        }
        return held.holds("The kit and this build hold the same things.");
    }

    private static String words(List<String> things) {
        int last = things.size() - 1;
        return last == 0 ? things.get(0) : String.join(", ", things.subList(0, last)) + " and " + things.get(last);
    }
}
