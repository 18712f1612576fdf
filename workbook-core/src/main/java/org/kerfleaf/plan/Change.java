package org.kerfleaf.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;

/**
 * One thing in which a plan differs from another.
 *
 * @param topic what kind of thing it is
 * @param subject the thing, by the maker's name for it: {@code Side}, {@code exterior plywood}
 * @param aspect what of it, {@code along the grain}; empty for the thing itself
 * @param before as it was; empty if there was none
 * @param after as it is; empty if there is none any more
 */
public record Change(Topic topic, String subject, String aspect, Optional<Quantity> before, Optional<Quantity> after) {
    /** What a plan is made of, in the order in which changes are told. */
    public enum Topic {
        PROBLEMS("Does not make sense"),
        SIZES("Sizes"),
        OUTSIDE("Outside"),
        PARTS("Parts"),
        SAWS("Saw settings"),
        STOCK("Sheets and boards"),
        HARDWARE("Hardware"),
        FINISH("Finish"),
        COST("Cost"),
        SITE("Site"),
        LOADS("Loads"),
        WORK("Work and waiting"),
        CHECKS("Checks");

        private final String title;

        Topic(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }
    }

    /** {@code Side, along the grain}. */
    public String what() {
        return aspect.isEmpty() ? subject : subject + ", " + aspect;
    }

    /** As it was, in words; empty if there was none. */
    public String beforeIn(MeasureStyle style) {
        return told(before, style);
    }

    /** As it is, in words; empty if there is none any more. */
    public String afterIn(MeasureStyle style) {
        return told(after, style);
    }

    private String told(Optional<Quantity> value, MeasureStyle style) {
        return value.map(known ->
                        known instanceof Length length && readsAlike(style) ? decimals(length, style) : known.in(style))
                .orElse("");
    }

    /** Whether a tape reads both the same. */
    private boolean readsAlike(MeasureStyle style) {
        return before.isPresent()
                && after.isPresent()
                && before.get().in(style).equals(after.get().in(style));
    }

    /** For a difference that no tape shows, as between two readings of a caliper. */
    private static String decimals(Length length, MeasureStyle style) {
        boolean inches = style.unit() == LengthUnit.INCHES;
        BigDecimal number = BigDecimal.valueOf(length.nanometres())
                .divide(BigDecimal.valueOf(style.unit().nanometres()), inches ? 4 : 2, RoundingMode.HALF_UP);
        return number.toPlainString() + " " + style.unit().symbol();
    }
}
