package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.caution.Topic;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Line;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.SafetySigns;
import org.kerfleaf.export.drawing.SafetySigns.Wear;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.rules.Check;
import org.kerfleaf.site.SitePlan;
import org.kerfleaf.workbook.Prose;

/**
 * What to know before the first cut. No setting leaves this page out: what to wear, a warning for every tool and matter
 * the build uses, what is only an estimate, and what is not known.
 */
final class SafetyPage {
    private static final double DISC = 26;
    private static final double GUTTER = 9;
    private static final double LINES = 1.34;
    private static final Style BESIDE = new Style(Face.LABEL_SEMI, 12, Ink.BLACK);

    private final Book book;

    SafetyPage(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        flow.page("Before the first cut", "Safety", "everybody reads this page");
        flow.add(discs(wear(book.plan().cautions())));
        flow.add(Block.space(1.5));
        for (double points : SIZES) {
            List<Block> whole = new ArrayList<>(List.of(columns(entries(points))));
            box(points).ifPresent(whole::add);
            if (Block.stack(whole).height(flow.width()) <= flow.left()) {
                whole.forEach(flow::add);
                return;
            }
        }
        // Over several pages it would come last, alone, where nobody looks.
        box(SMALLEST).ifPresent(flow::add);
        flow.add(Block.space(2));
        rows(entries(SMALLEST)).forEach(flow::add);
    }

    /** Sizes to try, so that it all stands on one page if it can. */
    private static final double[] SIZES = {12, 11.2, 10.5};

    private static final double SMALLEST = 10.5;

    /** What the topics ask for; eyes always. */
    static Set<Wear> wear(List<Caution> cautions) {
        Set<Wear> wear = EnumSet.of(Wear.EYES);
        for (Caution caution : cautions) {
            wear.addAll(
                    switch (caution.topic()) {
                        case CIRCULAR_SAW, TABLE_SAW, MITRE_SAW, ROUTER -> EnumSet.of(Wear.EARS, Wear.MASK);
                        case JIGSAW, NAILER -> EnumSet.of(Wear.EARS);
                        case DUST -> EnumSet.of(Wear.MASK);
                        case TREATED_WOOD, CONCRETE, SCRAP -> EnumSet.of(Wear.MASK, Wear.GLOVES);
                        case GLAZING, DIGGING -> EnumSet.of(Wear.GLOVES);
                        case DRILL, GLUE_AND_PAINT, LIFTING, LADDER, ELECTRICITY, CHILDREN, FATIGUE ->
                            EnumSet.noneOf(Wear.class);
                    });
        }
        return wear;
    }

    private static Block discs(Set<Wear> wear) {
        List<Wear> all = List.copyOf(wear);
        boolean below = all.size() > 3;
        double high = below ? DISC + 12.5 : DISC;
        return Block.picture(high + 2, (ink, x, y, width) -> {
            double each = width / Math.max(all.size(), 3);
            for (int i = 0; i < all.size(); i++) {
                double left = x + i * each;
                SafetySigns.mandatory(ink, all.get(i), left, y, DISC);
                double room = below ? each - 5 : each - DISC - 8;
                List<Line> words = Rich.of(all.get(i).words(), below ? BESIDE.at(10.5) : BESIDE)
                        .wrap(room);
                double leading = below ? 4.7 : 5.3;
                double baseline =
                        below ? y + DISC + 6 : y + DISC / 2 - (words.size() - 1) * leading / 2 + BESIDE.capital() / 2;
                for (Line line : words) {
                    ink.text(line, below ? left : left + DISC + 4, baseline);
                    baseline += leading;
                }
            }
        });
    }

    /** A warning for each topic, then what the workbook itself warns of. */
    private List<Block> entries(double points) {
        Style words = new Style(Face.LABEL, points, Ink.BLACK);
        List<Block> all = new ArrayList<>();
        byTopic()
                .forEach((topic, cautions) -> all.add(
                        entry(topic.title(), List.of(Paragraph.of(text(cautions), words, LINES, 0)), foot(cautions))));
        List<Block> said = new ArrayList<>();
        for (Prose.Step step : book.prose().steps()) {
            for (List<Prose.Run> caution : step.cautions()) {
                Rich text = Rich.of("Step " + step.number() + ": ", words.in(Face.LABEL_SEMI))
                        .plus(Marks.rich(caution, words));
                said.add(Paragraph.of(text, words, LINES, 0));
            }
        }
        if (!said.isEmpty()) {
            all.add(entry("From the workbook", said, "its maker's own words"));
        }
        if (all.isEmpty()) {
            String none = "This plan names no tool and no matter with a warning of its own.";
            all.add(Paragraph.of(none, words, 1.4, 3));
        }
        return all;
    }

    /** Two columns, each entry under the shorter one. */
    private static Block columns(List<Block> entries) {
        return new Block() {
            @Override
            public double height(double width) {
                return set(null, 0, 0, width);
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                set(ink, x, y, width);
            }

            private double set(Ink ink, double x, double y, double width) {
                double each = (width - GUTTER) / 2;
                double[] foot = new double[2];
                for (Block entry : entries) {
                    int column = foot[1] < foot[0] - 1e-6 ? 1 : 0;
                    if (ink != null) {
                        entry.paint(ink, x + column * (each + GUTTER), y + foot[column], each);
                    }
                    foot[column] += entry.height(each);
                }
                return Math.max(foot[0], foot[1]);
            }
        };
    }

    /** Entries side by side in rows, which may go over pages. */
    private static List<Block> rows(List<Block> entries) {
        List<Block> rows = new ArrayList<>();
        for (int i = 0; i < entries.size(); i += 2) {
            Block right = i + 1 < entries.size() ? entries.get(i + 1) : Block.space(0);
            rows.add(Marks.beside(GUTTER, new double[] {1, 1}, List.of(entries.get(i), right)));
        }
        return rows;
    }

    private Map<Topic, List<Caution>> byTopic() {
        Map<Topic, List<Caution>> topics = new LinkedHashMap<>();
        for (Caution caution : book.plan().cautions()) {
            topics.computeIfAbsent(caution.topic(), topic -> new ArrayList<>()).add(caution);
        }
        return topics;
    }

    private static String text(List<Caution> cautions) {
        Set<String> words = new LinkedHashSet<>();
        cautions.forEach(caution -> words.add(caution.words()));
        return String.join(" ", words);
    }

    private static String foot(List<Caution> cautions) {
        boolean all = cautions.stream().anyMatch(caution -> caution.steps().isEmpty());
        Set<Integer> steps = new TreeSet<>();
        cautions.forEach(caution -> steps.addAll(caution.steps()));
        Set<String> sources = new LinkedHashSet<>();
        cautions.forEach(caution -> sources.add(caution.source()));
        return Book.steps(all ? List.of() : List.copyOf(steps)) + " · " + String.join("; ", sources);
    }

    private static Block entry(String title, List<Block> text, String foot) {
        List<Block> words = new ArrayList<>();
        words.add(Paragraph.of(title, Style.HEADING, 1.2, 0.6));
        words.addAll(text);
        words.add(Block.space(0.6));
        words.add(Paragraph.of(foot, Style.CAPTION, 1.3, 3));
        Block content = Marks.caution(words);
        return new Block() {
            @Override
            public double height(double width) {
                return 2.4 + content.height(width);
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                ink.line(x, y, x + width, y, Ink.NARROW);
                content.paint(ink, x, y + 2.4, width);
            }
        };
    }

    /** The framed box; none if nothing is estimated, open or wrong. */
    private Optional<Block> box(double points) {
        Style words = new Style(Face.LABEL, points, Ink.BLACK);
        Style strong = words.in(Face.LABEL_BOLD);
        List<Block> text = new ArrayList<>();
        if (estimated(book.plan())) {
            text.add(Paragraph.of(Rich.of(SitePlan.DEFERS, strong), words, 1.36, 1.5));
        }
        List<String> open = notKnown(book.plan());
        if (!open.isEmpty()) {
            Rich list = Rich.of("Not known here: ", strong).plus(String.join("; ", open) + ".", words);
            text.add(Paragraph.of(list, words, 1.36, 1.5));
        }
        if (!book.plan().problems().isEmpty()) {
            Rich list = Rich.of("The workbook has problems, and this booklet leaves out what they stop: ", strong);
            for (var problem : book.plan().problems()) {
                list = list.plus(" " + problem.words(), words);
            }
            text.add(Paragraph.of(list, words, 1.36, 1.5));
        }
        return text.isEmpty()
                ? Optional.empty()
                : Optional.of(Block.stack(List.of(Block.space(3), Marks.framed(text))));
    }

    /** A build that stands in the ground, or a check that calls itself an estimate. */
    static boolean estimated(Plan plan) {
        return plan.site().isPresent()
                || plan.checks().stream()
                        .anyMatch(check -> (check.result() + " " + check.advice() + " " + check.source())
                                .toLowerCase(java.util.Locale.ROOT)
                                .contains("estimate"));
    }

    /** What the plan could not find out, in words. */
    static List<String> notKnown(Plan plan) {
        Set<String> open = new LinkedHashSet<>();
        for (Check check : plan.checks()) {
            if (check.verdict() == Check.Verdict.NOT_KNOWN) {
                open.add(check.name());
            }
        }
        if (!plan.cost().notKnown().isEmpty()) {
            open.add("price or share of " + String.join(", ", plan.cost().notKnown()));
        }
        if (plan.weight().isEmpty()) {
            open.add("the weight");
        }
        if (!plan.schedule().stepsWithoutTime().isEmpty()) {
            open.add("how long " + Book.steps(plan.schedule().stepsWithoutTime())
                    + (plan.schedule().stepsWithoutTime().size() == 1 ? " takes" : " take"));
        }
        return List.copyOf(open);
    }
}
