package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.caution.Caution;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Line;
import org.kerfleaf.export.drawing.Pictures;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.Signs;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.plan.PlannedStep;
import org.kerfleaf.workbook.Prose;

/**
 * The build steps: number, title, what to take, the instruction, cautions, and who did it. A step fills half a page or
 * more and breaks only if it is longer than a page; room that is left is ruled for notes.
 */
final class StepPages {
    private static final Style NUMBER = new Style(Face.LABEL_BOLD, 34, Ink.BLACK);
    private static final Style TITLE = new Style(Face.LABEL_BOLD, 16, Ink.BLACK);
    private static final Style CAUTION = new Style(Face.LABEL_SEMI, 10.5, Ink.BLACK);
    /** The highest a step's picture gets, in millimetres. */
    private static final double PICTURE = 95;

    /** Likewise of the picture of a lift. */
    private static final double LIFT = 80;

    private static final double TAKE = 58;
    private static final double GAP = 7;

    private final Book book;

    StepPages(Book book) {
        this.book = book;
    }

    void into(Flow flow) {
        List<PlannedStep> steps = book.plan().steps();
        if (steps.isEmpty()) {
            return;
        }
        // Whether a step fits is asked of a page of this title; its number range is known only once it is full.
        flow.page("Build", "Steps", Book.counted(steps.size(), "step"));
        double whole = flow.whole();
        List<Step> page = new ArrayList<>();
        List<List<Step>> pages = new ArrayList<>();
        double used = 0;
        for (PlannedStep step : steps) {
            Step set = new Step(book.plan(), step, words(step));
            double high = Math.max(set.height(flow.width()), whole / 2);
            if (!page.isEmpty() && used + high > whole + 1e-6) {
                pages.add(page);
                page = new ArrayList<>();
                used = 0;
            }
            page.add(set);
            used += high;
        }
        pages.add(page);
        for (int i = 0; i < pages.size(); i++) {
            String fact = Book.steps(numbers(pages.get(i))) + " of " + steps.size();
            if (i == 0) {
                flow.retitle("Build", sheet(pages.get(i)), fact);
            } else {
                flow.page("Build", sheet(pages.get(i)), fact);
            }
            fill(flow, pages.get(i), whole);
        }
    }

    private static List<Integer> numbers(List<Step> page) {
        return page.stream().map(step -> step.planned.number()).toList();
    }

    private static String sheet(List<Step> page) {
        String words = Book.steps(numbers(page));
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private Optional<Prose.Step> words(PlannedStep planned) {
        return book.prose().steps().stream()
                .filter(step -> step.number() == planned.number())
                .findFirst();
    }

    /** Sets the steps of one page; what they leave is shared between them as room for notes. */
    private static void fill(Flow flow, List<Step> page, double whole) {
        double width = flow.width();
        double used = page.stream().mapToDouble(step -> step.height(width)).sum();
        if (used > whole) {
            page.forEach(step -> step.blocks(width).forEach(flow::pour));
            return;
        }
        boolean alone = page.size() == 1;
        for (int i = 0; i < page.size(); i++) {
            Step step = page.get(i);
            double room = alone ? whole : whole / page.size();
            // Steps of unlike length share what is left over both.
            if (page.stream().anyMatch(other -> other.height(width) > whole / page.size())) {
                room = step.height(width) + (whole - used) / page.size();
            }
            flow.add(step.filling(room, i > 0));
        }
    }

    /** One step, set. */
    private static final class Step {
        private final Plan plan;
        private final PlannedStep planned;
        private final Optional<Prose.Step> words;

        Step(Plan plan, PlannedStep planned, Optional<Prose.Step> words) {
            this.plan = plan;
            this.planned = planned;
            this.words = words;
        }

        double height(double width) {
            return content(width).height(width) + 5;
        }

        private Block content(double width) {
            return Block.stack(List.of(head(), body(), Block.space(3), doneBy()));
        }

        /** For a step that is longer than a page. */
        List<Block> blocks(double width) {
            List<Block> blocks = new ArrayList<>();
            blocks.add(head());
            if (!planned.take().isEmpty()) {
                blocks.add(new TwoColumns(takeTable(), 9).balanced(width));
            }
            blocks.add(Block.space(4));
            picture(width).ifPresent(blocks::add);
            lift(width).ifPresent(blocks::add);
            blocks.addAll(instruction());
            blocks.add(Block.space(3));
            blocks.add(doneBy());
            return blocks;
        }

        Block filling(double room, boolean below) {
            return new Block() {
                @Override
                public double height(double width) {
                    return room;
                }

                @Override
                public void paint(Ink ink, double x, double y, double width) {
                    double top = y;
                    if (below) {
                        ink.dashed(Ink.open(x, y, x + width, y), Ink.MIDDLE, 2f, 1.2f);
                        top += 4;
                    }
                    Block head = head();
                    Block body = body();
                    head.paint(ink, x, top, width);
                    top += head.height(width);
                    body.paint(ink, x, top, width);
                    top += body.height(width);
                    double foot = y + room - 6 - doneBy().height(width);
                    notes(ink, x, top + 4, width, foot - top - 6);
                    doneBy().paint(ink, x, foot, width);
                }
            };
        }

        private static void notes(Ink ink, double x, double y, double width, double room) {
            int lines = (int) Math.min(Math.floor((room - 4) / 8), 6);
            if (lines < 2) {
                return;
            }
            ink.text(Rich.of("Notes at the bench", Style.CAPTION).line(), x, y + 3.5);
            Marks.ruled(lines).paint(ink, x, y + 4, width);
        }

        private Block head() {
            Rich number = Rich.of(Integer.toString(planned.number()), NUMBER);
            double indent = number.width() + 4;
            Rich time = Rich.of(time(), Style.LABEL.in(Ink.GRAPHITE));
            Rich title = Rich.of(planned.title(), TITLE);
            double leading = TITLE.size() * 1.15;
            return new Block() {
                private List<Line> lines(double width) {
                    return title.wrap(width - indent - time.width() - 6);
                }

                @Override
                public double height(double width) {
                    return Math.max(NUMBER.capital() + 6, lines(width).size() * leading + 7);
                }

                @Override
                public void paint(Ink ink, double x, double y, double width) {
                    ink.text(number.line(), x, y + 1 + NUMBER.capital());
                    List<Line> lines = lines(width);
                    double baseline = lines.size() > 1
                            ? y + 1 + TITLE.capital()
                            : y + 1 + (NUMBER.capital() + TITLE.capital()) / 2;
                    ink.flushRight(time.line(), x + width, baseline);
                    for (Line line : lines) {
                        ink.text(line, x + indent, baseline);
                        baseline += leading;
                    }
                }
            };
        }

        private String time() {
            String work = planned.work().map(Book::hours).orElse("time not known");
            return planned.people() > 1 ? work + ", " + planned.people() + " people" : work;
        }

        private Block body() {
            Block words = Block.stack(instruction());
            Block take = take();
            return new Block() {
                private Block left(double width) {
                    List<Block> left = new ArrayList<>();
                    picture(width).ifPresent(left::add);
                    lift(width).ifPresent(left::add);
                    left.add(words);
                    return Block.stack(left);
                }

                @Override
                public double height(double width) {
                    return Math.max(left(width - TAKE - GAP).height(width - TAKE - GAP), take.height(TAKE));
                }

                @Override
                public void paint(Ink ink, double x, double y, double width) {
                    left(width - TAKE - GAP).paint(ink, x, y, width - TAKE - GAP);
                    take.paint(ink, x + width - TAKE, y, TAKE);
                }
            };
        }

        /** What is there so far, and what this step adds. */
        private Optional<Block> picture(double width) {
            return Pictures.step(plan, planned.number(), width, PICTURE)
                    .map(picture -> Block.picture(
                            picture.height() + 4,
                            (ink, x, y, w) -> picture.paint(ink, x + (w - picture.width()) / 2, y)));
        }

        /** Where what this step lifts balances, and where hands take hold. */
        private Optional<Block> lift(double width) {
            return Pictures.lift(plan, planned.number(), width, LIFT)
                    .map(drawing -> Block.picture(
                            drawing.height() + 4,
                            (ink, x, y, w) -> drawing.paint(ink, x + (w - drawing.width()) / 2, y)));
        }

        private List<Block> instruction() {
            List<Block> blocks = new ArrayList<>();
            if (!planned.before().isEmpty()) {
                Rich before = Rich.of("Before you begin: ", CAUTION)
                        .plus(String.join(", ", planned.before()) + ".", CAUTION.in(Face.LABEL));
                blocks.add(Paragraph.of(before, CAUTION, 1.35, 1.6));
            }
            words.ifPresent(step -> blocks.addAll(Marks.prose(step.blocks(), Style.INSTRUCTION, 1.42, 2)));
            FasteningTable.of(plan, planned.number()).ifPresent(blocks::add);
            blocks.addAll(DoorBlocks.of(plan, planned.number()));
            words.ifPresent(step -> step.cautions().forEach(said -> blocks.add(caution(Marks.rich(said, CAUTION)))));
            for (Caution caution : planned.cautions()) {
                Rich text =
                        Rich.of(caution.topic().title() + ". ", CAUTION).plus(caution.words(), CAUTION.in(Face.LABEL));
                blocks.add(caution(text));
            }
            words.ifPresent(step -> step.notes().forEach(said -> blocks.add(note(said))));
            return blocks;
        }

        private static Block caution(Rich text) {
            return Block.stack(
                    List.of(Block.space(1.2), Marks.caution(List.of(Paragraph.of(text, CAUTION, 1.35, 1.2)))));
        }

        private static Block note(List<Prose.Run> said) {
            Rich text = Rich.of("Note. ", CAUTION).plus(Marks.rich(said, Style.LABEL));
            return Block.stack(List.of(Block.space(1.2), Block.inset(10, 0, Paragraph.of(text, CAUTION, 1.35, 1.2))));
        }

        private Block take() {
            if (planned.take().isEmpty()) {
                return Block.space(0);
            }
            return takeTable().whole(TAKE);
        }

        private Table takeTable() {
            Table table = new Table(Column.fit(""), Column.share("Take", 1));
            for (PlannedStep.Take take : planned.take()) {
                table.row(Cell.tick(), thing(take));
            }
            return table;
        }

        private static Cell thing(PlannedStep.Take take) {
            Cell words = Cell.text(take.words());
            return take.letter()
                    .<Cell>map(letter -> new Lettered(letter, words))
                    .orElse(words);
        }

        private static Block doneBy() {
            return Block.picture(6.5, (ink, x, y, width) -> {
                Signs.tickBox(ink, x, y + 1);
                Style style = Style.LABEL.at(9.5);
                Line done = Rich.of("Done by", style).line();
                ink.text(done, x + 6, y + 4.4);
                ink.line(x + 8 + done.width(), y + 5, x + 8 + done.width() + 48, y + 5, Ink.NARROW);
            });
        }
    }

    /** A part's letter in its circle, with words beside it. */
    private record Lettered(String letter, Cell words) implements Cell {
        private static final double INDENT = Signs.LETTER + 1.8;

        @Override
        public double natural() {
            return INDENT + words.natural();
        }

        @Override
        public double least() {
            return INDENT + words.least();
        }

        @Override
        public double height(double width) {
            return Math.max(words.height(width - INDENT), Signs.LETTER - 1);
        }

        @Override
        public double baseline() {
            return words.baseline();
        }

        @Override
        public void paint(Ink ink, double x, double y, double width, double axis) {
            Signs.letter(ink, letter, x + Signs.LETTER / 2, y + baseline() - 1.3);
            words.paint(ink, x + INDENT, y, width - INDENT, axis);
        }
    }
}
