package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Signs;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.Check.Verdict;
import org.kerfleaf.site.SitePlan;

/** Every check: what falls short first, then what is not known, then what holds; each with its sum and its source. */
final class CheckPages {
    private static final List<Verdict> ORDER = List.of(Verdict.SHORT, Verdict.NOT_KNOWN, Verdict.HOLDS);
    private static final double INDENT = Signs.LEVEL + 5;
    private static final double WORD = 24;

    private final Book book;

    CheckPages(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        List<Check> checks = book.plan().checks();
        if (checks.isEmpty()) {
            return;
        }
        flow.page("Checks", "Checks", summary(checks));
        for (Verdict verdict : ORDER) {
            checks.stream().filter(check -> check.verdict() == verdict).forEach(check -> flow.add(row(check)));
        }
        boolean said = checks.stream().anyMatch(check -> (check.result() + check.advice()).contains(SitePlan.DEFERS));
        if (!said && SafetyPage.estimated(book.plan())) {
            flow.add(Block.stack(List.of(
                    Block.space(4),
                    Marks.framed(List.of(Paragraph.of(SitePlan.DEFERS, Style.LABEL.in(Face.LABEL_SEMI), 1.4, 0))))));
        }
    }

    private static String summary(List<Check> checks) {
        Map<Verdict, Long> counts =
                checks.stream().collect(Collectors.groupingBy(Check::verdict, Collectors.counting()));
        List<String> words = new ArrayList<>();
        for (Verdict verdict : ORDER) {
            long count = counts.getOrDefault(verdict, 0L);
            if (count > 0) {
                words.add(count + " " + (verdict == Verdict.HOLDS && count > 1 ? "hold" : verdict.word()));
            }
        }
        return String.join(" · ", words);
    }

    private Block row(Check check) {
        List<Block> words = new ArrayList<>();
        words.add(Block.inset(0, WORD, Paragraph.of(check.name(), Style.LABEL_SEMI, 1.34, 0.2)));
        String margin = check.margin().isEmpty() ? "" : " Margin: " + check.margin() + ".";
        words.add(Paragraph.of(check.result() + margin, Style.LABEL, 1.34, 0.2));
        if (!check.advice().isEmpty()) {
            words.add(Paragraph.of(check.advice(), Style.LABEL, 1.34, 0.2));
        }
        words.add(Paragraph.of(check.source(), Style.CAPTION, 1.3, 0));
        Block text = Block.inset(INDENT, 0, Block.stack(words));
        return new Block() {
            @Override
            public double height(double width) {
                return text.height(width) + 3;
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                text.paint(ink, x, y + 1.3, width);
                Signs.level(
                        ink,
                        check.verdict() == Verdict.NOT_KNOWN ? java.util.OptionalDouble.empty() : level(check),
                        check.verdict() == Verdict.HOLDS,
                        x,
                        y + 1.7);
                word(ink, check.verdict(), x + width, y + 1.3);
                ink.line(x, y + height(width), x + width, y + height(width), 0.12);
            }
        };
    }

    /** A check without a level of its own stands in the middle if it holds. */
    private static java.util.OptionalDouble level(Check check) {
        return check.level().isPresent()
                ? check.level()
                : java.util.OptionalDouble.of(check.verdict() == Verdict.HOLDS ? 1 : -1);
    }

    /** {@code holds} plain, {@code short} filled, {@code not known} dashed. */
    private static void word(Ink ink, Verdict verdict, double right, double y) {
        boolean filled = verdict == Verdict.SHORT;
        Style style = new Style(Face.LABEL_SEMI, 10, filled ? Ink.WHITE : Ink.BLACK);
        if (verdict == Verdict.HOLDS) {
            style = style.in(Face.LABEL);
        }
        Rich word = Rich.of(verdict.word(), style);
        double wide = word.width() + 3.2;
        var box = Ink.box(right - wide, y, wide, 5.2);
        if (filled) {
            ink.fill(box, Ink.BLACK);
        } else if (verdict == Verdict.NOT_KNOWN) {
            ink.dashed(Ink.box(right - wide + 0.2, y + 0.2, wide - 0.4, 4.8), Ink.MIDDLE, 1.4f, 0.9f);
        }
        ink.flushRight(word.line(), right - (verdict == Verdict.HOLDS ? 0 : 1.6), y + 2.6 + style.capital() / 2);
    }
}
