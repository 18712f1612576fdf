package org.kerfleaf.rules;

import java.util.List;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Reason;

/** Whether what is compared can be compared. */
public final class CostChecks {
    private CostChecks() {}

    /** Check 60: a bought kit and this build hold the same things. */
    public static Check likeForLike(String kit, List<String> kitLacks, List<String> noPrice, MeasureStyle style) {
        Held held = new Held("Like for like", kit, Reason.COMMON_PRACTICE, style);
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
