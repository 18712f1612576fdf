package org.kerfleaf.export.terminal;

import java.util.List;
import java.util.Optional;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;

/** The text while it is being written. */
final class Page {
    private static final String KERF = "  ";

    private final StringBuilder text = new StringBuilder();
    private final MeasureStyle style;
    private final int width;
    private final boolean reasons;

    Page(MeasureStyle style, int width, boolean reasons) {
        this.style = style;
        this.width = width;
        this.reasons = reasons;
    }

    int width() {
        return width;
    }

    MeasureStyle style() {
        return style;
    }

    String text() {
        return text.toString();
    }

    void titleBlock(Plan plan) {
        rule("━", 0);
        line(plan.title());
        String unit = style.unit() == LengthUnit.INCHES ? "inches to 1/%d".formatted(style.finest()) : "millimetres";
        String priced = plan.pricesOf().map(" of %s"::formatted).orElse("");
        String money =
                plan.currencyCode().map(code -> "prices in " + code + priced).orElse("no prices said");
        paragraph("Plan of %s · %s · %s".formatted(plan.day(), unit, money));
        plan.overall()
                .ifPresent(overall -> paragraph("Outside %s wide, %s deep, %s high"
                        .formatted(
                                overall.wide().value().in(style),
                                overall.deep().value().in(style),
                                overall.high().value().in(style))));
        plan.weight().ifPresent(weight -> paragraph("Weighs " + weight.value().in(style)));
        plan.overall().ifPresent(overall -> {
            why("wide", overall.wide());
            why("deep", overall.deep());
            why("high", overall.high());
        });
        plan.weight().ifPresent(weight -> why("weight", weight));
    }

    /** A section under a rule whose slot stands as far along as the section does. */
    void section(Section section, double along) {
        blank();
        rule("━", along);
        String title = section.title();
        int gap = width - title.length() - section.facts().length();
        if (gap < 2) {
            line(title);
            paragraph(section.facts());
        } else {
            line((title + " ".repeat(gap) + section.facts()).stripTrailing());
        }
        blank();
        section.writer().accept(this);
    }

    private void rule(String stroke, double along) {
        int before = 4 + (int) Math.round(along * (width - 8 - KERF.length()));
        line(stroke.repeat(before) + KERF + stroke.repeat(width - before - KERF.length()));
    }

    void blank() {
        line("");
    }

    void line(String words) {
        text.append(words.stripTrailing()).append('\n');
    }

    void paragraph(String words) {
        hanging("", words);
    }

    /** Text behind a first word, its further lines in line with the first. */
    void hanging(String first, String words) {
        List<String> lines = Words.broken(words, width - first.length());
        for (int at = 0; at < lines.size(); at++) {
            line((at == 0 ? first : " ".repeat(first.length())) + lines.get(at));
        }
    }

    void grid(Grid grid) {
        grid.lines(width).forEach(this::line);
    }

    /** A table of names and values that needs no head. */
    void gridWithoutHead(Grid grid) {
        grid.lines(width).stream().skip(2).forEach(this::line);
    }

    /** Why a figure is what it is, if reasons are asked for. */
    void why(String what, Figure<?> figure) {
        if (reasons) {
            Reason reason = figure.reason();
            hanging("  why  ", what + ": " + reason.in(style));
        }
    }

    void why(String what, Optional<? extends Figure<?>> figure) {
        figure.ifPresent(known -> why(what, known));
    }

    /** A blank line between a table and the reasons for it. */
    void beforeReasons() {
        if (reasons) {
            blank();
        }
    }
}
