package org.kerfleaf.export.booklet;

import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;
import org.kerfleaf.cutting.StockBound;
import org.kerfleaf.export.drawing.Lettering;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.workbook.Prose;

/** What every page kind reads, and how it says amounts, hours and step numbers. */
record Book(Plan plan, Prose prose, Paper paper, Lettering lettering) {
    static final String NOT_KNOWN = "not known";

    static Book of(Plan plan, Prose prose, Paper paper) {
        return new Book(plan, prose, paper, new Lettering(plan.parts(), plan.style()));
    }

    MeasureStyle measures() {
        return plan.style();
    }

    /** The bound of a stock, if the plan has one. */
    java.util.Optional<StockBound> bound(String stock) {
        return plan.bounds().stream()
                .filter(bound -> bound.stock().equals(stock))
                .findFirst();
    }

    /** An amount without its currency: {@code 1,204.50}. */
    static String amount(Optional<Figure<Money>> sum) {
        return sum.map(known -> amount(known.value())).orElse(NOT_KNOWN);
    }

    static String amount(Money money) {
        return amount(money.getAmount());
    }

    static String amount(BigDecimal amount) {
        String places = amount.scale() > 0 ? "." + "0".repeat(amount.scale()) : "";
        return new DecimalFormat("#,##0" + places, DecimalFormatSymbols.getInstance(Locale.ROOT)).format(amount);
    }

    /** {@code 8 h 10 min}, {@code 25 min}, {@code 2 h}. */
    static String hours(Duration time) {
        long hours = time.toHours();
        int minutes = time.toMinutesPart();
        if (hours == 0) {
            return minutes + " min";
        }
        return hours + " h" + (minutes == 0 ? "" : " " + minutes + " min");
    }

    /** {@code step 4}, {@code steps 1, 3 to 5}; the whole build if there are none. */
    static String steps(List<Integer> numbers) {
        if (numbers.isEmpty()) {
            return "the whole build";
        }
        StringBuilder words = new StringBuilder(numbers.size() == 1 ? "step " : "steps ");
        for (int i = 0; i < numbers.size(); i++) {
            int last = i;
            while (last + 1 < numbers.size() && numbers.get(last + 1) == numbers.get(last) + 1) {
                last++;
            }
            words.append(i == 0 ? "" : ", ").append(numbers.get(i));
            if (last > i + 1) {
                words.append(" to ").append(numbers.get(last));
                i = last;
            }
        }
        return words.toString();
    }

    /** {@code 1 sheet}, {@code 3 sheets}. */
    static String counted(long count, String thing) {
        return count + " " + thing + (count == 1 ? "" : "s");
    }
}
