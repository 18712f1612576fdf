package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    private static final Style BESIDE = new Style(Face.LABEL_SEMI, 12, Ink.BLACK);

    private final Book book;

    SafetyPage(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        flow.page("Before the first cut", "Safety", "everybody reads this page");
        flow.add(discs(wear(book.plan().cautions())));
        flow.add(Block.space(6));
        double points = sizeThatFits(flow);
        entries(points).forEach(flow::add);
        Block box = box(points);
        if (box != null) {
            flow.add(Block.stack(List.of(Block.space(3), box)));
        }
    }

    /** 12 points if that keeps it on one page, else less, but never under 10.5. */
    private double sizeThatFits(Flow flow) {
        for (double points : new double[] {12, 11.2}) {
            double high = entries(points).stream()
                    .mapToDouble(entry -> entry.height(flow.width()))
                    .sum();
            Block box = box(points);
            high += box == null ? 0 : 3 + box.height(flow.width());
            if (high <= flow.left()) {
                return points;
            }
        }
        return 10.5;
    }

    /** What the topics ask for; eyes always. */
    static Set<Wear> wear(List<Caution> cautions) {
        Set<Wear> wear = EnumSet.of(Wear.EYES);
        for (Caution caution : cautions) {
            wear.addAll(
                    switch (caution.topic()) {
                        case CIRCULAR_SAW, MITRE_SAW, ROUTER -> EnumSet.of(Wear.EARS, Wear.MASK);
                        case JIGSAW, NAILER -> EnumSet.of(Wear.EARS);
                        case DUST -> EnumSet.of(Wear.MASK);
                        case TREATED_WOOD, CONCRETE -> EnumSet.of(Wear.MASK, Wear.GLOVES);
                        case GLAZING, DIGGING -> EnumSet.of(Wear.GLOVES);
                        case DRILL, GLUE_AND_PAINT, LIFTING, ELECTRICITY, CHILDREN -> EnumSet.noneOf(Wear.class);
                    });
        }
        return wear;
    }

    private static Block discs(Set<Wear> wear) {
        List<Wear> all = List.copyOf(wear);
        boolean below = all.size() > 3;
        double high = below ? DISC + 17 : DISC;
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

    /** Warnings two side by side, then what the workbook itself warns of. */
    private List<Block> entries(double points) {
        Style words = new Style(Face.LABEL, points, Ink.BLACK);
        List<Block> all = new ArrayList<>();
        byTopic().forEach((topic, cautions) -> all.add(entry(topic.title(), text(cautions), foot(cautions), words)));
        for (Prose.Step step : book.prose().steps()) {
            for (List<Prose.Run> caution : step.cautions()) {
                all.add(entry("Step " + step.number(), Marks.rich(caution, words), "said in the workbook", words));
            }
        }
        List<Block> rows = new ArrayList<>();
        for (int i = 0; i < all.size(); i += 2) {
            Block right = i + 1 < all.size() ? all.get(i + 1) : Block.space(0);
            rows.add(Marks.beside(9, new double[] {1, 1}, List.of(all.get(i), right)));
        }
        if (rows.isEmpty()) {
            rows.add(Paragraph.of("This plan names no tool and no matter with a warning of its own.", words, 1.4, 3));
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

    private static Rich text(List<Caution> cautions) {
        Set<String> words = new java.util.LinkedHashSet<>();
        cautions.forEach(caution -> words.add(caution.words()));
        return Rich.of(String.join(" ", words), new Style(Face.LABEL, 12, Ink.BLACK));
    }

    private static String foot(List<Caution> cautions) {
        boolean all = cautions.stream().anyMatch(caution -> caution.steps().isEmpty());
        Set<Integer> steps = new TreeSet<>();
        cautions.forEach(caution -> steps.addAll(caution.steps()));
        Set<String> sources = new java.util.LinkedHashSet<>();
        cautions.forEach(caution -> sources.add(caution.source()));
        return Book.steps(all ? List.of() : List.copyOf(steps)) + " · " + String.join("; ", sources);
    }

    private static Block entry(String title, Rich text, String foot, Style words) {
        Block content = Marks.caution(List.of(
                Paragraph.of(title, Style.HEADING, 1.2, 0.6),
                Paragraph.of(text, words, 1.34, 0.6),
                Paragraph.of(foot, Style.CAPTION, 1.3, 3.6)));
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

    /** The framed box, or null if nothing is estimated, open or wrong. */
    private Block box(double points) {
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
        return text.isEmpty() ? null : Marks.framed(text);
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
        List<String> open = new ArrayList<>();
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
        return open;
    }
}
