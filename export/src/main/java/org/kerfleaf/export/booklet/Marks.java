package org.kerfleaf.export.booklet;

import java.util.ArrayList;
import java.util.List;
import org.kerfleaf.export.drawing.Face;
import org.kerfleaf.export.drawing.Ink;
import org.kerfleaf.export.drawing.Rich;
import org.kerfleaf.export.drawing.SafetySigns;
import org.kerfleaf.export.drawing.Style;
import org.kerfleaf.workbook.Prose;

/** Blocks that several pages use: headings, prose, cautions, frames, ruled lines. */
final class Marks {
    private static final double TRIANGLE = 7;

    private Marks() {}

    /** A heading within a page. */
    static Block heading(String words) {
        return Block.stack(List.of(Block.space(5), Paragraph.of(words, Style.HEADING, 1.15, 1.8)));
    }

    /** Blocks side by side with a gap, each as wide as its share says. */
    static Block beside(double gap, double[] shares, List<Block> blocks) {
        double all = java.util.Arrays.stream(shares).sum();
        return new Block() {
            private double width(int i, double width) {
                return (width - gap * (blocks.size() - 1)) * shares[i] / all;
            }

            @Override
            public double height(double width) {
                double high = 0;
                for (int i = 0; i < blocks.size(); i++) {
                    high = Math.max(high, blocks.get(i).height(width(i, width)));
                }
                return high;
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                double left = x;
                for (int i = 0; i < blocks.size(); i++) {
                    blocks.get(i).paint(ink, left, y, width(i, width));
                    left += width(i, width) + gap;
                }
            }
        };
    }

    /** A warning sign with text beside it. */
    static Block caution(List<? extends Block> words) {
        Block text = Block.inset(TRIANGLE + 3, 0, Block.stack(words));
        return new Block() {
            @Override
            public double height(double width) {
                return Math.max(text.height(width), SafetySigns.warningHeight(TRIANGLE) + 0.6);
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                SafetySigns.warning(ink, x, y + 0.2, TRIANGLE);
                text.paint(ink, x, y, width);
            }
        };
    }

    /** Blocks in a frame. */
    static Block framed(List<? extends Block> words) {
        Block text = Block.inset(5, 5, Block.stack(words));
        return new Block() {
            @Override
            public double height(double width) {
                return text.height(width) + 7;
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                ink.stroke(Ink.box(x + 0.35, y + 0.35, width - 0.7, height(width) - 0.7), Ink.BLACK, 0.7);
                text.paint(ink, x, y + 3.5, width);
            }

            @Override
            public List<Block> broken(double width) {
                return text.broken(width);
            }
        };
    }

    /** Lines to write on, 8 mm apart. */
    static Block ruled(int lines) {
        return Block.picture(lines * 8.0, (ink, x, y, width) -> {
            for (int i = 1; i <= lines; i++) {
                ink.line(x, y + i * 8.0, x + width, y + i * 8.0, 0.12);
            }
        });
    }

    /** Blanks to fill in, side by side, each with its name below the line. */
    static Block blanks(List<String> names) {
        return Block.picture(6, (ink, x, y, width) -> {
            double gap = 6;
            double each = (width - gap * (names.size() - 1)) / names.size();
            for (int i = 0; i < names.size(); i++) {
                double left = x + i * (each + gap);
                ink.line(left, y, left + each, y, Ink.NARROW);
                ink.text(Rich.of(names.get(i), Style.CAPTION).line(), left, y + 4);
            }
        });
    }

    /** Prose in a style, its paragraphs and lists. */
    static List<Block> prose(List<Prose.Block> blocks, Style style, double lines, double after) {
        List<Block> set = new ArrayList<>();
        for (Prose.Block block : blocks) {
            if (block instanceof Prose.Block.Paragraph paragraph) {
                set.add(Paragraph.of(rich(paragraph.runs(), style), style, lines, after));
            } else if (block instanceof Prose.Block.Items items) {
                set.addAll(items(items, style, lines));
                set.add(Block.space(after));
            }
        }
        return set;
    }

    private static List<Block> items(Prose.Block.Items items, Style style, double lines) {
        List<Block> set = new ArrayList<>();
        int number = 1;
        for (List<Prose.Run> item : items.items()) {
            String mark = items.numbered() ? number + "." : "–";
            number++;
            Paragraph text = Paragraph.of(rich(item, style), style, lines, 0.6);
            set.add(marked(mark, style, text));
        }
        return set;
    }

    private static Block marked(String mark, Style style, Paragraph text) {
        Block inset = Block.inset(7, 0, text);
        return new Block() {
            @Override
            public double height(double width) {
                return inset.height(width);
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                ink.text(Rich.of(mark, style).line(), x, y + text.firstBaseline());
                inset.paint(ink, x, y, width);
            }
        };
    }

    /** Runs of prose in a style: emphasis italic, strong semi-bold, code in the face of cells. */
    static Rich rich(List<Prose.Run> runs, Style style) {
        Rich text = Rich.NOTHING;
        for (Prose.Run run : runs) {
            text = text.plus(run.text(), in(run.style(), style));
        }
        return text;
    }

    private static Style in(Prose.Style run, Style style) {
        boolean serif = style.face() == Face.TEXT || style.face() == Face.TEXT_SEMI;
        return switch (run) {
            case PLAIN, VALUE -> style;
            case EMPHASIS -> serif ? style.in(Face.TEXT_ITALIC) : style.in(Face.LABEL_SEMI);
            case STRONG -> style.in(serif ? Face.TEXT_SEMI : Face.LABEL_BOLD);
            case CODE -> style.in(Face.MONO).at(style.points() * 0.9);
        };
    }
}
